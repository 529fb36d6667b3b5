package versewind.proposal;

import versewind.organ.BoxPosition;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Mood;
import versewind.rules.BuildingStep;
import versewind.rules.ChorusFault;
import versewind.rules.ChorusFaults;
import versewind.rules.OrganFacts;
import versewind.rules.PlayedRegistration;
import versewind.rules.Severity;
import versewind.rules.StopClass;
import versewind.sound.Verdict;

/**
 * Scores drafts for one verse, in penalty points; 0 is perfect. The points and their reasons are one list of rows: the
 * rules that are broken, the distance from the aim, and a little for what a teacher would rather have. Deterministic.
 *
 * <p>Common practice, no source; the points are estimates.
 */
final class ScoreFunction {

    /** A step that costs more is never offered beside one that suits. */
    private static final double UNFIT = 5;

    /** The pedal raises the level by so many dB(A) where it makes a quarter of the loudness. */
    private static final double BOOMING_DB = 3.2;

    private static final double BOOMING = 4;

    /** Weight of the balance where the organ plays alone. */
    private static final double ALONE = 0.4;

    private static final double LED_WELL = 0.4;

    private static final double WITHOUT_FOUR = 9;
    private static final double WITHOUT_FOUR_GENTLY = 2.5;
    private static final double A_COLOUR = 0.15;
    private static final double A_KNOB = 0.03;
    private static final double BEHIND_SHUTTERS = 0.12;

    /** All reeds, and the box not open yet; or principals for few voices, held back by a box. */
    private static final double MUCH_BEHIND_SHUTTERS = 1.5;

    private static final double OPEN_GENTLY = 0.8;
    private static final double OTHER_MANUAL = 2;
    private static final double OTHER_MANUAL_GENTLY = 0.4;
    private static final double MANUAL_FOR_SOLOS = 0.5;
    private static final double IN_THE_OPEN = 1;
    private static final double WITHOUT_PEDAL = 1.8;
    private static final double WITHOUT_PEDAL_GENTLY = 0.35;
    private static final double WITHOUT_SIXTEEN_GENTLY = 0.25;

    private final OrganFacts organ;
    private final Requirement requirement;
    private final ChorusFaults faults;
    private final VerseBalance balance;

    ScoreFunction(Requirement requirement, ChorusFaults faults, VerseBalance balance) {
        organ = faults.organ();
        this.requirement = requirement;
        this.faults = faults;
        this.balance = balance;
    }

    Requirement requirement() {
        return requirement;
    }

    /** Points that can be told without listening: a lower bound of all. */
    double taste(Sketch sketch) {
        Rows.Sum sum = new Rows.Sum();
        addTaste(sketch, sum);
        return sum.points();
    }

    /** A draft with its points. */
    Candidate candidate(Sketch sketch) {
        Draft draft = sketch.draft();
        Rows.Sum sum = new Rows.Sum();
        double heard = balance.of(draft);
        PlayedRegistration played = played(draft);
        add(sketch, played, heard, sum);
        boolean isSound = sum.isSound() && step(sketch) < UNFIT;
        boolean isAtEase = isSound && !requirement.isAllThereIs(heard);
        return new Candidate(
                sketch,
                sum.points(),
                isSound,
                isAtEase,
                heard,
                balance.levelDba(draft),
                kinds(played),
                Heard.of(played));
    }

    private long kinds(PlayedRegistration played) {
        return played.sounding().stream()
                .filter(stop -> organ.divisionOf(stop) != organ.pedal())
                .mapToLong(stop -> 1L << organ.layer(stop).ordinal())
                .reduce(0, (one, other) -> one | other);
    }

    private double step(Sketch sketch) {
        return requirement.cost(sketch.sound().step());
    }

    /** Adds everything that speaks against a candidate by itself. */
    void add(Candidate candidate, Rows rows) {
        add(candidate.sketch(), played(candidate.draft()), candidate.balance(), rows);
    }

    /** Weight of the balance: a sound to which nobody sings may be softer, and a gentle verse may be led well. */
    private double weight(double heard) {
        if (!requirement.company().isSung() && !requirement.isOfTune()) {
            return ALONE;
        }
        boolean isLedWell = requirement.isPeople()
                && isGentle()
                && heard > requirement.target().centre();
        return isLedWell ? LED_WELL : 1;
    }

    private PlayedRegistration played(Draft draft) {
        return faults.played(draft.registration(), draft.hands(), requirement.company());
    }

    private void add(Sketch sketch, PlayedRegistration played, double heard, Rows rows) {
        boolean isAsWanted =
                !requirement.target().isMissed(heard) && !requirement.target().isPassed(heard);
        rows.add(
                isAsWanted ? PartKind.AIM : PartKind.BALANCE,
                weight(heard) * requirement.target().cost(heard),
                () -> requirement.target().sentence(heard));
        balance.addVerdict(heard, rows);
        balance.addCrossed(played, heard, rows);
        for (ChorusFault fault : faults.in(played)) {
            PartKind kind = fault.severity() == Severity.CAUTION ? PartKind.FAULT : PartKind.RULE;
            rows.add(kind, fault.weight(), fault::sentence);
        }
        addPedal(sketch.draft(), heard, rows);
        addFour(played, rows);
        addTaste(sketch, rows);
    }

    /** The people want a 4 ft to follow, in a gentle verse a little less. */
    private void addFour(PlayedRegistration played, Rows rows) {
        long fours = 1L << StopClass.PRINCIPAL_4.ordinal() | 1L << StopClass.FLUTE_4.ordinal();
        boolean hasFour = (kinds(played) & fours) != 0;
        rows.add(
                PartKind.ORDER,
                hasFour || !requirement.isPeople() ? 0 : isGentle() ? WITHOUT_FOUR_GENTLY : WITHOUT_FOUR,
                () -> "The people have no 4 ft to follow.");
    }

