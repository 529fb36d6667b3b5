package versewind.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/**
 * Steps for a verse that turns out too weak or too strong, along the order of building up: swell boxes first, then the
 * next addition of the {@link BuildingLine}, or the last one taken back. A step that changes the organ's level in the
 * nave by less than {@link #LEAST_STEP_DB} is joined to the next, but for doubles and the 32 ft, which add weight and
 * hardly any level. Nothing is passed over for being louder, and no step breaks a rule of choruses that was kept.
 * Levels are estimates.
 *
 * <p>A soloed melody is made stronger by the box or by the next louder solo stop, and its accompaniment softer.
 *
 * <p>Checked against: {@code DynamicStepsTest}.
 *
 * @param stronger steps up, each from the one before; two at most
 * @param softer steps down, likewise
 */
public record DynamicSteps(List<DynamicStep> stronger, List<DynamicStep> softer) {

    /** The least change of a step, in dB. */
    public static final double LEAST_STEP_DB = 0.5;

    /** As many steps each way as are printed. */
    public static final int PRINTED = 2;

    /** At the desk, where a step is taken from the step before: from a flute to full organ. */
    public static final int AT_DESK = 6;

    /** As many knobs as are moved in one breath. */
    private static final int KNOBS = 2;

    public DynamicSteps {
        stronger = List.copyOf(stronger);
        softer = List.copyOf(softer);
    }

    /**
     * The steps of a verse.
     *
     * @param sound the instrument
     * @param verse a verse that can be played on it
     * @param people number of people at the service
     * @param tempo beats a minute, if known
     * @param most how many steps each way at most
     */
    public static DynamicSteps of(OrganSound sound, Verse verse, int people, OptionalInt tempo, int most) {
        if (!verse.isPlayed()) {
            return new DynamicSteps(List.of(), List.of());
        }
        OrganFacts organ = OrganFacts.of(sound);
        return new DynamicSteps(
                new Walk(sound, organ, verse, people, tempo, true).steps(most),
                new Walk(sound, organ, verse, people, tempo, false).steps(most));
    }

    /**
     * Steps one way.
     *
     * @param way which; none where it is neither stronger nor softer
     * @param most how many steps at most
     */
    static List<DynamicStep> steps(
            OrganSound sound, Verse verse, int people, OptionalInt tempo, Verdict.Way way, int most) {
        return way == Verdict.Way.NONE
                ? List.of()
                : new Walk(sound, OrganFacts.of(sound), verse, people, tempo, way == Verdict.Way.STRONGER).steps(most);
    }

    /** A walk along the line, one way. */
    private static final class Walk {

        private final OrganSound sound;
        private final OrganFacts organ;
        private final Verse verse;
        private final int people;
        private final OptionalInt tempo;
        private final boolean isUp;
        private final BuildingLine line;
        private final ChorusFaults faults;

        Walk(OrganSound sound, OrganFacts organ, Verse verse, int people, OptionalInt tempo, boolean isUp) {
            this.sound = sound;
            this.organ = organ;
            this.verse = verse;
            this.people = people;
            this.tempo = tempo;
            this.isUp = isUp;
            line = new BuildingLine(
                    organ,
                    verse.hands(),
                    verse.locks().never(),
                    verse.registration().stops());
            faults = ChorusFaults.on(organ);
        }

        List<DynamicStep> steps(int most) {
            List<DynamicStep> steps = new ArrayList<>();
            Registration from = verse.registration();
            Estimate before = estimate(from);
            while (steps.size() < most && !before.isSilent()) {
                Optional<DynamicStep> step = step(from, before);
                if (step.isEmpty() || (steps.size() >= PRINTED && !isInABreath(from, step.get()))) {
                    break;
                }
                steps.add(step.get());
                from = step.get().registration();
                before = step.get().estimate();
            }
            return steps;
        }

        /** Whether a further step is two knobs of manuals and two of the pedal at most, and breaks nothing. */
        private boolean isInABreath(Registration from, DynamicStep step) {
            IndexSet moved = step.moves().stopsDrawn().plus(step.moves().stopsPutIn());
            int ofPedal = organ.pedal() == OrganFacts.NO_PEDAL
                    ? 0
                    : moved.and(organ.allOf(organ.pedal())).size();
            return ofPedal <= KNOBS
                    && step.moves().knobs() - ofPedal <= KNOBS
                    && isKept(faults.in(verse.withRegistration(from)), step.registration(), Severity.REMARK);
        }

