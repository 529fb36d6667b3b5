package versewind.proposal;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import versewind.organ.IndexSet;
import versewind.rules.OrganFacts;

/**
 * The best of a whole {@link SearchSpace}, by depth first and bounds: with some stops decided, {@link
 * ScoreFunction#least} says what any draft costs at least, and a branch that costs more than the best so far is cut.
 *
 * <p>Checked against: {@code ExactTest}, every draft of the space one by one.
 */
final class BranchAndBound {

    /** The most stops of an organ that is searched so. */
    static final int MOST_STOPS = 16;

    private static final double ROUNDING = 1e-9;

    private final OrganFacts organ;
    private final SearchSpace space;
    private final ScoreFunction scoring;
    private final DraftAnalysis sounding;
    private final List<Draft> unlike;
    private final int distance;
    private final BooleanSupplier goOn;

    private Optional<Draft> best = Optional.empty();
    private double bestPoints;

    private BranchAndBound(
            OrganFacts organ,
            SearchSpace space,
            ScoreFunction scoring,
            DraftAnalysis sounding,
            List<Draft> unlike,
            int distance,
            BooleanSupplier goOn) {
        this.organ = organ;
        this.space = space;
        this.scoring = scoring;
        this.sounding = sounding;
        this.unlike = unlike;
        this.distance = distance;
        this.goOn = goOn;
    }

    /**
     * The best draft that differs enough from some.
     *
     * @param unlike drafts from which it differs
     * @param distance by as many knobs at least
     * @param within points that a draft known to differ has; the best has no more
     * @param goOn whether it may go on; else the best so far, if there is any
     */
    static Optional<Draft> best(
            OrganFacts organ,
            SearchSpace space,
            ScoreFunction scoring,
            DraftAnalysis sounding,
            List<Draft> unlike,
            int distance,
            double within,
            BooleanSupplier goOn) {
        BranchAndBound search = new BranchAndBound(organ, space, scoring, sounding, unlike, distance, goOn);
        search.bestPoints = within;
        space.hands()
                .forEach(
                        hands -> search.couplers(space.least(hands), space.couplers(hands), 0, scoring.leastOf(hands)));
        return search.best;
    }

    private void couplers(Draft draft, int[] couplers, int next, double least) {
        if (least > bestPoints + ROUNDING) {
            return;
        }
        if (next < couplers.length) {
            couplers(draft, couplers, next + 1, least);
            couplers(
                    draft.toggleCoupler(couplers[next]),
                    couplers,
                    next + 1,
                    least + scoring.leastOfCoupler(couplers[next]));
            return;
        }
        sounding.look(draft);
        stops(draft, loudestFirst(space.free(sounding)), 0);
    }

    /** What decides most is decided first. */
    private int[] loudestFirst(int[] free) {
        return Arrays.stream(free)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(organ::levelDb).reversed())
                .mapToInt(stop -> stop)
                .toArray();
    }

    private void stops(Draft draft, int[] free, int next) {
        IndexSet undecided = IndexSet.of(Arrays.stream(free, next, free.length));
        if (!goOn.getAsBoolean() || scoring.least(draft, undecided, bestPoints + ROUNDING) > bestPoints + ROUNDING) {
            return;
        }
        if (next < free.length) {
            stops(draft.withStop(free[next]), free, next + 1);
            stops(draft, free, next + 1);
            return;
        }
        sounding.look(draft);
        boxes(draft, space.boxes(sounding), 0);
    }

    private void boxes(Draft draft, int[] boxes, int next) {
        if (next < boxes.length) {
            SearchSpace.POSITIONS.forEach(position -> boxes(draft.withBox(boxes[next], position), boxes, next + 1));
            return;
        }
        if (unlike.stream().anyMatch(other -> other.knobsFrom(draft) < distance)) {
            return;
        }
        double points = scoring.points(draft, bestPoints + ROUNDING);
        boolean isBetter = points < bestPoints
                || (points == bestPoints && (best.isEmpty() || Draft.ORDER.compare(draft, best.get()) < 0));
        if (isBetter) {
            best = Optional.of(draft);
            bestPoints = points;
        }
    }
}
