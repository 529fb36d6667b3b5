package versewind.proposal;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import versewind.acoustics.TableResource;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.rules.BuildingStep;

/** The steps of the order that suit a mood, from the table {@code step_costs.csv}. */
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
     * @param mood of the words
     * @param fullest the mood whose steps the singers bear as well, no less than the mood
     */
    static double of(Mode mode, BuildingStep step, Mood mood, Mood fullest) {
        double[] byMood = COSTS.get(mode).get(step);
        double least = byMood[mood.ordinal()];
        for (int each = mood.ordinal(); each <= fullest.ordinal(); each++) {
            least = Math.min(least, byMood[each]);
        }
        return least;
    }
}
