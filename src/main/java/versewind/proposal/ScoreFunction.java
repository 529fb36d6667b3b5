package versewind.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.rules.ChorusFault;
import versewind.rules.ChorusFaults;
import versewind.rules.OrganFacts;
import versewind.rules.StopChanges;
import versewind.sound.MarginEvaluator;

/**
 * Scores drafts for one verse, in penalty points; 0 is perfect. The points, the score with its reasons and the lower
 * bound for branch and bound are sums over one list of criteria. Deterministic. Not thread-safe: buffers are reused.
 */
final class ScoreFunction {

    private static final double POINTS_A_DB = 2;

    /** Bounds of the margin are computed in another order and may be off in the last digits. */
    private static final double HAIR_DB = 1e-6;

    /** Cost of a neighbouring verse that sounds the same; the same but for a box; the same to the ear. */
    private static final double SAME = 1.2;

    private static final double SAME_BUT_FOR_A_BOX = 0.6;
    private static final double SAME_BUT_FOR_A_SHADE = 0.8;

    private enum Bound {
        /** A lower bound while stops are undecided: what is too much remains so, what is missed may yet be drawn. */
        ALWAYS,
        /** Of a meaning for a whole draft only. */
        WHOLE
    }

    private record Criterion(PartKind kind, Bound bound, Consumer<Tally> add) {}

    private final OrganFacts organ;
    private final Requirement requirement;
    private final ChorusFaults faults;
    private final MarginEvaluator margins;
    private final DraftAnalysis sounding;
    private final Economy economy;
    private final PlayingCost playing;
    private final IndexSet heardBefore;
    private final List<Likeness> neighbours = new ArrayList<>();
    private final List<Criterion> criteria;
    private final List<Criterion> bounds;
    private final Tally silent = Tally.silent();

    /** The margin in dB of the draft that is looked at; NaN until a criterion asks for it. */
    private double marginDb;

    private DoubleSupplier margin = () -> Double.NaN;

    ScoreFunction(OrganFacts organ, Requirement requirement, ChorusFaults faults, MarginEvaluator margins) {
        this.organ = organ;
        this.requirement = requirement;
        this.faults = faults;
        this.margins = margins;
        sounding = new DraftAnalysis(organ);
        economy = new Economy(organ, requirement);
        playing = new PlayingCost(organ, requirement);
        criteria = criteria(
                new Colour(organ, requirement),
                new CoupledChorus(organ, requirement),
                new PedalLine(organ, requirement));
        bounds = criteria.stream().filter(each -> each.bound == Bound.ALWAYS).toList();
        requirement.neighbours().before().ifPresent(sounding::look);
        heardBefore = requirement.neighbours().before().isPresent() ? sounding.withinEarshot() : IndexSet.EMPTY;
        for (Draft unlike : requirement.neighbours().unlike()) {
            sounding.look(unlike);
            neighbours.add(new Likeness(unlike, sounding.shade()));
        }
    }

    /** The criteria, the cheapest to compute first. */
    private List<Criterion> criteria(Colour colour, CoupledChorus coupled, PedalLine pedal) {
        return List.of(
                new Criterion(PartKind.COLOUR, Bound.ALWAYS, tally -> colour.add(sounding, tally)),
                new Criterion(PartKind.COLOUR, Bound.ALWAYS, tally -> coupled.add(sounding, tally)),
                new Criterion(PartKind.SPARING, Bound.ALWAYS, tally -> economy.add(sounding, tally)),
                new Criterion(PartKind.PLAYING, Bound.ALWAYS, tally -> playing.add(sounding, tally)),
                new Criterion(PartKind.PLAYING, Bound.WHOLE, tally -> playing.addBoxes(sounding, tally)),
                new Criterion(PartKind.PEDAL, Bound.ALWAYS, tally -> pedal.add(sounding, tally)),
                new Criterion(PartKind.MOVEMENTS, Bound.WHOLE, this::addChanges),
                new Criterion(PartKind.VARIETY, Bound.WHOLE, this::addVariety),
                new Criterion(PartKind.RULES, Bound.WHOLE, this::addFaults),
                new Criterion(PartKind.BALANCE, Bound.ALWAYS, tally -> tally.add(balance(), "")),
                new Criterion(PartKind.RULES, Bound.ALWAYS, tally -> tally.add(verdict(), "")),
                new Criterion(PartKind.SHAPE, Bound.WHOLE, this::addGrowth));
    }

    Requirement requirement() {
        return requirement;
    }

    /** Least cost of drawing a coupler. */
    double leastOfCoupler(int coupler) {
        return economy.ofACoupler(coupler);
    }

    /** Least cost of a way to play it. */
    double leastOf(HandsAndFeet hands) {
        return playing.leastOf(hands);
    }

    /** All points of a draft; some number above the limit if they are more than that. */
    double points(Draft draft, double limit) {
        sounding.look(draft);
        return sum(criteria, limit, () -> marginDb(draft));
    }

    /**
     * Least cost of any draft that has the couplers and the hands of one, all of its stops, and perhaps some more.
     *
     * @param draft what is drawn in any case
     * @param undecided stops that may be drawn besides
     * @param limit above which the sum need not be exact
     */
    double least(Draft draft, IndexSet undecided, double limit) {
        sounding.look(draft, undecided);
        return sum(bounds, limit, () -> nearestDb(draft, undecided));
    }

