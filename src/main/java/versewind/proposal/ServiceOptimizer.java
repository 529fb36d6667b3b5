package versewind.proposal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import versewind.organ.Knobs;

/**
 * Of the candidates of every verse those that together cost least: their points, what has to be moved from one to the
 * next, and sameness, with as many pistons as there are.
 *
 * <p>For given pistons the best chain is found by dynamic programming over the candidates. Which registrations have a
 * piston is decided by branch and bound: where more have one in the best chain than there are, one of them is given a
 * piston for good, or none. As long as no more than {@link #MOST_BRANCHES} are looked at the result is the optimum of
 * its candidates; else {@link Best#bound} says how far below it may lie.
 *
 * <p>Checked against: {@code ServiceOptimizerTest}, every chain with every choice of pistons.
 */
final class ServiceOptimizer {

    /** How many choices of pistons are looked at. */
    static final int MOST_BRANCHES = 600;

    private static final double ROUNDING = 1e-9;

    private final List<VerseCandidates> stages;
    private final int pistons;
    private final int[][] setting;
    private final boolean[] isOwned;
    private final double[][][] byHand;
    private final double[][][] byEither;
    private final boolean[] may;

    /** What a verse costs that sounds as the two before it: from each candidate of the verse before to each; else 0. */
    private final double[][][] thirdAlike;

    private Best best;
    private double bound = Double.POSITIVE_INFINITY;
    private int branches;

    /**
     * A chain.
     *
     * @param candidates for each verse the index of the one that is chosen
     * @param cost of all
     * @param bound the least that any chain of these candidates can cost
     * @param pistons what is set on pistons, in the order of need; those that were there already left out
     */
    record Best(List<Integer> candidates, double cost, double bound, List<Knobs> pistons) {}

    /**
     * Reads the stages.
     *
     * @param stages the verses, in their order
     * @param pistons how many registrations may be set on pistons
     * @param owned what is set on a piston already
     */
    ServiceOptimizer(List<VerseCandidates> stages, int pistons, Set<Knobs> owned) {
        this.stages = stages;
        this.pistons = pistons;
        Map<Knobs, Integer> numbers = new LinkedHashMap<>();
        setting = new int[stages.size()][];
        byHand = new double[stages.size()][][];
        byEither = new double[stages.size()][][];
        for (int i = 0; i < setting.length; i++) {
            List<Candidate> candidates = stages.get(i).candidates();
            setting[i] = new int[candidates.size()];
            for (int c = 0; c < setting[i].length; c++) {
                Knobs each = candidates.get(c).setting();
                setting[i][c] = numbers.computeIfAbsent(each, key -> numbers.size());
            }
        }
        settings = List.copyOf(numbers.keySet());
        isOwned = new boolean[settings.size()];
        for (int s = 0; s < isOwned.length; s++) {
            isOwned[s] = owned.contains(settings.get(s));
        }
        may = new boolean[settings.size()];
        thirdAlike = new double[stages.size()][][];
        for (int i = 1; i < setting.length; i++) {
            weigh(i);
        }
    }

    private final List<Knobs> settings;

    /** Costs of coming from each candidate of the verse before to each of a verse. */
    private void weigh(int stage) {
        List<Candidate> from = stages.get(stage - 1).candidates();
        List<Candidate> to = stages.get(stage).candidates();
        byHand[stage] = new double[to.size()][from.size()];
        byEither[stage] = new double[to.size()][from.size()];
        thirdAlike[stage] = new double[to.size()][from.size()];
        Succession succession = stages.get(stage).succession();
        for (int b = 0; b < to.size(); b++) {
            for (int a = 0; a < from.size(); a++) {
                thirdAlike[stage][b][a] = succession.thirdAlike(from.get(a), to.get(b));
                Succession.Cost cost = succession.cost(from.get(a), to.get(b));
                byHand[stage][b][a] = cost.standing() + cost.byHand();
                byEither[stage][b][a] = cost.standing() + cost.byPiston();
            }
        }
    }

    /** The best chain; when it may not go on any more, the best so far. */
    Best best(BooleanSupplier goOn) {
        best = greedy();
        branches = 0;
        branch(new HashSet<>(), new HashSet<>(), goOn);
        return new Best(best.candidates(), best.cost(), Math.min(bound, best.cost()), best.pistons());
    }

