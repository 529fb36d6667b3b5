package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.sound.OrganSound;
import versewind.store.OpenPlan;

/** What makes verses hold that fail before more or fewer people. */
class RemedyTest {

    private Plan plan;
    private OrganSound sound;

    @BeforeEach
    void open() throws Exception {
        OpenPlan open = Shipped.plan("ash-wednesday");
        plan = open.plan();
        sound = OrganSound.open(open.instrument());
    }

    @Test
    void every_remedy_makes_its_verse_hold() {
        Attendance attendance = Attendance.of(plan, sound, List.of(20, 180, 500));

        for (int i = 0; i < attendance.people().size(); i++) {
            Plan attended = plan.withPeople(attendance.people().get(i));
            Map<VersePlace, Mend> remedies = attendance.remedies().get(i);
            assertThat(attendance.assessments().get(i).wantingAttention()).containsAll(remedies.keySet());
            remedies.forEach((place, mend) -> assertThat(
                            Assessment.of(mend.on(attended), sound).wantingAttention())
                    .doesNotContain(place));
        }
        assertThat(attendance.remedies().get(2)).hasSizeGreaterThan(3);
    }

    @Test
    void where_one_step_is_not_enough_several_are_told_as_one_change() {
        Attendance attendance = Attendance.of(plan, sound, List.of(500));

        assertThat(attendance.remedies().get(0).values())
                .extracting(Mend::words)
                .contains("Draw Manual: Open Diapason 8, Principal 4; put in Manual: Stopped Diap 8, Flute 4.");
    }

    @Test
    void a_verse_that_holds_needs_none() {
        VersePlace holding = new VersePlace(0, 1);

        assertThat(Assessment.of(plan, sound).wantingAttention()).doesNotContain(holding);
        assertThat(Advice.on(sound).remedy(plan, holding)).isEmpty();
    }
}
