package versewind.proposal;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import versewind.acoustics.TableResource;
import versewind.plan.Mode;
import versewind.rules.BuildingStep;

/** The steps of the order that suit a verse, from the table {@code step_costs.csv}. */
final class StepCosts {

    private static final Map<Mode, Map<BuildingStep, double[]>> COSTS = read();

    private StepCosts() {}

    private static Map<Mode, Map<BuildingStep, double[]>> read() {
        Map<Mode, Map<BuildingStep, double[]>> costs = new EnumMap<>(Mode.class);
        for (List<String> row : TableResource.rows("proposal", "step_costs.csv")) {
            double[] byMood =
                    row.stream().skip(2).mapToDouble(Double::parseDouble).toArray();
            costs.computeIfAbsent(Mode.valueOf(row.get(0)), mode -> new EnumMap<>(BuildingStep.class))
                    .put(BuildingStep.valueOf(row.get(1)), byMood);
        }
        return costs;
    }

    /**
     * Points against a step.
     *
     * @param mode whom the organ accompanies
     * @param step the step
     * @param least how full a sound is asked for
     * @param most the fullest that is borne as well
     */
    static double of(Mode mode, BuildingStep step, Fullness least, Fullness most) {
        double[] costs = COSTS.get(mode).get(step);
        double cost = costs[least.ordinal()];
        for (int each = least.ordinal(); each <= most.ordinal(); each++) {
            cost = Math.min(cost, costs[each]);
        }
        return cost;
    }

    /** True if a step is fuller than those that cost least. */
    static boolean isFull(Mode mode, BuildingStep step, Fullness wanted) {
        double cost = of(mode, step, wanted, wanted);
        return COSTS.get(mode).entrySet().stream()
                .anyMatch(each -> each.getKey().compareTo(step) < 0 && each.getValue()[wanted.ordinal()] < cost);
    }
}
