package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.plan.Plan;
import versewind.screen.state.Event;

/** Work that is kept beside the file of its plan: when it is, and what becomes of it when the plan is opened again. */
class KeptWorkTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24);
    private final Clerk clerk = Clerk.at(desk);

    @Test
    void every_edit_is_kept_beside_the_file() {
        clerk.press(" ", "n", " ");
        assertThat(clerk.kept()).contains(desk.plan());
    }

    @Test
    void nothing_is_kept_after_saving() {
        assertThat(clerk.press(" ", "s").kept()).isEmpty();
    }

    @Test
    void undoing_what_was_saved_is_kept_again() {
        clerk.press(" ", "s", "u");
        assertThat(clerk.kept()).contains(desk.plan());
    }

    @Test
    void a_dropped_line_with_nothing_unsaved_just_ends() {
        desk.answer(new Event.Hangup());
        assertThat(desk.effects()).containsExactly(Wanted.of("quit"));
    }

    @Test
    void a_dropped_line_keeps_work_while_a_form_is_open() {
        desk.press(" ", "e").effects();
        desk.answer(new Event.Hangup());
        assertThat(desk.effects())
                .containsExactly(Wanted.of("keepDraft", desk.work().history()), Wanted.of("quit"));
    }

    private static Plan withoutHymns(Plan plan) {
        return plan.withHymns(List.of());
    }

    @Test
    void a_dropped_line_leaves_work_that_was_offered_and_not_answered_for() {
        Desk offered = Desk.withDraft("harvest-festival", KeptWorkTest::withoutHymns);
        offered.answer(new Event.Hangup());
        assertThat(offered.effects()).containsExactly(Wanted.of("quit"));
    }

    @Test
    void control_c_leaves_work_that_was_offered_and_not_answered_for() {
        Desk offered = Desk.withDraft("harvest-festival", KeptWorkTest::withoutHymns);
        assertThat(offered.press("^C").effects()).containsExactly(Wanted.of("quit"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<Esc>", " ", "q", "r", "d"})
    void work_that_is_offered_is_not_forgotten_by_other_keys(String key) {
        Desk offered = Desk.withDraft("harvest-festival", KeptWorkTest::withoutHymns);
        assertThat(offered.press(key).effects()).isEmpty();
    }

    @Test
    void work_taken_up_is_written_when_it_is_saved() {
        Desk offered = Desk.withDraft("harvest-festival", KeptWorkTest::withoutHymns);
        assertThat(Clerk.at(offered).press("<Enter>", "s").written())
                .contains(withoutHymns(Shipped.plan("harvest-festival").plan()));
    }

    @Test
    void work_like_the_plan_itself_has_no_file_and_can_be_saved() {
        Desk offered = Desk.withDraft("harvest-festival", plan -> plan);
        assertThat(Clerk.at(offered).press("s").written()).contains(offered.plan());
    }

    @Test
    void work_without_a_file_is_still_kept_after_an_edit_that_is_undone() {
        Desk offered = Desk.withDraft("harvest-festival", plan -> plan);
        offered.press(" ").effects();
        assertThat(offered.press("u").effects())
                .containsExactly(Wanted.of("keepDraft", offered.work().history()));
    }

    @Test
    void work_for_another_organ_is_not_taken_up() {
        assertThat(forAnotherOrgan().press("<Enter>").plan().instrument()).isEqualTo("st-tethwin");
    }

    @Test
    void work_for_another_organ_is_not_taken_up_even_if_that_has_as_many_stops() {
        Desk offered =
                Desk.withDraft("harvest-festival", plan -> new Plan(plan.heading(), "st-elsewhere", plan.hymns()));
        assertThat(offered.question()).endsWith("but for another organ: st-elsewhere.");
    }

    @Test
    void work_for_another_organ_is_told_of() {
        assertThat(forAnotherOrgan().question())
                .isEqualTo("Unsaved work on this plan was kept, but for another organ: ambrelow.");
    }

    @Test
    void who_leaves_work_for_another_organ_leaves_it_where_it_is() {
        assertThat(forAnotherOrgan().press("q").effects()).containsExactly(Wanted.of("quit"));
    }

    private static Desk forAnotherOrgan() {
        Plan wedding = Shipped.plan("wedding").plan();
        return Desk.withDraft("harvest-festival", plan -> wedding);
    }
}
