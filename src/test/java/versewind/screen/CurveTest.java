package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import versewind.organ.IndexSet;
import versewind.plan.Plan;
import versewind.plan.VersePlace;
import versewind.proposal.RegistrationProposer;
import versewind.proposal.SearchProgress;
import versewind.proposal.ServiceProposal;
import versewind.screen.plan.PlanEvent;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;

/** How verses rise and fall, drawn in cells. */
class CurveTest {

    private static final VersePlace LAST = new VersePlace(0, 6);

    /** The topmost row in which a style is seen within some columns. */
    private static int top(Frame frame, Style style, int from, int to) {
        return IntStream.range(0, frame.height())
                .filter(y -> IntStream.range(from, to).anyMatch(x -> frame.style(x, y) == style))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_verse_with_fewer_stops_lies_lower_in_the_curve() {
        Desk full = Desk.with("harvest-festival", 80, 24).press("C");
        Desk soft = Desk.with(
                        "harvest-festival",
                        plan -> plan.withVerse(
                                LAST,
                                plan.verse(LAST)
                                        .withRegistration(plan.verse(LAST)
                                                .registration()
                                                .withStops(IndexSet.of(IntStream.of(1))))))
                .press("C");

        assertThat(top(soft.frame(), Style.BAR, 24, 26)).isGreaterThan(top(full.frame(), Style.BAR, 24, 26));
    }

    @Test
    void a_silent_verse_leaves_a_gap() {
        Frame silent = Desk.with("harvest-festival", 120, 40).press("0", "C").frame();

        assertThat(IntStream.range(2, 16).mapToObj(y -> silent.style(5, y))).doesNotContain(Style.BAR);
    }

    @Test
    void every_size_and_both_sets_of_marks_hold_it() {
        for (Marks marks : Marks.values()) {
            for (int[] size : List.of(
                    new int[] {60, 18}, new int[] {80, 24}, new int[] {100, 30}, new int[] {120, 40}, new int[] {200, 60
                    })) {
                Desk desk =
                        Desk.with("easter-cathedral", size[0], size[1], marks).press("C");

                assertThat(desk.characters()).contains("organ", "singers", "where it leads", "Findings", "Esc close");
                if (marks == Marks.ASCII) {
                    assertThat(desk.characters().chars().allMatch(each -> each < 128))
                            .isTrue();
                }
            }
        }
    }

    @Test
    void a_large_screen_shows_it_under_the_stops_with_what_the_next_verse_changes() {
        String screen = Desk.with("harvest-festival", 120, 40).characters();

        assertThat(screen).contains("where it leads", "Next, V1");
    }

    @Test
    void one_key_proposes_the_service_and_shows_its_curve_with_what_wants_attention() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("A");
        assertThat(desk.question()).contains("Draw what is proposed");
        desk.press("<Enter>");
        ServiceProposal found =
                RegistrationProposer.of(desk.work().sound()).forService(desk.plan(), SearchProgress.PATIENT);
        Plan before = desk.plan();
        desk.answer(new PlanEvent.Proposed(before, found));

        assertThat(desk.characters()).contains("where it leads", "Findings");
        assertThat(desk.press("u").plan()).isEqualTo(before);
    }
}
