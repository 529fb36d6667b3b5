package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.sound.Estimate;

/** What is said of a verse after the service, and what it changes. */
class VerseFeedbackCommandsTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24).press("n");

    private Estimate estimate() {
        PlanEdit work = desk.state().work().orElseThrow();
        return work.estimate(work.verse().orElseThrow());
    }

    private double marginDb() {
        return estimate().margin().db().orElseThrow();
    }

    @Test
    void one_key_goes_through_the_answers() {
        assertThat(desk.press("y").verse().answer()).contains(new Feedback(HeardAs.TOO_SOFT, 480));
        assertThat(desk.said()).isEqualTo("V1 was too soft, with 480 present. Press Y to use it in the estimates.");
        assertThat(desk.press("y").verse().answer().map(Feedback::heard)).contains(HeardAs.RIGHT);
        assertThat(desk.press("y").verse().answer().map(Feedback::heard)).contains(HeardAs.TOO_STRONG);
        assertThat(desk.press("y").verse().answer()).isEmpty();
    }

    @Test
    void where_the_organ_plays_alone_there_is_nothing_to_answer() {
        assertThat(desk.press("p", "y").verse().answer()).isEmpty();
        assertThat(desk.said()).startsWith("The organ plays alone here");
    }

    @Test
    void heeding_an_answer_moves_the_margin_and_makes_it_surer() {
        double before = marginDb();
        double unsure = estimate().margin().plusMinusDb().orElseThrow();
        desk.press("y", "Y");
        assertThat(marginDb()).isLessThan(before - 1);
        assertThat(estimate().margin().plusMinusDb().orElseThrow()).isLessThan(unsure);
        desk.press("Y");
        assertThat(marginDb()).isEqualTo(before);
    }

    @Test
    void an_answer_taken_back_is_heeded_no_more() {
        double before = marginDb();
        desk.press("y", "Y", "u");
        assertThat(marginDb()).isEqualTo(before);
        desk.press("U");
        assertThat(marginDb()).isLessThan(before - 1);
    }

    @Test
    void without_an_answer_there_is_nothing_to_heed() {
        desk.press("Y");
        assertThat(desk.said()).isEqualTo("No feedback recorded yet. Press y to record it for this verse.");
        assertThat(desk.state().work().map(PlanEdit::isWithFeedback)).isEqualTo(Optional.of(false));
    }
}
