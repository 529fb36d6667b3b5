package versewind.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.rules.ChorusFault;
import versewind.rules.ChorusFaults;
import versewind.rules.StopChanges;
import versewind.sound.MarginEvaluator;

/** What speaks against drafts for one verse. To be asked again and again by one thread; it answers always the same. */
final class ScoreFunction {

    private static final double POINTS_A_DB = 2;

    /** Bounds are reckoned in another order and may be off in the last digits. */
    private static final double HAIR_DB = 1e-6;

    private static final double SAME = 1.2;
    private static final double SAME_BUT_FOR_A_BOX = 0.6;
    private static final double SAME_BUT_FOR_A_SHADE = 0.8;

    private final OrganFacts organ;
    private final Requirement wish;
    private final ChorusFaults faults;
    private final MarginEvaluator evaluator;
    private final DraftAnalysis sounding;
    private final Colour colour;
    private final PedalLine pedal;
    private final Economy sparing;
    private final PlayingCost playing;
    private final CoupledChorus ownChorus;
    private final IndexSet heardBefore;
    private final List<Likeness> neighbours = new ArrayList<>();
    private final Tally silent = Tally.silent();

    ScoreFunction(OrganFacts organ, Requirement wish, ChorusFaults faults, MarginEvaluator evaluator) {
        this.organ = organ;
        this.wish = wish;
        this.faults = faults;
        this.evaluator = evaluator;
        sounding = new DraftAnalysis(organ);
        colour = new Colour(organ, wish);
        pedal = new PedalLine(organ, wish);
        sparing = new Economy(organ, wish);
        playing = new PlayingCost(organ, wish);
        ownChorus = new CoupledChorus(organ, wish);
        wish.neighbours().before().ifPresent(sounding::look);
        heardBefore = wish.neighbours().before().isPresent() ? sounding.withinEarshot() : IndexSet.EMPTY;
        for (Draft unlike : wish.neighbours().unlike()) {
            sounding.look(unlike);
            neighbours.add(new Likeness(unlike, sounding.shade()));
        }
    }

    Requirement wish() {
        return wish;
    }

    /** What drawing a coupler costs at least. */
    double leastOfCoupler(int coupler) {
        return sparing.ofACoupler(coupler);
    }

    /** What a way to play it costs at least. */
    double leastOf(HandsAndFeet hands) {
        return playing.leastOf(hands);
    }

    /**
     * What any draft costs at least that has the couplers and the hands of one, all of its stops, and perhaps some more:
     * what is too much remains so, what is missed may yet be drawn.
     *
     * @param draft what is drawn in any case
     * @param undecided stops that may be drawn besides
     * @param limit from where on it need not be known how much more
     */
    double least(Draft draft, IndexSet undecided, double limit) {
        sounding.look(draft, undecided);
        silent.clear();
        colour.add(sounding, silent);
        ownChorus.add(sounding, silent);
        sparing.add(sounding, silent);
        playing.add(sounding, silent);
        pedal.add(sounding, silent);
        if (silent.points() <= limit) {
            Registration least = boxed(draft.registration(), BoxPosition.CLOSED);
            Registration most = boxed(draft.registration(), BoxPosition.OPEN)
                    .withStops(draft.stops().plus(undecided));
            silent.add(leastOfMargin(evaluator.boundsDb(least, most, draft.hands())), "");
        }
        return silent.points();
    }

    private Registration boxed(Registration drawn, BoxPosition position) {
        Registration moved = drawn;
        for (int division = 0; division < drawn.boxes().size(); division++) {
            moved = organ.isEnclosed(division) ? moved.withBox(division, position) : moved;
        }
        return moved;
    }

    private double leastOfMargin(MarginEvaluator.Bounds marginDb) {
        double centreDb = wish.target().centreDb();
        if (marginDb.highDb() < centreDb) {
            return ofMargin(marginDb.highDb() + HAIR_DB);
        }
        return marginDb.lowDb() > centreDb ? ofMargin(marginDb.lowDb() - HAIR_DB) : 0;
    }

