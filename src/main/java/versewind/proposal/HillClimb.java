package versewind.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet;
import versewind.rules.OrganFacts;

/**
 * A search that climbs: from the best of the {@link SeedRegistrations}, one movement after another as long as one makes
 * it better. Every draft that was scored is kept. It is deterministic, and its effort is counted in climbs, not in
 * time.
 */
final class HillClimb {

    /**
     * How hard to search.
     *
     * @param climbs from how many starts
     * @param kicks how often the best is shaken and climbed again
     */
    record Effort(int climbs, int kicks) {

        /** For one verse while somebody waits. */
        static final Effort USUAL = new Effort(4, 0);

        /** For each of the verses of a service. */
        static final Effort OF_MANY = new Effort(3, 0);

        /** To see what a usual search misses. */
        static final Effort LONG = new Effort(40, 400);
    }

    private static final int UNLIKE = 3;
    private static final double WITHIN = 6;
    private static final double UNSCORED = Double.POSITIVE_INFINITY;

    private final OrganFacts organ;
    private final SearchSpace space;
    private final ScoreFunction scoring;
    private final DraftAnalysis sounding;
    private final SeedRegistrations seeds;
    private final BooleanSupplier goOn;
    private final Map<Draft, Double> scored = new HashMap<>();

    /** What was too dear to be scored to the end, and what it costs at least. */
    private final Map<Draft, Double> rejected = new HashMap<>();

    /** Where the climb stands. */
    private Draft at;

    private double atPoints;

    HillClimb(
            OrganFacts organ, SearchSpace space, ScoreFunction scoring, DraftAnalysis sounding, BooleanSupplier goOn) {
        this.organ = organ;
        this.space = space;
        this.scoring = scoring;
        this.sounding = sounding;
        this.goOn = goOn;
        seeds = new SeedRegistrations(organ, space);
    }

    /** A draft and its points. */
    record Scored(Draft draft, double points) {

        /** The best first, and always in the same order. */
        static final Comparator<Scored> BEST_FIRST =
                Comparator.comparingDouble(Scored::points).thenComparing(Scored::draft, Draft.ORDER);
    }

    /** Everything that was scored, the best first. */
    List<Scored> search(Effort effort) {
        for (Draft start : starts(effort.climbs())) {
            climb(start);
        }
        Shake shake = new Shake();
        for (int kick = 0; kick < effort.kicks() && goOn.getAsBoolean(); kick++) {
            climb(shake.kick(best().draft()));
        }
        return ranked();
    }

    private Scored best() {
        return scored.entrySet().stream()
                .map(each -> new Scored(each.getKey(), each.getValue()))
                .min(Scored.BEST_FIRST)
                .orElseThrow();
    }

    private List<Scored> ranked() {
        return scored.entrySet().stream()
                .filter(each -> each.getValue() != UNSCORED)
                .map(each -> new Scored(each.getKey(), each.getValue()))
                .sorted(Scored.BEST_FIRST)
                .toList();
    }

    private List<Draft> starts(int count) {
        double best = Double.POSITIVE_INFINITY;
        for (Draft draft : seeds.all()) {
            best = Math.min(best, points(space.tidied(draft, sounding), best + WITHIN));
        }
        List<Draft> starts = new ArrayList<>();
        for (Scored each : ranked()) {
            if (starts.size() < count && starts.stream().allMatch(other -> other.knobsFrom(each.draft()) >= UNLIKE)) {
                starts.add(each.draft());
            }
        }
        return starts;
    }

    /** Points of a draft, or some number above the limit. */
    private double points(Draft draft, double limit) {
        Double known = scored.get(draft);
        if (known != null) {
            return known;
        }
        Double atLeast = rejected.get(draft);
        if (atLeast != null && atLeast > limit) {
            return atLeast;
        }
        double points = scoring.points(draft, limit);
        (points <= limit ? scored : rejected).put(draft, points);
        return points;
    }

    private void climb(Draft start) {
        at = space.tidied(start, sounding);
        atPoints = points(at, Double.POSITIVE_INFINITY);
        double before = Double.POSITIVE_INFINITY;
        while (atPoints < before && goOn.getAsBoolean()) {
            before = atPoints;
            toggleStops();
            moveBoxes();
            toggleCouplers();
            swapStops();
            moveBoxesWithStops();
            moveHands();
        }
    }

