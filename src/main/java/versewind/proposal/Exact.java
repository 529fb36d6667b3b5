package versewind.proposal;

import java.util.List;
import java.util.Optional;

/**
 * The best of a whole {@link Space}, by depth first and bounds: what stops, couplers and hands cost by themselves is never
 * more than the whole, and the words of a voice are covered by every stop more, so that a branch which costs more already
 * than the best so far is cut.
 *
 * <p>Checked against: {@code ExactTest}, every draft of the space one by one.
 */
final class Exact {

    /** The most stops of an organ that is searched so. */
    static final int MOST_STOPS = 16;

    private static final double ROUNDING = 1e-9;

    private final Space space;
    private final Judge judge;
    private final Sounding sounding;
    private final List<Draft> unlike;
    private final int distance;

    private Optional<Draft> best = Optional.empty();
    private double bestPoints;

    private Exact(Space space, Judge judge, Sounding sounding, List<Draft> unlike, int distance) {
        this.space = space;
        this.judge = judge;
        this.sounding = sounding;
        this.unlike = unlike;
        this.distance = distance;
    }

    /**
     * The best draft that differs enough from some.
     *
     * @param unlike drafts from which it differs
     * @param distance by as many knobs at least
     * @param within points that a draft known to differ has; the best has no more
     */
    static Optional<Draft> best(
            Space space, Judge judge, Sounding sounding, List<Draft> unlike, int distance, double within) {
        Exact search = new Exact(space, judge, sounding, unlike, distance);
        search.bestPoints = within;
        space.hands().forEach(hands -> search.couplers(space.least(hands), space.couplers(hands), 0, 0));
        return search.best;
    }

    private void couplers(Draft draft, int[] couplers, int next, double least) {
        if (least > bestPoints + ROUNDING) {
            return;
        }
        if (next < couplers.length) {
            couplers(draft, couplers, next + 1, least);
            couplers(draft.toggleCoupler(couplers[next]), couplers, next + 1, least + Sparing.ofACoupler());
            return;
        }
        sounding.look(draft);
        stops(draft, space.free(sounding), 0, least);
    }

    private void stops(Draft draft, int[] free, int next, double least) {
        if (least > bestPoints + ROUNDING || least + leastOfVoice(draft) > bestPoints + ROUNDING) {
            return;
        }
        if (next < free.length) {
            stops(draft.withStop(free[next]), free, next + 1, least + judge.leastOf(free[next]));
            stops(draft, free, next + 1, least);
            return;
        }
        sounding.look(draft);
        boxes(draft, space.boxes(sounding), 0);
    }

    /**
     * What the margin of a voice costs at least, whatever is drawn besides: every stop more covers the words more, and a
     * closed box least. The lead of a congregation has no such bound, since what is drawn besides may also draw the
     * weight to bands that the people cover.
     */
    private double leastOfVoice(Draft draft) {
        boolean isVoice = judge.wish().role() == Role.CHOIR || judge.wish().role() == Role.SOLOIST;
        if (!isVoice || draft.stops().isEmpty()) {
            return 0;
        }
        double marginDb = judge.marginDb(space.closed(draft));
        return marginDb < judge.wish().target().centreDb() ? judge.ofMargin(marginDb) : 0;
    }

    private void boxes(Draft draft, int[] boxes, int next) {
        if (next < boxes.length) {
            Space.POSITIONS.forEach(position -> boxes(draft.withBox(boxes[next], position), boxes, next + 1));
            return;
        }
        if (unlike.stream().anyMatch(other -> other.knobsFrom(draft) < distance)) {
            return;
        }
        double points = judge.points(draft, bestPoints + ROUNDING);
        boolean isBetter = points < bestPoints
                || (points == bestPoints && (best.isEmpty() || Draft.ORDER.compare(draft, best.get()) < 0));
        if (isBetter) {
            best = Optional.of(draft);
            bestPoints = points;
        }
    }
}
