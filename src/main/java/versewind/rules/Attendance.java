package versewind.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.OrganSound;

/**
 * One plan before different numbers of people: as they come in the room swallows more of the organ and the singing
 * grows.
 *
 * @param people numbers of people, ascending
 * @param assessments the plan's assessment for each of them
 * @param remedies for each of them, what makes the verses hold that fail then, where something does
 */
public record Attendance(List<Integer> people, List<Assessment> assessments, List<Map<VersePlace, Mend>> remedies) {

    public Attendance {
        people = List.copyOf(people);
        assessments = List.copyOf(assessments);
        remedies = remedies.stream().map(Map::copyOf).toList();
    }

    /**
     * Listens to every verse of a plan before every number of people. A verse with its own number keeps it.
     *
     * @param plan a plan that can be played on the instrument
     * @param sound the instrument
     * @param people numbers of people, each 1 or more
     */
    public static Attendance of(Plan plan, OrganSound sound, List<Integer> people) {
        List<Integer> ascending = List.copyOf(new TreeSet<>(people));
        List<Assessment> assessments = new ArrayList<>();
        List<Map<VersePlace, Mend>> remedies = new ArrayList<>();
        Advice advice = Advice.on(sound);
        for (int number : ascending) {
            Plan attended = plan.withPeople(number);
            Assessment assessment = Assessment.of(attended, sound);
            Map<VersePlace, Mend> mends = new HashMap<>();
            for (VersePlace place : assessment.wantingAttention()) {
                advice.remedy(attended, place).ifPresent(mend -> mends.put(place, mend));
            }
            assessments.add(assessment);
            remedies.add(mends);
        }
        return new Attendance(ascending, assessments, remedies);
    }

    /** Whether the number of people of a verse is its own, so that the service's does not move its singing. */
    public static boolean hasOwnNumber(Verse verse) {
        return verse.people().isPresent() && verse.mode() != Mode.SMALL_CHOIR;
    }
}