    /** Goes to a draft if it is better. */
    private void consider(Draft tried) {
        if (tried.equals(at)) {
            return;
        }
        double triedPoints = points(tried, atPoints);
        if (triedPoints < atPoints) {
            at = tried;
            atPoints = triedPoints;
        }
    }

    private Draft tidied(Draft draft) {
        return space.tidied(draft, sounding);
    }

    /** The stops that may be moved where somebody stands now. */
    private int[] free() {
        sounding.look(at);
        return space.free(sounding);
    }

    private void toggleStops() {
        for (int stop : free()) {
            Draft toggled = at.toggleStop(stop);
            consider(at.stops().contains(stop) ? tidied(toggled) : toggled);
        }
    }

    private void moveBoxes() {
        sounding.look(at);
        for (int division : space.boxes(sounding)) {
            for (BoxPosition position : SearchSpace.POSITIONS) {
                consider(tidied(at.withBox(division, position)));
            }
        }
    }

    /** A box and a stop of its division together: one makes good for the other. */
    private void moveBoxesWithStops() {
        if (scoring.requirement().isPeople()) {
            return;
        }
        int[] free = free();
        for (int division : space.boxes(sounding)) {
            for (BoxPosition position : SearchSpace.POSITIONS) {
                for (int stop : free) {
                    if (organ.divisionOf(stop) == division) {
                        consider(tidied(at.withBox(division, position).toggleStop(stop)));
                    }
                }
            }
        }
    }

    /** A coupler alone, and a coupler with a chorus at its other end. */
    private void toggleCouplers() {
        sounding.look(at);
        boolean[] isPlayed = new boolean[organ.organ().divisions().size()];
        for (int division = 0; division < isPlayed.length; division++) {
            isPlayed[division] = sounding.isPlayed(division);
        }
        for (int coupler : space.couplers(at.hands())) {
            consider(tidied(at.toggleCoupler(coupler)));
            int source = organ.sourceOf(coupler);
            for (int step = 0; step < SeedRegistrations.steps() && !isPlayed[source]; step++) {
                if (!at.couplers().contains(coupler)) {
                    IndexSet chorus = seeds.step(source, step);
                    consider(tidied(
                            at.toggleCoupler(coupler).withStops(at.stops().plus(chorus))));
                }
            }
        }
    }

    /** One stop for another of the division. */
    private void swapStops() {
        int[] free = free();
        for (int out : free) {
            for (int in : free) {
                boolean isSwap = organ.divisionOf(out) == organ.divisionOf(in)
                        && at.stops().contains(out)
                        && !at.stops().contains(in)
                        && organ.layer(out).isKinOf(organ.layer(in));
                if (isSwap) {
                    consider(at.withStops(at.stops().without(out).with(in)));
                }
            }
        }
    }

    private void moveHands() {
        for (HandsAndFeet other : space.hands()) {
            if (!other.equals(at.hands()) && scoring.leastOf(other) < atPoints) {
                Draft moved = at.withHands(other);
                IndexSet kept = space.inPlay(at.couplers(), other);
                consider(tidied(moved.with(moved.registration().withCouplers(kept))));
            }
        }
    }

    /** Shakes a draft, every time otherwise, and always in the same way. */
    private final class Shake {
        private static final long MULTIPLIER = 6364136223846793005L;
        private static final long INCREMENT = 1442695040888963407L;
        private static final int STRENGTH = 4;

        private long state = 1;

        Draft kick(Draft draft) {
            Draft shaken = draft;
            for (int i = 0; i < STRENGTH; i++) {
                sounding.look(shaken);
                int[] free = space.free(sounding);
                int[] couplers = space.couplers(shaken.hands());
                int which = next(free.length + couplers.length);
                shaken = which < free.length
                        ? shaken.toggleStop(free[which])
                        : shaken.toggleCoupler(couplers[which - free.length]);
            }
            return shaken;
        }

        private int next(int bound) {
            state = state * MULTIPLIER + INCREMENT;
            return (int) ((state >>> 33) % Math.max(1, bound));
        }
    }
}
