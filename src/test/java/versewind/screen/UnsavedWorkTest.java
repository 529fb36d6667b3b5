package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.screen.Clerk.Saving;
import versewind.screen.library.LibraryEvent;
import versewind.screen.library.LibraryScreen;
import versewind.screen.state.Event;

/** Work that is not saved is asked about, and never lost by a key. */
class UnsavedWorkTest {

    private static final String UNSAVED = "This plan has unsaved changes.";

    private final Desk desk = Desk.with("harvest-festival", 80, 24);
    private final Clerk clerk = Clerk.at(desk);

    @Test
    void the_question_of_leaving_says_what_is_done() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press(" ", "q");
        assertThat(desk.characters())
                .contains("save and leave Versewind", "discard the changes and leave Versewind")
                .doesNotContain("continue");
        desk.press("<Esc>").library(Desk.listed("b", "Another plan", "")).press("<Enter>");
        assertThat(desk.characters()).contains("save and open the other plan");
    }

    @Test
    void saving_before_leaving_writes_the_plan_as_it_is() {
        clerk.press(" ", "q", "s");
        assertThat(clerk.written()).contains(desk.plan());
    }

    @Test
    void the_program_is_left_once_the_plan_is_written() {
        assertThat(clerk.press(" ", "q", "s").hasLeft()).isTrue();
    }

    @Test
    void the_program_is_not_left_when_the_plan_could_not_be_written() {
        assertThat(clerk.saving(Saving.DISK_FULL).press(" ", "q", "s").hasLeft())
                .isFalse();
    }

    @Test
    void a_plan_that_could_not_be_written_before_leaving_is_still_unsaved() {
        clerk.saving(Saving.DISK_FULL).press(" ", "q", "s");
        assertThat(desk.state().isUnsaved()).isTrue();
    }

    @Test
    void after_writing_over_the_file_of_others_the_program_is_left_as_was_wanted() {
        assertThat(clerk.saving(Saving.CHANGED_BY_OTHERS)
                        .press(" ", "q", "s", "x")
                        .hasLeft())
                .isTrue();
    }

    @Test
    void a_refused_save_can_be_left_at_that() {
        clerk.saving(Saving.CHANGED_BY_OTHERS).press(" ", "s", "<Esc>");
        assertThat(desk.state().isUnsaved()).isTrue();
    }

    @Test
    void after_a_refused_save_nothing_is_written_until_that_is_asked_for() {
        assertThat(clerk.saving(Saving.CHANGED_BY_OTHERS)
                        .press(" ", "s", "<Esc>")
                        .written())
                .isEmpty();
    }

    @Test
    void opening_another_plan_asks_first() {
        clerk.press(" ", "o", "'wedding'", "<Enter>");
        assertThat(desk.question()).isEqualTo(UNSAVED);
    }

    @Test
    void after_saving_the_other_plan_is_opened() {
        clerk.press(" ", "o", "'wedding'", "<Enter>", "s");
        assertThat(desk.plan()).isEqualTo(Shipped.plan("wedding").plan());
    }

    @Test
    void the_other_plan_is_opened_without_saving_if_that_is_wanted() {
        clerk.press(" ", "o", "'wedding'", "<Enter>", "x");
        assertThat(desk.plan()).isEqualTo(Shipped.plan("wedding").plan());
    }

    @Test
    void a_saved_plan_is_changed_for_another_without_a_question() {
        clerk.press("o", "'wedding'", "<Enter>");
        assertThat(desk.plan()).isEqualTo(Shipped.plan("wedding").plan());
    }

    @Test
    void a_plan_that_cannot_be_read_leaves_the_open_one_as_it_is() {
        clerk.press(" ", "o", "'broken'", "<Enter>", "x");
        assertThat(desk.state().isUnsaved()).isTrue();
    }

    @Test
    void a_plan_that_cannot_be_read_is_said_to_be_so() {
        clerk.press("o", "'broken'", "<Enter>");
        assertThat(desk.said()).isEqualTo("plans/broken.json, line 3: this is no plan. Mend it by hand.");
    }

    @Test
    void who_stays_after_all_goes_back_to_the_form_with_what_was_typed() {
        clerk.press(" ", "o", "^N", "<Enter>", "'Evensong'", "<Enter>", "<Esc>");
        assertThat(desk.form().text(0)).isEqualTo("Evensong");
    }

    @Test
    void a_new_plan_is_made_after_the_open_one_is_saved() {
        clerk.press(" ", "o", "^N", "<Enter>", "'Evensong'", "<Enter>", "s");
        assertThat(desk.plan().heading().title()).isEqualTo("Evensong");
    }

    @Test
    void the_open_plan_is_marked_in_the_list_of_plans() {
        desk.library(
                Desk.listed("wedding", "Wedding", "2027-05-22"),
                Desk.listed("a-plan", "Harvest Festival", "2026-10-04"));
        assertThat(desk.characters()).contains("▸Sun 4 Oct 2026");
    }

    @ParameterizedTest
    @ValueSource(strings = {"^D", "^N", "^N <Enter>", "^R", "^T"})
    void what_was_opened_in_the_list_of_plans_leads_back_there(String keys) {
        clerk.press("o").press(keys.split(" ")).press("<Esc>");
        assertThat(desk.state().top()).isInstanceOf(LibraryScreen.class);
        clerk.press("<Esc>");
        assertThat(desk.state().top()).isNotInstanceOf(LibraryScreen.class);
    }

    @Test
    void a_new_plan_from_an_old_one_has_its_hymns() {
        clerk.press("o", "'wedding'", "^D", "'Silver wedding'", "<Enter>");
        assertThat(desk.plan().hymns()).isEqualTo(Shipped.plan("wedding").plan().hymns());
    }

    @ParameterizedTest
    @ValueSource(strings = {"n", "<Tab>", "/", "e", "E", "I", "S", "?", "q"})
    void control_c_asks_wherever_it_is_pressed(String key) {
        desk.press(" ", key, "^C");
        assertThat(desk.question()).isEqualTo(UNSAVED);
    }

    @Test
    void control_c_asks_from_a_list_too() {
        clerk.press(" ", "o", "^C");
        assertThat(desk.question()).isEqualTo(UNSAVED);
    }

    @Test
    void control_c_pressed_again_and_again_only_asks_again() {
        assertThat(clerk.press(" ", "^C", "^C", "^C", "^C").hasLeft()).isFalse();
    }

    @Test
    void control_c_leaves_a_saved_plan_at_once() {
        assertThat(clerk.press("?", "^C").hasLeft()).isTrue();
    }

    @Test
    void control_c_does_not_lose_what_is_typed_in_a_form() {
        assertThat(clerk.press("e", "'abc'", "^C").hasLeft()).isFalse();
    }

    @Test
    void who_stays_after_control_c_finds_the_form_as_it_was() {
        clerk.press("e", "'abc'", "^C", "<Esc>");
        assertThat(desk.form().text(0)).isEqualTo("abc");
    }

    @Test
    void a_form_in_which_nothing_was_typed_is_left_by_control_c() {
        assertThat(clerk.press("e", "^C").hasLeft()).isTrue();
    }

    @Test
    void what_was_typed_can_be_left_behind() {
        assertThat(clerk.press("e", "'abc'", "^C", "x").hasLeft()).isTrue();
    }

    @Test
    void a_question_is_not_answered_by_other_keys() {
        clerk.press(" ", "q", "d", "<Enter>", " ", "n", "<Tab>");
        assertThat(desk.question()).isEqualTo(UNSAVED);
    }

    @Test
    void a_paste_is_no_answer() {
        clerk.press(" ", "q");
        desk.answer(new Event.Paste("d"));
        assertThat(desk.question()).isEqualTo(UNSAVED);
    }

    @Test
    void without_a_plan_the_form_for_a_new_one_leads_back_to_the_plans() {
        Desk empty = Desk.empty(80, 24);
        Clerk.at(empty).press("o", "^N", "<Enter>", "<Esc>");
        assertThat(empty.state().top()).isInstanceOf(LibraryScreen.class);
    }

    @Test
    void without_a_plan_the_organs_lead_back_to_the_plans() {
        Desk empty = Desk.empty(80, 24);
        Clerk.at(empty).press("o", "^N", "<Esc>");
        assertThat(empty.state().top()).isInstanceOf(LibraryScreen.class);
    }

    @Test
    void without_a_plan_the_list_of_plans_says_how_to_leave() {
        Desk empty = Desk.empty(80, 24);
        Clerk.at(empty).press("o", "<Esc>");
        assertThat(empty.said()).isEqualTo("Choose a plan, or leave with Ctrl-Q.");
    }

    @Test
    void without_a_plan_keys_that_need_one_say_so() {
        assertThat(Desk.empty(80, 24).press(" ").said()).isEqualTo("No plan is open. Press o to open one.");
    }

    @Test
    void without_any_organ_no_plan_can_be_made() {
        desk.answer(new LibraryEvent.InstrumentsListed(List.of()));
        assertThat(desk.said()).isEqualTo("There is no organ in the folder instruments yet.");
    }
}
