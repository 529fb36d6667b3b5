package versewind.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import versewind.plan.Heading;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.sound.OrganSound;

/**
 * One plan before different numbers of people: as they come in the room swallows more of the organ and the singing grows.
 *
 * @param people numbers of people, ascending
 * @param assessments the plan's assessment for each of them
 */
public record Attendance(List<Integer> people, List<Assessment> assessments) {

    public Attendance {
        people = List.copyOf(people);
        assessments = List.copyOf(assessments);
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
        Heading heading = plan.heading();
        for (int number : ascending) {
            Plan attended = plan.withHeading(new Heading(heading.title(), heading.date(), number, heading.notes()));
            assessments.add(Assessment.of(attended, sound));
        }
        return new Attendance(ascending, assessments);
    }

    /** Whether a verse wants attention before any of the numbers. */
    public boolean wantsAttention() {
        return assessments.stream()
                .anyMatch(assessment -> !assessment.wantingAttention().isEmpty());
    }

    /** Whether the number of people of a verse is its own, so that the service's does not move its singing. */
    public static boolean hasOwnNumber(Verse verse) {
        return verse.people().isPresent() && verse.mode() != Mode.SMALL_CHOIR;
    }
}