    private void branch(Set<Integer> given, Set<Integer> denied, BooleanSupplier goOn) {
        for (int s = 0; s < may.length; s++) {
            may[s] = isOwned[s] || given.contains(s) || (given.size() < pistons && !denied.contains(s));
        }
        int[] path = cheapest();
        double cost = cost(path);
        if (cost >= best.cost() - ROUNDING) {
            return;
        }
        Map<Integer, Double> used = used(path);
        used.keySet().removeAll(given);
        if (given.size() + used.size() <= pistons) {
            best = new Best(boxed(path), cost, cost, pistonsOf(path));
            return;
        }
        if (branches++ >= MOST_BRANCHES || !goOn.getAsBoolean()) {
            bound = Math.min(bound, cost);
            return;
        }
        int dearest = used.entrySet().stream()
                .max(Map.Entry.<Integer, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .orElseThrow()
                .getKey();
        branch(with(given, dearest), denied, goOn);
        branch(given, with(denied, dearest), goOn);
    }

    private static Set<Integer> with(Set<Integer> set, int more) {
        Set<Integer> other = new HashSet<>(set);
        other.add(more);
        return other;
    }

    /** From every candidate of the verse before. */
    private double[] steps(int stage, int to) {
        return (may[setting[stage][to]] ? byEither : byHand)[stage][to];
    }

    private double step(int stage, int to, int from) {
        return steps(stage, to)[from];
    }

    private double points(int stage, int candidate) {
        return stages.get(stage).candidates().get(candidate).points();
    }

    /**
     * Dynamic programming: the cheapest way to each candidate of a verse, from those to the verse before. A candidate
     * is looked at twice: as something new, and, in the second half of the arrays, as what the verse before has too.
     */
    private int[] cheapest() {
        int[][] cameFrom = new int[setting.length][];
        double[] before = {};
        for (int i = 0; i < setting.length; i++) {
            double[] here = new double[2 * setting[i].length];
            Arrays.fill(here, Double.POSITIVE_INFINITY);
            cameFrom[i] = new int[here.length];
            for (int b = 0; b < setting[i].length; b++) {
                if (i == 0) {
                    here[b] = points(i, b);
                } else {
                    reach(i, b, before, here, cameFrom[i]);
                }
            }
            before = here;
        }
        int[] path = new int[setting.length];
        int at = least(before);
        for (int i = path.length - 1; i >= 0; i--) {
            path[i] = at % setting[i].length;
            at = cameFrom[i][at];
        }
        return path;
    }

    private void reach(int stage, int to, double[] before, double[] here, int[] cameFrom) {
        double[] steps = steps(stage, to);
        for (int from = 0; from < before.length; from++) {
            int candidate = from % steps.length;
            double third = thirdAlike[stage][to][candidate];
            boolean isSame = third > 0;
            int at = isSame ? setting[stage].length + to : to;
            double cost = before[from] + steps[candidate] + points(stage, to) + (from >= steps.length ? third : 0);
            if (cost < here[at]) {
                here[at] = cost;
                cameFrom[at] = from;
            }
        }
    }

    private static int least(double[] costs) {
        int least = 0;
        for (int i = 1; i < costs.length; i++) {
            least = costs[i] < costs[least] ? i : least;
        }
        return least;
    }

    private double cost(int[] path) {
        double cost = 0;
        boolean wasSame = false;
        for (int i = 0; i < path.length; i++) {
            double third = i > 0 ? thirdAlike[i][path[i]][path[i - 1]] : 0;
            cost += points(i, path[i]) + (i == 0 ? 0 : step(i, path[i], path[i - 1]));
            cost += wasSame ? third : 0;
            wasSame = third > 0;
        }
        return cost;
    }

    /** The settings for which a piston is pushed, and what that saves. */
    private Map<Integer, Double> used(int[] path) {
        Map<Integer, Double> used = new HashMap<>();
        for (int i = 1; i < path.length; i++) {
            int s = setting[i][path[i]];
            double saved = byHand[i][path[i]][path[i - 1]] - byEither[i][path[i]][path[i - 1]];
            if (may[s] && !isOwned[s] && saved > 0) {
                used.merge(s, saved, Double::sum);
            }
        }
        return used;
    }

    private List<Knobs> pistonsOf(int[] path) {
        Set<Integer> used = used(path).keySet();
        List<Knobs> order = new ArrayList<>();
        for (int i = 0; i < path.length; i++) {
            int s = setting[i][path[i]];
            if (used.contains(s) && !order.contains(settings.get(s))) {
                order.add(settings.get(s));
            }
        }
        return order;
    }

    private static List<Integer> boxed(int[] path) {
        return Arrays.stream(path).boxed().toList();
    }

    /**
     * What somebody would do who thinks of one verse after another and sets a piston where it helps, while there are
     * any.
     */
    Best greedy() {
        Arrays.fill(may, false);
        Set<Integer> given = new HashSet<>();
        int[] path = new int[setting.length];
        for (int i = 0; i < path.length; i++) {
            double least = Double.POSITIVE_INFINITY;
            for (int c = 0; c < setting[i].length; c++) {
                int s = setting[i][c];
                may[s] = isOwned[s] || given.contains(s) || given.size() < pistons;
                double cost = points(i, c) + (i == 0 ? 0 : step(i, c, path[i - 1]));
                if (cost < least) {
                    least = cost;
                    path[i] = c;
                }
            }
            int chosen = setting[i][path[i]];
            boolean isPushed =
                    i > 0 && byEither[i][path[i]][path[i - 1]] < byHand[i][path[i]][path[i - 1]] && may[chosen];
            if (isPushed && !isOwned[chosen]) {
                given.add(chosen);
            }
        }
        for (int s = 0; s < may.length; s++) {
            may[s] = isOwned[s] || given.contains(s);
        }
        double cost = cost(path);
        return new Best(boxed(path), cost, 0, pistonsOf(path));
    }
}