    /** All points of a draft; some number above the limit if they are more than that. */
    double points(Draft draft, double limit) {
        sounding.look(draft);
        silent.clear();
        colour.add(sounding, silent);
        ownChorus.add(sounding, silent);
        if (silent.points() <= limit) {
            sparing.add(sounding, silent);
        }
        if (silent.points() <= limit) {
            playing.add(sounding, silent);
            playing.addBoxes(sounding, silent);
            pedal.add(sounding, silent);
        }
        if (silent.points() <= limit) {
            addMovements(silent);
            addVariety(silent);
        }
        if (silent.points() <= limit) {
            addRules(silent);
        }
        if (silent.points() <= limit) {
            double marginDb = marginDb(draft);
            silent.add(ofMargin(marginDb), "");
            addRise(marginDb, silent);
        }
        return silent.points();
    }

    private void addRise(double marginDb, Tally tally) {
        Optional<GrowthTarget> rise = wish.neighbours().rise();
        if (rise.isPresent()) {
            tally.add(rise.get().cost(marginDb), rise.get().words());
        }
    }

    /** What a margin costs: its distance from the target, and the rule that it breaks. */
    double ofMargin(double marginDb) {
        return balance(marginDb) + Verdicts.weight(wish, marginDb);
    }

    /** The margin in dB. */
    double marginDb(Draft draft) {
        return evaluator.marginDb(draft.registration(), draft.hands());
    }

    private double balance(double marginDb) {
        return POINTS_A_DB * Math.max(0, wish.target().distanceDb(marginDb, wish.sdDb()));
    }

    private void addRules(Tally tally) {
        Draft draft = sounding.draft();
        for (ChorusFault fault : faults.in(draft.registration(), draft.hands(), wish.company())) {
            tally.add(fault.weight(), "");
        }
    }

    private void addMovements(Tally tally) {
        if (wish.neighbours().before().isPresent()) {
            StopChanges moves = StopChanges.between(
                    wish.neighbours().before().get().registration(),
                    sounding.draft().registration());
            int unheard = ChangeTime.unheard(moves, heardBefore, sounding.withinEarshot());
            wish.neighbours().breath().add(moves, unheard, sounding::isHeard, tally);
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
     * @param shade of its sound, {@link DraftAnalysis#shade}
     */
    record Likeness(Draft draft, long shade) {}

    /** What it costs that two neighbours sound alike. */
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

    /** The score taken apart. */
    Score score(Draft draft) {
        sounding.look(draft);
        List<ScorePart> parts = new ArrayList<>();
        double marginDb = marginDb(draft);
        parts.add(new ScorePart(PartKind.BALANCE, balance(marginDb), MarginSentences.balance(wish, marginDb)));
        parts.add(rules(draft, marginDb));
        parts.add(part(PartKind.COLOUR, tally -> {
            colour.add(sounding, tally);
            ownChorus.add(sounding, tally);
        }));
        parts.add(part(PartKind.PEDAL, tally -> pedal.add(sounding, tally)));
        parts.add(part(PartKind.SPARING, tally -> sparing.add(sounding, tally)));
        parts.add(part(PartKind.PLAYING, tally -> {
            playing.add(sounding, tally);
            playing.addBoxes(sounding, tally);
        }));
        parts.add(part(PartKind.MOVEMENTS, this::addMovements));
        parts.add(part(PartKind.VARIETY, this::addVariety));
        parts.add(part(PartKind.SHAPE, tally -> addRise(marginDb, tally)));
        return new Score(parts);
    }

    private ScorePart rules(Draft draft, double marginDb) {
        List<ChorusFault> found = faults.in(draft.registration(), draft.hands(), wish.company());
        double points = found.stream().mapToDouble(ChorusFault::weight).sum();
        List<String> sentences = new ArrayList<>();
        Verdicts.broken(wish, marginDb).ifPresent(rule -> sentences.add(Verdicts.sentence(rule)));
        found.forEach(fault -> sentences.add(fault.sentence()));
        String sentence = sentences.isEmpty()
                ? sentence(PartKind.RULES, Tally.silent())
                : sentences.stream()
                                .map(each -> each.substring(0, each.length() - 1))
                                .collect(Collectors.joining("; "))
                        + ".";
        return new ScorePart(PartKind.RULES, points + Verdicts.weight(wish, marginDb), sentence);
    }

    private ScorePart part(PartKind kind, Consumer<Tally> adding) {
        Tally tally = Tally.telling();
        adding.accept(tally);
        return new ScorePart(kind, tally.points(), sentence(kind, tally));
    }

    private String sentence(PartKind kind, Tally tally) {
        return tally.sentence(organ.organ(), kind.otherwise());
    }
}
