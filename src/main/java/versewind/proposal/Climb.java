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

/**
 * A search that climbs: from the best of the {@link Ladders}, one movement after another as long as one makes it better.
 * Every draft that was scored is kept. It is deterministic, and its effort is counted in climbs, not in time.
 */
final class Climb {

    /**
     * How hard to search.
     *
     * @param climbs from how many starts
     * @param kicks how often the best is shaken and climbed again
     */
    record Effort(int climbs, int kicks) {

        /** For one verse while somebody waits. */
        static final Effort USUAL = new Effort(4, 0);

        /** To see what a usual search misses. */
        static final Effort LONG = new Effort(40, 400);
    }

    private static final int UNLIKE = 3;
    private static final double WITHIN = 6;
    private static final double UNSCORED = Double.POSITIVE_INFINITY;

    private final Disposition organ;
    private final Space space;
    private final Judge judge;
    private final Sounding sounding;
    private final Ladders ladders;
    private final BooleanSupplier goOn;
    private final Map<Draft, Double> scored = new HashMap<>();

    /** What was too dear to be scored to the end, and what it costs at least. */
    private final Map<Draft, Double> rejected = new HashMap<>();

    Climb(Disposition organ, Space space, Judge judge, Sounding sounding, BooleanSupplier goOn) {
        this.organ = organ;
        this.space = space;
        this.judge = judge;
        this.sounding = sounding;
        this.goOn = goOn;
        ladders = new Ladders(organ, space);
    }

    /** A draft and its points. */
    record Scored(Draft draft, double points) {

        /** The best first, and always in the same order. */
        static final Comparator<Scored> BEST_FIRST =
                Comparator.comparingDouble(Scored::points).thenComparing(Scored::draft, Draft.ORDER);
    }

    /** Everything that was scored, the best first. */
    List<Scored> search(Effort effort) {
        List<Draft> starts = starts(effort.climbs());
        starts.forEach(this::climb);
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
        for (Draft draft : ladders.all()) {
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
        double points = judge.points(draft, limit);
        (points <= limit ? scored : rejected).put(draft, points);
        return points;
    }

    private void climb(Draft start) {
        Draft at = space.tidied(start, sounding);
        double points = points(at, Double.POSITIVE_INFINITY);
        while (goOn.getAsBoolean()) {
            Scored next = improved(at, points);
            if (next.points() >= points) {
                return;
            }
            at = next.draft();
            points = next.points();
        }
    }

    /** Goes once through all movements and takes each that makes it better. */
    private Scored improved(Draft start, double startPoints) {
        Draft at = start;
        double points = startPoints;
        for (int kind = 0; kind < KINDS; kind++) {
            for (Movement movement : movements(at, kind)) {
                Draft tried = movement.of(at);
                if (tried.equals(at)) {
                    continue;
                }
                double triedPoints = points(tried, points);
                if (triedPoints < points) {
                    at = tried;
                    points = triedPoints;
                }
            }
        }
        return new Scored(at, points);
    }

    private static final int KINDS = 6;

    @FunctionalInterface
    private interface Movement {
        Draft of(Draft draft);
    }

    private List<Movement> movements(Draft draft, int kind) {
        sounding.look(draft);
        return switch (kind) {
            case 0 -> toggles();
            case 1 -> boxes();
            case 2 -> couplers(draft);
            case 3 -> swaps(draft);
            case 4 -> boxesAndStops();
            default -> hands(draft);
        };
    }

    private List<Movement> toggles() {
        List<Movement> movements = new ArrayList<>();
        for (int stop : space.free(sounding)) {
            movements.add(at -> tidied(at.toggleStop(stop)));
        }
        return movements;
    }

    private List<Movement> boxes() {
        List<Movement> movements = new ArrayList<>();
        for (int division : space.boxes(sounding)) {
            for (BoxPosition position : Space.POSITIONS) {
                movements.add(at -> tidied(at.withBox(division, position)));
            }
        }
        return movements;
    }

    /** A box and a stop of its division together: one makes good for the other. */
    private List<Movement> boxesAndStops() {
        List<Movement> movements = new ArrayList<>();
        if (judge.wish().isPeople()) {
            return movements;
        }
        int[] free = space.free(sounding);
        for (int division : space.boxes(sounding)) {
            for (BoxPosition position : Space.POSITIONS) {
                for (int stop : free) {
                    if (organ.divisionOf(stop) == division) {
                        movements.add(
                                at -> tidied(at.withBox(division, position).toggleStop(stop)));
                    }
                }
            }
        }
        return movements;
    }

    private Draft tidied(Draft draft) {
        return space.tidied(draft, sounding);
    }

    /** A coupler alone, and a coupler with a chorus at its other end. */
    private List<Movement> couplers(Draft draft) {
        List<Movement> movements = new ArrayList<>();
        for (int coupler : space.couplers(draft.hands())) {
            movements.add(at -> tidied(at.toggleCoupler(coupler)));
            int source = organ.sourceOf(coupler);
            if (sounding.isPlayed(source)) {
                continue;
            }
            for (int step = 0; step < Ladders.steps(); step++) {
                IndexSet chorus = ladders.step(source, step);
                movements.add(at -> at.couplers().contains(coupler)
                        ? at
                        : tidied(at.toggleCoupler(coupler).withStops(at.stops().plus(chorus))));
            }
        }
        return movements;
    }

    /** One stop for another of the division. */
    private List<Movement> swaps(Draft draft) {
        List<Movement> movements = new ArrayList<>();
        int[] free = space.free(sounding);
        for (int out : free) {
            for (int in : free) {
                boolean isSwap = draft.stops().contains(out)
                        && !draft.stops().contains(in)
                        && organ.divisionOf(out) == organ.divisionOf(in)
                        && organ.layer(out).isKinOf(organ.layer(in));
                if (isSwap) {
                    movements.add(at -> at.stops().contains(out)
                            ? at.withStops(at.stops().without(out).with(in))
                            : at);
                }
            }
        }
        return movements;
    }

    private List<Movement> hands(Draft draft) {
        List<Movement> movements = new ArrayList<>();
        for (HandsAndFeet other : space.hands()) {
            if (!other.equals(draft.hands())) {
                movements.add(at -> {
                    Draft moved = at.withHands(other);
                    IndexSet kept = space.inPlay(at.couplers(), other);
                    return tidied(moved.with(moved.registration().withCouplers(kept)));
                });
            }
        }
        return movements;
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
