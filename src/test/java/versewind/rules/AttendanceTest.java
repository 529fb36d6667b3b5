package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.plan.Mode;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.sound.Estimate;
import versewind.sound.OrganSound;
import versewind.store.OpenPlan;

class AttendanceTest {

    private final OpenPlan open;
    private final OrganSound sound;

    AttendanceTest() throws Exception {
        open = Shipped.plan("harvest-festival");
        sound = OrganSound.open(open.instrument());
    }

    /** Common practice, no source: as people come in the organ loses, the singing gains, and the lead shrinks. */
    @Test
    void as_people_come_in_the_organ_loses_and_the_singing_gains() {
        Attendance attendance = Attendance.of(open.plan(), sound, List.of(500, 40, 180, 40));
        VersePlace verse = new VersePlace(0, 1);

        assertThat(attendance.people()).containsExactly(40, 180, 500);
        for (int i = 1; i < 3; i++) {
            Estimate fewer = attendance.assessments().get(i - 1).at(verse).estimate();
            Estimate more = attendance.assessments().get(i).at(verse).estimate();
            assertThat(more.organDba().orElseThrow())
                    .isLessThan(fewer.organDba().orElseThrow());
            assertThat(more.singersDba().orElseThrow())
                    .isGreaterThan(fewer.singersDba().orElseThrow());
            assertThat(more.balance().share().orElseThrow())
                    .isLessThan(fewer.balance().share().orElseThrow());
        }
    }

    @Test
    void the_number_that_is_expected_gives_the_plans_own_assessment() {
        Plan plan = open.plan();
        Attendance attendance =
                Attendance.of(plan, sound, List.of(plan.heading().people()));

        assertThat(attendance.assessments()).containsExactly(Assessment.of(plan, sound));
    }

    @Test
    void a_number_of_voices_is_no_number_of_people() {
        Verse verse = Verses.blank(open.instrument(), VerseKind.VERSE).withPeople(OptionalInt.of(12));

        assertThat(Attendance.hasOwnNumber(verse)).isTrue();
        assertThat(Attendance.hasOwnNumber(verse.withMode(Mode.SMALL_CHOIR))).isFalse();
        assertThat(Attendance.hasOwnNumber(verse.withPeople(OptionalInt.empty())))
                .isFalse();
    }
}