        /** The boxes, else what comes next in the order, joined until it is heard and breaks nothing. */
        private Optional<DynamicStep> step(Registration from, Estimate before) {
            Registration at = from;
            for (Optional<Registration> moved = box(at); moved.isPresent(); moved = box(at)) {
                at = moved.get();
                Estimate after = estimate(at);
                if (isHeard(before, after)) {
                    return Optional.of(step(from, before, at, after));
                }
            }
            Registration boxed = at;
            List<ChorusFault> faultsBefore = faults.in(verse.withRegistration(from));
            for (Optional<Registration> moved = next(at); moved.isPresent(); moved = next(at)) {
                at = moved.get();
                Estimate after = estimate(at);
                boolean isStep = isHeard(before, after) || (isOfWeight(isUp ? at : from) && isLouder(before, after));
                if (isStep && isKept(faultsBefore, at, Severity.CAUTION)) {
                    Optional<DynamicStep> joined = Optional.of(step(from, before, at, after));
                    return alone(from, boxed, before, faultsBefore, BuildingStep.PRINCIPALS_8_4_2)
                            .or(() -> joined.filter(each -> isInABreath(from, each)))
                            .or(() -> alone(from, boxed, before, faultsBefore, BuildingStep.MIXTURES))
                            .or(() -> joined);
                }
            }
            return Optional.empty();
        }

        /**
         * Softer, the last addition by which anything is heard; what nobody hears may stay on another keyboard.
         *
         * @param crown from this step on nothing is left in place over what is taken away
         */
        private Optional<DynamicStep> alone(
                Registration from,
                Registration boxed,
                Estimate before,
                List<ChorusFault> faultsBefore,
                BuildingStep crown) {
            List<BuildingLine.Addition> begun = line.begun(boxed);
            return isUp || isSoloed()
                    ? Optional.empty()
                    : IntStream.range(0, begun.size())
                            .filter(i ->
                                    begun.subList(0, i).stream().noneMatch(later -> crowns(later, begun.get(i), crown)))
                            .mapToObj(begun::get)
                            .map(addition ->
                                    line.without(boxed, addition, verse.locks().always()))
                            .filter(rest -> isKept(faultsBefore, rest, Severity.REMARK))
                            .map(rest -> step(from, before, rest, estimate(rest)))
                            .filter(step -> isHeard(before, step.estimate()))
                            .findFirst();
        }

        /**
         * Whether reeds stand over mixtures, or a 2 ft, mixtures and reeds over others of their division: what is below
         * is not taken away first.
         */
        private boolean crowns(BuildingLine.Addition later, BuildingLine.Addition earlier, BuildingStep crown) {
            BuildingStep above = later.step();
            boolean isCrown = above.compareTo(crown) >= 0
                    && above.compareTo(BuildingStep.MAIN_REEDS) <= 0
                    && (above.compareTo(BuildingStep.MIXTURES) < 0
                            || earlier.step().compareTo(BuildingStep.MIXTURES) >= 0);
            boolean isReedsOverMixtures = earlier.step() == BuildingStep.MIXTURES && above != BuildingStep.MIXTURES;
            return isCrown
                    && (isReedsOverMixtures
                            || later.draws().stream()
                                    .anyMatch(stop -> earlier.draws().meets(organ.allOf(organ.divisionOf(stop)))));
        }

        private DynamicStep step(Registration from, Estimate before, Registration to, Estimate after) {
            Optional<String> reached = line.reachedInWords(to)
                    .filter(words -> !words.equals(line.reachedInWords(from).orElse("")));
            return new DynamicStep(StopChanges.between(from, to), to, after, levelDb(after) - levelDb(before), reached);
        }

        private boolean isHeard(Estimate before, Estimate after) {
            double changeDb = after.isSilent() ? 0 : levelDb(after) - levelDb(before);
            return (isUp ? changeDb : -changeDb) >= LEAST_STEP_DB;
        }

        private boolean isLouder(Estimate before, Estimate after) {
            return !after.isSilent() && (levelDb(after) > levelDb(before)) == isUp;
        }

        /** Whether the order is built up to the doubles. */
        private boolean isOfWeight(Registration drawn) {
            return line.reached(drawn)
                    .filter(rung -> rung.step().compareTo(BuildingStep.DOUBLES) >= 0)
                    .isPresent();
        }

        private static double levelDb(Estimate estimate) {
            return estimate.organDba().orElseThrow();
        }

        private Estimate estimate(Registration drawn) {
            return sound.estimate(verse.withRegistration(drawn), people, tempo);
        }

        /** Whether no more rules of a weight are broken than before. */
        private boolean isKept(List<ChorusFault> faultsBefore, Registration drawn, Severity least) {
            return count(faults.in(verse.withRegistration(drawn)), least) <= count(faultsBefore, least);
        }

        private static long count(List<ChorusFault> faults, Severity least) {
            return faults.stream()
                    .filter(fault -> fault.severity() == Severity.CAUTION || least == Severity.REMARK)
                    .count();
        }