    /** The pedal's own stops make a quarter of the loudness and more: an estimate by levels. */
    private void addPedal(Draft draft, double heard, Rows rows) {
        boolean isCovered =
                Verdict.of(requirement.mode(), heard).way() == Verdict.Way.SOFTER && !requirement.isPeople();
        rows.add(
                PartKind.PLAYING,
                isCovered && draft.hands().layout().usesPedal() ? WITHOUT_PEDAL : 0,
                () -> "The feet had better rest where words hardly come through.");
        boolean isHardlyLed = requirement.isPeople() && requirement.target().isHardlyLed(heard);
        rows.add(
                PartKind.PLAYING,
                isHardlyLed
                                && requirement.mayUsePedal()
                                && !draft.hands().layout().usesPedal()
                        ? WITHOUT_PEDAL
                        : 0,
                () -> "The people need the pedal to follow.");
        if (organ.pedal() == OrganFacts.NO_PEDAL || !draft.stops().meets(organ.allOf(organ.pedal()))) {
            return;
        }
        Draft without = draft.withStops(draft.stops().minus(organ.allOf(organ.pedal())));
        double ofPedalDb = balance.levelDba(draft) - balance.levelDba(without);
        rows.add(PartKind.RULE, ofPedalDb < BOOMING_DB ? 0 : BOOMING, () -> "The pedal booms.");
    }

    private void addTaste(Sketch sketch, Rows rows) {
        Sound sound = sketch.sound();
        BuildingStep step = sound.step();
        rows.add(
                PartKind.ORDER,
                (sound.colour().isEmpty() ? 0 : A_COLOUR) + step(sketch),
                () -> "A " + requirement.mood().word() + " verse is usually "
                        + (StepCosts.isFull(requirement.mode(), step, requirement.least()) ? "lighter" : "fuller")
                        + " than "
                        + step.word() + ".");
        rows.add(
                PartKind.ORDER,
                sound.voice().points(requirement.mood()),
                () -> "Another voice suits a " + requirement.mood().word() + " verse better.");
        addPlaying(sketch, rows);
        int knobs = sketch.draft().stops().size() + sketch.draft().couplers().size();
        rows.add(PartKind.ECONOMY, A_KNOB * knobs, () -> "Each stop and coupler costs a little.");
    }

    private void addPlaying(Sketch sketch, Rows rows) {
        Draft draft = sketch.draft();
        rows.add(PartKind.PLAYING, manual(draft), () -> "Not your usual manual.");
        rows.add(PartKind.PLAYING, withoutPedal(draft), () -> "Wide chords lie badly without the pedal’s 16 ft.");
        rows.add(
                PartKind.PLAYING,
                shutters(sketch),
                () -> isPartClosed() ? "The box is usually part closed in a gentle verse." : "A box is partly closed.");
    }

    private double manual(Draft draft) {
        int manual = draft.hands().left();
        double forSolos = organ.isForSolos(manual) ? MANUAL_FOR_SOLOS : 0;
        return switch (requirement.mode()) {
            case CONGREGATION -> {
                boolean isMain = organ.isOneKeyboard(manual, organ.keyboards().get(0));
                yield isMain ? 0 : forSolos + (isGentle() ? OTHER_MANUAL_GENTLY : OTHER_MANUAL);
            }
            case SMALL_CHOIR, SOLO_VOICE ->
                forSolos + (organ.hasEnclosedManual() && !organ.isEnclosed(manual) ? IN_THE_OPEN : 0);
            case MELODY_SOLOED -> forSolos;
        };
    }

    private double withoutPedal(Draft draft) {
        Layout layout = draft.hands().layout();
        if (!requirement.mayUsePedal() || layout == Layout.FOUR_PARTS || layout == Layout.MELODY_SOLOED) {
            return 0;
        }
        if ((requirement.isPeople() || requirement.isOfTune()) && !isGentle()) {
            return WITHOUT_PEDAL;
        }
        return layout == Layout.PEDAL_BY_COUPLER ? WITHOUT_SIXTEEN_GENTLY : WITHOUT_PEDAL_GENTLY;
    }

    /**
     * Behind shutters more is drawn than would have been needed; for the people a little worse than for few voices. A
     * gentle verse of theirs is played with the box part closed.
     */
    private double shutters(Sketch sketch) {
        Draft draft = sketch.draft();
        double sum = 0;
        for (int division : Heard.boxes(organ, draft.stops()).stream().toArray()) {
            double opening = draft.registration().boxes().get(division).opening();
            sum += isPartClosed()
                    ? OPEN_GENTLY * Math.max(0, opening - BoxPosition.HALF.opening())
                    : behindShutters(sketch.sound().step()) * (1 - opening);
        }
        return sum;
    }

    private double behindShutters(BuildingStep step) {
        BuildingStep fullest =
                requirement.least() == Fullness.FESTAL ? BuildingStep.MAIN_REEDS : BuildingStep.ENCLOSED_REEDS;
        BuildingStep most = requirement.isPeople() ? fullest : BuildingStep.FLUTES_8_4;
        boolean isTooMuch = step.compareTo(most) > 0;
        return isTooMuch ? MUCH_BEHIND_SHUTTERS : BEHIND_SHUTTERS * (requirement.isPeople() ? 2 : 1);
    }

    private boolean isPartClosed() {
        return isGentle() && requirement.isPeople();
    }

    private boolean isGentle() {
        return requirement.mood() == Mood.GENTLE;
    }
}