    private double sum(List<Criterion> parts, double limit, DoubleSupplier marginOfDraft) {
        silent.clear();
        weigh(marginOfDraft);
        for (Criterion each : parts) {
            if (silent.points() > limit) {
                break;
            }
            each.add.accept(silent);
        }
        return silent.points();
    }

    /** The score taken apart. */
    Score score(Draft draft) {
        sounding.look(draft);
        weigh(() -> marginDb(draft));
        return new Score(Stream.of(PartKind.values()).map(this::part).toList());
    }

    private ScorePart part(PartKind kind) {
        Tally tally = Tally.telling();
        criteria.stream().filter(each -> each.kind == kind).forEach(each -> each.add.accept(tally));
        return new ScorePart(kind, tally.points(), sentence(kind, tally));
    }

    private String sentence(PartKind kind, Tally tally) {
        return switch (kind) {
            case BALANCE -> MarginSentences.balance(requirement, margin());
            case RULES -> tally.points() > 0 ? brokenRules() : tally.sentence(organ.organ(), kind.otherwise());
            case COLOUR, PEDAL, SPARING, PLAYING, MOVEMENTS, VARIETY, SHAPE ->
                tally.sentence(organ.organ(), kind.otherwise());
        };
    }

    private String brokenRules() {
        return Stream.concat(
                                Verdicts.broken(requirement, margin()).stream().map(Verdicts::sentence),
                                faults().stream().map(ChorusFault::sentence))
                        .map(each -> each.substring(0, each.length() - 1))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    /** The margin in dB. */
    double marginDb(Draft draft) {
        return margins.marginDb(draft.registration(), draft.hands());
    }

    private void weigh(DoubleSupplier marginOfDraft) {
        margin = marginOfDraft;
        marginDb = Double.NaN;
    }

    private double margin() {
        if (Double.isNaN(marginDb)) {
            marginDb = margin.getAsDouble();
        }
        return marginDb;
    }

    /** The margin nearest to the target that a draft can have with more of its stops and with its boxes anywhere. */
    private double nearestDb(Draft draft, IndexSet undecided) {
        Registration least = boxed(draft.registration(), BoxPosition.CLOSED);
        Registration most = boxed(draft.registration(), BoxPosition.OPEN)
                .withStops(draft.stops().plus(undecided));
        MarginEvaluator.Bounds reached = margins.boundsDb(least, most, draft.hands());
        double centreDb = requirement.target().centreDb();
        if (reached.highDb() < centreDb) {
            return reached.highDb() + HAIR_DB;
        }
        return reached.lowDb() > centreDb ? reached.lowDb() - HAIR_DB : centreDb;
    }

    private Registration boxed(Registration drawn, BoxPosition position) {
        Registration moved = drawn;
        for (int division = 0; division < drawn.boxes().size(); division++) {
            moved = organ.isEnclosed(division) ? moved.withBox(division, position) : moved;
        }
        return moved;
    }

    /** Cost of the distance from the target. */
    private double balance() {
        return POINTS_A_DB * Math.max(0, requirement.target().distanceDb(margin(), requirement.sdDb()));
    }

    /** Cost of the rule that the margin breaks. */
    private double verdict() {
        return Verdicts.weight(requirement, margin());
    }

    private List<ChorusFault> faults() {
        Draft draft = sounding.draft();
        return faults.in(draft.registration(), draft.hands(), requirement.company());
    }

    private void addFaults(Tally tally) {
        for (ChorusFault fault : faults()) {
            tally.add(fault.weight(), "");
        }
    }

    private void addGrowth(Tally tally) {
        Optional<GrowthTarget> growth = requirement.neighbours().rise();
        if (growth.isPresent()) {
            tally.add(growth.get().cost(margin()), growth.get().words());
        }
    }

    private void addChanges(Tally tally) {
        if (requirement.neighbours().before().isPresent()) {
            StopChanges changes = StopChanges.between(
                    requirement.neighbours().before().get().registration(),
                    sounding.draft().registration());
            int unheard = ChangeTime.unheard(changes, heardBefore, sounding.withinEarshot());
            requirement.neighbours().breath().add(changes, unheard, sounding::isHeard, tally);
        }
    }

    private void addVariety(Tally tally) {
        for (Likeness other : neighbours) {
            tally.add(
                    sameness(new Likeness(sounding.draft(), sounding.shade()), other),
                    "a neighbouring verse sounds much the same");
        }
    }

    /**
     * A draft and what the ear makes of it.
     *
     * @param draft what is drawn
     * @param shade hash of its sound, {@link DraftAnalysis#shade}
     */
    record Likeness(Draft draft, long shade) {}

    /** Cost of two neighbours that sound alike. */
    static double sameness(Likeness one, Likeness other) {
        if (one.draft().knobsFrom(other.draft()) > 0) {
            return one.shade() == other.shade() ? SAME_BUT_FOR_A_SHADE : 0;
        }
        boolean isBoxed = one.draft()
                .registration()
                .boxes()
                .equals(other.draft().registration().boxes());
        return isBoxed ? SAME : SAME_BUT_FOR_A_BOX;
    }
}