        private boolean isSoloed() {
            return verse.mode() == Mode.MELODY_SOLOED
                    && verse.hands().layout().isSoloed()
                    && verse.hands().right() != verse.hands().left();
        }

        /** A soloed melody is made stronger, and what lies beneath it softer. */
        private boolean mayMove(int division) {
            return !isSoloed() || (division == verse.hands().right()) == isUp;
        }

        /** One box of a division that sounds moved by one position. */
        private Optional<Registration> box(Registration drawn) {
            return IntStream.range(
                            0, verse.locks().keepsBoxes() ? 0 : drawn.boxes().size())
                    .filter(division -> organ.isEnclosed(division) && mayMove(division) && isHeard(drawn, division))
                    .filter(division -> mayTurn(drawn, division))
                    .mapToObj(division -> {
                        BoxPosition position = drawn.boxes().get(division);
                        return drawn.withBox(division, isUp ? position.wider() : position.narrower());
                    })
                    .findFirst();
        }

        /** A box over reeds, or over pipes that sound from elsewhere, is not shut altogether. */
        private boolean mayTurn(Registration drawn, int division) {
            BoxPosition position = drawn.boxes().get(division);
            if (isUp) {
                return position != BoxPosition.OPEN;
            }
            boolean isAsunder = drawn.stops().stream()
                    .anyMatch(stop -> isOfReeds(stop, division)
                            || (organ.isBorrowedFromManual(stop) && organ.homeOfPipes(stop) == division));
            return position.compareTo(isAsunder ? BoxPosition.QUARTER : BoxPosition.CLOSED) > 0;
        }

        private boolean isOfReeds(int stop, int division) {
            return organ.divisionOf(stop) == division && organ.layer(stop).isChorusReed();
        }

        private boolean isHeard(Registration drawn, int division) {
            return sounding(drawn).meets(organ.allOf(division));
        }

        private Optional<Registration> next(Registration drawn) {
            if (isUp) {
                return isSoloed()
                        ? louderSolo(drawn)
                        : line.next(drawn).map(addition -> BuildingLine.with(drawn, addition));
            }
            return withoutStranger(drawn).or(() -> line.begun(drawn).stream()
                    .map(addition -> line.without(drawn, addition, verse.locks().always()))
                    .filter(rest -> !rest.equals(drawn))
                    .findFirst());
        }

        /** Without a coupler, or the loudest stop, that sounds, is no part of the order and carries nothing. */
        private Optional<Registration> withoutStranger(Registration drawn) {
            List<ChorusFault> faultsBefore = faults.in(verse.withRegistration(drawn));
            Stream<Registration> couplers = drawn.couplers().stream()
                    .filter(coupler -> organ.keyboardOf(coupler) != organ.pedal()
                            && !line.couplers().contains(coupler))
                    .mapToObj(drawn::toggleCoupler);
            Stream<Registration> stops = sounding(drawn)
                    .minus(line.stops())
                    .minus(verse.locks().always())
                    .stream()
                    .filter(stop -> mayMove(organ.divisionOf(stop)))
                    .boxed()
                    .sorted(Comparator.comparingDouble((Integer stop) -> -organ.levelDb(stop)))
                    .map(drawn::toggleStop);
            return Stream.concat(couplers, stops)
                    .filter(rest -> !sounding(rest).isEmpty() && isKept(faultsBefore, rest, Severity.CAUTION))
                    .findFirst();
        }

        private IndexSet sounding(Registration drawn) {
            return faults.played(verse.withRegistration(drawn)).sounding();
        }

        /** The melody on the next louder stop of its manual; a reed may keep the flute that is drawn. */
        private Optional<Registration> louderSolo(Registration drawn) {
            int manual = verse.hands().right();
            IndexSet own = drawn.stops().and(organ.allOf(manual));
            IndexSet flutes = own.and(organ.of(StopClass.FLUTE_8));
            double nowDb = own.stream().mapToDouble(organ::levelDb).max().orElse(Double.POSITIVE_INFINITY);
            return organ.stopsOf(manual).stream()
                    .filter(stop -> organ.layer(stop).isMelody() && organ.levelDb(stop) > nowDb)
                    .filter(stop -> !verse.locks().never().contains(stop))
                    .sorted(Comparator.comparingDouble(organ::levelDb))
                    .map(stop -> drawn.withStops(drawn.stops()
                            .minus(organ.layer(stop).isEightFootFlue() ? own : own.minus(flutes))
                            .with(stop)))
                    .filter(louder -> isHeard(estimate(drawn), estimate(louder)))
                    .findFirst();
        }
    }
}
