package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import versewind.Shipped;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.screen.library.LibraryEvent;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.PlanScreen;
import versewind.screen.plan.SheetText;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effects;
import versewind.screen.state.Event;
import versewind.screen.state.FormBox;
import versewind.screen.state.Question;
import versewind.screen.toolkit.Marks;
import versewind.sheet.Sheet;
import versewind.sheet.SheetHtml;
import versewind.sheet.SheetOptions;
import versewind.store.OpenPlan;

class FileCommandsTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24);

    private String question() {
        return desk.state().top() instanceof Question question ? question.text() : "no question";
    }

    @Test
    void an_edit_is_kept_beside_the_file_at_once() {
        desk.press(" ");
        assertThat(desk.effects())
                .containsExactly(Wanted.of("keepDraft", desk.work().history()));
    }

    @Test
    void an_edit_undone_leaves_nothing_to_keep() {
        desk.press(" ", "u");
        assertThat(desk.effects()).endsWith(Wanted.of("dropDraft"));
    }

    @Test
    void the_list_of_versions_lies_over_the_library_and_goes_back_to_it() {
        Desk library = Desk.empty(80, 24).library(Desk.listed("wedding", "Wedding", "2027-05-22"));
        library.press("^V");
        assertThat(library.effects()).contains(Wanted.of("listVersions", "wedding"));

        library.answer(new LibraryEvent.VersionsListed("wedding", List.of()));
        assertThat(library.said()).isEqualTo("No earlier version of this plan is kept.");
        library.answer(new LibraryEvent.VersionsListed("wedding", List.of(new Chooser.Row("0", "then", ""))));
        assertThat(library.screen()).contains("Which version of wedding?");
        assertThat(library.press("<Esc>").screen()).contains("date             service");
    }

    @Test
    void a_question_with_one_answer_is_left_with_escape_too() {
        Desk empty = Desk.empty(80, 24);
        empty.answer(new Event.Failed("plans/odd.json cannot be read."));

        assertThat(empty.press("<Esc>").effects()).contains(Wanted.of("listPlans"));
    }

    @Test
    void from_a_plan_that_others_have_open_one_can_step_back() {
        desk.answer(new FileEvent.OpenElsewhere(List.of("anna has it open")));
        desk.press("<Esc>");

        assertThat(desk.effects()).contains(Wanted.of("onlyLook"), Wanted.of("listPlans"));
        assertThat(desk.screen()).contains("Plans");
    }

    @Test
    void saving_writes_the_plan_and_says_so() {
        desk.press(" ").effects();
        desk.press("s");
        assertThat(desk.effects()).containsExactly(Wanted.of("save", desk.plan(), List.of()));
        desk.answer(new FileEvent.Saved(desk.plan(), List.of(), true));
        assertThat(desk.said()).isEqualTo("Saved.");
        assertThat(desk.state().isUnsaved()).isFalse();
        assertThat(desk.press("s").said()).isEqualTo("Nothing to save.");
    }

    @Test
    void the_sheet_is_made_of_the_plan_as_it_is_now_and_its_place_is_told() {
        desk.press(" ").effects();
        desk.press("W", "<Enter>", "<Enter>");
        List<Wanted> wanted = desk.effects();
        assertThat(wanted).hasSize(1);
        assertThat(wanted.get(0).argument(0, String.class)).isEqualTo("a-plan.html");
        assertThat(wanted.get(0).argument(1, String.class))
                .isEqualTo(SheetHtml.of(
                        Sheet.of(desk.plan(), desk.state().work().orElseThrow().sound(), SheetOptions.USUAL)));
        desk.answer(new Event.Done("The sheet is written to plans/harvest-festival.html."));
        assertThat(desk.said()).isEqualTo("The sheet is written to plans/harvest-festival.html.");
    }

    @Test
    void a_sheet_as_text_goes_where_it_is_wanted() {
        desk.press("W", "'text'", "<Enter>", "^U", "'/tmp/desk.txt'", "<Enter>");
        Wanted wanted = desk.effects().get(0);
        assertThat(wanted.argument(0, String.class)).isEqualTo("/tmp/desk.txt");
        assertThat(wanted.argument(1, String.class))
                .startsWith("Harvest Festival\n===")
                .endsWith(SheetText.MADE_BY + "\n");
        assertThat(wanted.argument(2, String.class)).isEqualTo(SheetText.MADE_BY);
    }

    @Test
    void edits_made_while_the_plan_is_written_are_still_unsaved() {
        desk.press(" ");
        Plan written = desk.plan();
        desk.press("<Down>", " ").answer(new FileEvent.Saved(written, List.of(), true));
        assertThat(desk.state().isUnsaved()).isTrue();
    }

    @Test
    void a_file_changed_by_somebody_else_is_written_over_only_when_that_is_asked_for() {
        desk.press(" ", "s").effects();
        desk.answer(new FileEvent.SaveRefused(Desk.CHANGED_ELSEWHERE, desk.plan(), List.of()));
        assertThat(question()).contains("Somebody else changed");
        desk.press("s", " ");
        assertThat(desk.effects()).isEmpty();
        desk.press("x");
        assertThat(desk.effects()).containsExactly(Wanted.of("saveOver", desk.plan(), List.of()));
    }

    @Test
    void a_failed_save_says_why_and_stays_unsaved() {
        desk.press(" ", "s").answer(new Event.Failed("Not saved to plans/x.json: the disk is full."));
        assertThat(desk.said()).isEqualTo("Not saved to plans/x.json: the disk is full.");
        assertThat(desk.state().isUnsaved()).isTrue();
    }

    @Test
    void a_saved_plan_is_left_without_a_question() {
        desk.press("q");
        assertThat(desk.effects()).containsExactly(Wanted.of("quit"));
    }

    @Test
    void an_unsaved_plan_is_left_only_after_a_question() {
        desk.press(" ").effects();
        desk.press("q");
        assertThat(desk.effects()).isEmpty();
        assertThat(question()).isEqualTo("This plan has unsaved changes.");
        assertThat(desk.press("<Esc>").state().top()).isEqualTo(new PlanScreen());
        desk.press("^C", "x");
        assertThat(desk.effects()).containsExactly(Wanted.of("dropDraft"), Wanted.of("quit"));
    }

    @Test
    void saving_before_leaving_leaves_when_it_is_saved() {
        desk.press(" ").effects();
        desk.press("q", "s");
        assertThat(desk.effects()).containsExactly(Wanted.of("save", desk.plan(), List.of(Wanted.of("quit"))));
        desk.answer(new FileEvent.Saved(desk.plan(), List.of(Effects::quit), true));
        assertThat(desk.effects()).containsExactly(Wanted.of("quit"));
    }

    @Test
    void control_c_asks_from_within_a_form_and_staying_leads_back_to_it() {
        desk.press(" ", "e", "'abc'").effects();
        desk.press("^C");
        assertThat(desk.effects()).isEmpty();
        assertThat(question()).isEqualTo("This plan has unsaved changes.");
        assertThat(desk.press("<Esc>").state().top()).isInstanceOf(FormBox.class);
    }

    @Test
    void control_c_in_a_form_asks_also_when_only_the_form_would_be_lost() {
        desk.press("e", "'abc'").effects();
        desk.press("^C");
        assertThat(desk.effects()).isEmpty();
        assertThat(question()).isEqualTo("What you typed is not saved yet.");
    }

    @Test
    void control_c_does_not_answer_a_question_about_unsaved_work() {
        desk.press(" ", "q").effects();
        desk.press("^C", "^C");
        assertThat(desk.effects()).isEmpty();
        assertThat(question()).isEqualTo("This plan has unsaved changes.");
    }

    @Test
    void a_long_failure_is_told_to_its_end() {
        String sentence =
                "plans/x.json, line 82: the file ends too soon. " + "It was cut off: restore it. ".repeat(4) + "End.";
        desk.answer(new Event.Failed(sentence));
        assertThat(desk.screen()).contains("End.");
    }

    @Test
    void a_plan_that_cannot_be_opened_leads_back_to_the_list() {
        Desk empty = Desk.empty(80, 24).answer(new Event.Failed("plans/x.json: it is empty."));
        empty.press("<Enter>");
        assertThat(empty.effects()).containsExactly(Wanted.of("listPlans"));
    }

    @Test
    void a_key_in_a_window_that_is_too_small_changes_nothing() {
        Plan before = desk.plan();
        desk.answer(new Event.Resize(40, 10)).press("x", "n", " ").answer(new Event.Resize(80, 24));
        assertThat(desk.plan()).isEqualTo(before);
        assertThat(desk.work().place()).isEqualTo(VersePlace.START);
    }

    @Test
    void a_dropped_line_keeps_unsaved_work_and_ends() {
        desk.press(" ").effects();
        desk.answer(new Event.Hangup());
        assertThat(desk.effects())
                .containsExactly(Wanted.of("keepDraft", desk.work().history()), Wanted.of("quit"));
    }

    @Test
    void another_plan_is_chosen_by_typing_part_of_its_title() {
        desk.library(Desk.listed("one", "Harvest", "2026-10-04"), Desk.listed("two", "Épiphanie", "2027-01-06"));
        desk.press("'epi'").effects();
        desk.press("<Enter>");
        assertThat(desk.effects()).containsExactly(Wanted.of("openPlan", "two"));
    }

    @Test
    void a_new_plan_is_made_for_a_chosen_organ() {
        desk.answer(
                new LibraryEvent.InstrumentsListed(List.of(new Chooser.Row("village", "All Hallows", "Corvening"))));
        desk.press("<Enter>");
        assertThat(desk.effects()).containsExactly(Wanted.of("beginPlan", "village"));
        desk.answer(new LibraryEvent.PlanBegun("village", "Village", Player.WITH_PEDALS, 100));
        desk.press("'Evensong'", "<Tab>", "<Tab>", "<Tab>", "^U", "'60'", "<Enter>");
        assertThat(desk.effects())
                .containsExactly(Wanted.of(
                        "createPlan",
                        new ServiceHeading("Evensong", Optional.of(java.time.LocalDate.of(2026, 10, 4)), 60, ""),
                        "village"));
    }

    @Test
    void the_organ_of_the_service_edited_last_is_offered_first() {
        LibraryEvent.ListedPlan planned = Desk.listed("one", "Harvest", "2026-10-04");
        List<Chooser.Row> organs =
                List.of(new Chooser.Row("abbey", "Abbey", ""), new Chooser.Row(planned.organ(), "Zeal", ""));
        desk.library(planned).press("^N").answer(new LibraryEvent.InstrumentsListed(organs));
        desk.effects();
        desk.press("<Enter>");
        assertThat(desk.effects()).containsExactly(Wanted.of("beginPlan", planned.organ()));
    }

    @Test
    void a_new_plan_is_made_from_an_old_one() {
        desk.library(Desk.listed("one", "Harvest", "2026-10-04"));
        desk.effects();
        desk.press("^D", "'Harvest again'", "<Enter>");
        assertThat(desk.effects()).singleElement().matches(copy -> copy.argument(0, String.class)
                .equals("one"));
    }

    @Test
    void a_new_plan_too_asks_what_becomes_of_unsaved_work() {
        desk.press(" ").effects();
        desk.answer(new LibraryEvent.PlanBegun("village", "Village", Player.WITH_PEDALS, 100));
        desk.press("'Evensong'", "<Enter>");
        assertThat(desk.effects()).isEmpty();
        assertThat(question()).isEqualTo("This plan has unsaved changes.");
    }

    @Test
    void work_that_was_cut_off_is_offered_and_taken_up() {
        OpenPlan open = Shipped.plan("harvest-festival");
        Plan draft = open.plan().withHymns(List.of());
        Desk offered = Desk.with(
                open.plan(), open.instrument(), Update.empty(80, 24, Marks.UNICODE, Desk.TODAY), Optional.of(draft));
        assertThat(offered.state().top()).isInstanceOf(Question.class);
        assertThat(offered.plan()).isEqualTo(open.plan());
        offered.press("<Enter>");
        assertThat(offered.plan()).isEqualTo(draft);
        assertThat(offered.state().isUnsaved()).isTrue();
    }

    @Test
    void work_that_was_cut_off_can_be_forgotten() {
        OpenPlan open = Shipped.plan("harvest-festival");
        Desk offered = Desk.with(
                open.plan(),
                open.instrument(),
                Update.empty(80, 24, Marks.UNICODE, Desk.TODAY),
                Optional.of(open.plan().withHymns(List.of())));
        offered.press("x");
        assertThat(offered.effects()).containsExactly(Wanted.of("discardWork"));
        assertThat(offered.plan()).isEqualTo(open.plan());
    }

    @Test
    void a_merge_says_what_came_from_elsewhere_and_that_nothing_did() {
        Plan here = desk.press(" ").plan();
        assertThat(desk.answer(new FileEvent.Merged(here, List.of())).said())
                .isEqualTo("Saved as it was here. The other version is among the earlier ones (library, Ctrl-V).");
        Verse elsewhere = here.hymns().get(1).verses().get(1).withNote("Softly.");
        Plan both = here.withVerse(new VersePlace(1, 1), elsewhere);
        assertThat(desk.answer(new FileEvent.Merged(both, List.of())).said())
                .startsWith("Saved, with what was changed elsewhere, first in ")
                .contains(elsewhere.label());
    }
}
