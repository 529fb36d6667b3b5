package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Calibration;
import versewind.calibration.Experience;
import versewind.calibration.HeardRegistration;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.screen.plan.PlanEvent;
import versewind.screen.state.PlanEdit;
import versewind.sound.Estimate;
import versewind.sound.Verdict;

/** What is said of a verse after the service, and what it changes. */
class VerseFeedbackCommandsTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24).press("n");

    private Estimate estimate() {
        PlanEdit work = desk.state().work().orElseThrow();
        return work.estimate(work.verse().orElseThrow());
    }

    private double share() {
        return estimate().balance().share().orElseThrow();
    }

    @Test
    void one_key_goes_through_the_answers() {
        assertThat(desk.press("y").verse().answer()).contains(new Feedback(HeardAs.TOO_SOFT, 480));
        assertThat(desk.said())
                .isEqualTo("Recorded: V1 was too soft, 480 present. y again: right; u: undo; Y: keep it.");
        assertThat(desk.press("y").verse().answer().map(Feedback::heard)).contains(HeardAs.RIGHT);
        assertThat(desk.press("y").verse().answer().map(Feedback::heard)).contains(HeardAs.TOO_STRONG);
        assertThat(desk.press("y").verse().answer()).isEmpty();
    }

    @Test
    void where_the_organ_plays_alone_there_is_nothing_to_answer() {
        assertThat(desk.press("p", "y").verse().answer()).isEmpty();
        assertThat(desk.said()).startsWith("The organ plays alone here");
    }

    /** What was wanted kept, which is kept. */
    @SuppressWarnings("unchecked") // the second argument is what undo goes back to
    private Experience kept() {
        Wanted wanted = desk.effects().stream()
                .filter(each -> each.is("keepExperience"))
                .findFirst()
                .orElseThrow();
        Experience experience = wanted.argument(0, Experience.class);
        CalibratedOrgan organ = CalibratedOrgan.of(
                Desk.sound(Shipped.plan("harvest-festival").instrument()), Calibration.NONE, experience);
        desk.answer(new PlanEvent.UsualKept(organ, wanted.argument(1, Optional.class)));
        return experience;
    }

    @Test
    void an_answer_kept_with_the_organ_moves_the_share_and_undo_takes_it_back() {
        double before = share();
        double lost = estimate().balance().odds().of(Verdict.LOST);
        desk.press("y", "Y");
        assertThat(kept().answers())
                .singleElement()
                .extracting(HeardRegistration::name)
                .isEqualTo("2026-10-04, 208 V1");
        assertThat(share()).isLessThan(before * 0.9);
        assertThat(estimate().balance().odds().of(Verdict.LOST)).isGreaterThan(lost);
        desk.press("Y");
        assertThat(desk.said()).isEqualTo("The feedback on this service is kept with the organ already.");
        desk.press("u");
        assertThat(kept()).isEqualTo(Experience.NONE);
        assertThat(share()).isEqualTo(before);
        desk.press("u");
        assertThat(desk.verse().answer()).isEmpty();
    }

    @Test
    void another_answer_on_the_same_verse_takes_the_place_of_the_one_that_is_kept() {
        desk.press("y", "Y");
        kept();
        desk.press("y", "Y");
        assertThat(kept().answers())
                .singleElement()
                .extracting(HeardRegistration::heard)
                .isEqualTo(HeardAs.RIGHT);
    }

    @Test
    void a_verse_played_again_is_judged_as_it_was_heard_and_the_change_is_told() {
        desk.press("y", "y", "y", "Y");
        kept();
        assertThat(estimate().balance().verdict()).isEqualTo(Verdict.TOO_STRONG);
        assertThat(desk.said())
                .startsWith("Kept feedback on V1 of 208 on Sun 4 Oct 2026 with the organ (u in the plan to undo). Since"
                        + " the answers of Sun 4 Oct 2026, the organ is taken to be");
        desk.press("y");
        assertThat(desk.characters()).contains(" was too strong ");
        desk.press("R");
        assertThat(desk.characters()).contains("Since the answers of Sun 4 Oct 2026, the organ is taken to be");
    }

    @Test
    void answers_that_contradict_each_other_are_named_when_they_are_kept() {
        desk.press("y", "y", "y", "n", "y", "Y");
        kept();
        assertThat(desk.said())
                .endsWith(
                        "You found V1 of 208 on Sun 4 Oct 2026 too strong, but V2 too soft. Was one different? See R.");
    }

    @Test
    void without_an_answer_there_is_nothing_to_keep() {
        desk.press("Y");
        assertThat(desk.said()).isEqualTo("No feedback recorded yet. Press y to record it for this verse.");
    }

    @Test
    void after_the_service_it_is_asked_once_whether_to_keep_the_feedback() {
        desk.press("K", "y", "3", "<Esc>");
        assertThat(desk.question()).startsWith("Keep the feedback on one verse with St Tethwin?");
        desk.press("<Enter>");
        kept();
        desk.press("y", "<Esc>");
        assertThat(desk.question()).isEmpty();
        desk.press("<Esc>", "R");
        assertThat(desk.characters()).contains("Sun 4 Oct 2026          1 answer: 1 too strong");
    }

    @Test
    void answers_are_folded_by_service_and_deleted_one_by_one_or_all_at_once() {
        desk.press("y", "n", "y", "y", "n", "y", "y", "Y");
        kept();
        desk.press("R");
        assertThat(desk.characters())
                .contains("Sun 4 Oct 2026          3 answers: 1 too soft, 2 right")
                .contains("Enter show answers")
                .doesNotContain("208 V2");
        desk.press("<Enter>");
        assertThat(desk.characters()).contains("Enter hide answers").contains("  208 V1 ", "  208 V2 ", "  208 V3 ");
        desk.press("<Down>", "x");
        assertThat(kept().answers())
                .extracting(HeardRegistration::name)
                .containsExactly("2026-10-04, 208 V2", "2026-10-04, 208 V3");
        desk.press("<Up>", "x");
        assertThat(desk.question()).isEqualTo("Delete the 2 answers of Sun 4 Oct 2026?");
        desk.press("<Enter>");
        assertThat(kept()).isEqualTo(Experience.NONE);
    }
}
