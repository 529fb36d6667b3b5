package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.Player;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.screen.library.LibraryEvent;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.PlanScreen;
import versewind.screen.state.Event;
import versewind.screen.state.FormBox;
import versewind.screen.state.ServiceForm;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;
import versewind.store.OpenPlan;

/** What is typed into forms, what becomes of it, and what is said when it cannot be kept. */
class FormsTest {

    private final Desk desk = Desk.with("harvest-festival", 80, 24).press("n");

    /** Opens a form, goes down some fields, empties the field, types into it and presses Enter. */
    private Desk fill(String form, int down, String typed) {
        desk.press(form);
        for (int i = 0; i < down; i++) {
            desk.press("<Down>");
        }
        return desk.press("^U", "'" + typed + "'", "<Enter>");
    }

    @ParameterizedTest
    @CsvSource({"E, 5", "e, 1", "S, 3"})
    void a_number_that_is_too_long_for_a_number_is_told_like_any_other(String form, int down) {
        assertThat(fill(form, down, "99999999999999999999").form().complaint()).contains("Enter a whole number from");
    }

    @Test
    void the_field_that_is_wrong_is_gone_to() {
        desk.press("S", "<Tab>", "^U", "'soon'", "<Tab>", "<Tab>", "<Enter>");
        assertThat(desk.form().at()).isEqualTo(1);
    }

    @Test
    void a_complaint_goes_when_the_field_is_mended() {
        assertThat(fill("S", 1, "soon").press("<Backspace>").form().complaint()).isEmpty();
    }

    @Test
    void after_a_complaint_what_was_typed_is_still_there() {
        assertThat(fill("S", 1, "soon").form().text(1)).isEqualTo("soon");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-02-30", "2026-2-3", "26-10-04", "31 Feb 2026", "2026-10-04T10:00", "the day after"})
    void what_is_no_date_is_told_with_how_to_write_one(String typed) {
        assertThat(fill("S", 1, typed).form().complaint())
                .startsWith("Date: \"")
                .endsWith("\" is not a date. Enter a date, such as 20 Dec 2026 or 2026-12-20.");
    }

    @Test
    void a_date_is_kept() {
        assertThat(fill("S", 1, "2028-02-29").plan().heading().date()).contains(LocalDate.of(2028, 2, 29));
    }

    @Test
    void a_player_is_begun_with_and_is_kept() {
        desk.answer(new LibraryEvent.PlanBegun("village", "Village", Player.MANUALS_ONLY, 100));
        assertThat(desk.form().text(5)).isEqualTo("manuals only");
        desk.press("<Esc>");
        assertThat(fill("S", 5, "man").plan().heading().player()).isEqualTo(Player.MANUALS_ONLY);
    }

    @Test
    void a_date_may_be_blank() {
        assertThat(fill("S", 1, "").plan().heading().date()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"20", "300"})
    void a_tempo_at_its_limits_is_kept(int tempo) {
        assertThat(fill("E", 5, Integer.toString(tempo)).hymn().tempo()).hasValue(tempo);
    }

    @ParameterizedTest
    @ValueSource(strings = {"19", "301", "fast", "96.5", "-96", "1e2", "9 6"})
    void another_tempo_is_told_its_limits(String typed) {
        assertThat(fill("E", 5, typed).form().complaint())
                .startsWith("Tempo: ")
                .endsWith(" Enter a whole number from 20 to 300.");
    }

    @Test
    void a_tempo_may_be_blank() {
        assertThat(fill("E", 5, "").hymn().tempo()).isEmpty();
    }

    @Test
    void blanks_around_what_is_typed_do_not_matter() {
        assertThat(fill("E", 1, "  Now the year is turning  ").hymn().title()).isEqualTo("Now the year is turning");
    }

    @Test
    void a_title_of_blanks_only_is_none() {
        assertThat(fill("E", 1, "   ").form().complaint()).isEqualTo("A hymn needs a title.");
    }

    @Test
    void a_form_of_a_hymn_leaves_its_verses_and_the_place() {
        Plan before = desk.plan();
        fill("E", 1, "Another title");
        assertThat(desk.hymn().withVerses(before.hymns().get(0).verses())).isEqualTo(desk.hymn());
        assertThat(desk.work().place().verse()).isEqualTo(1);
    }

    @Test
    void a_mood_for_a_whole_hymn_is_that_of_all_its_verses_and_of_their_singing() {
        fill("E", 7, "gentle");

        assertThat(desk.hymn().verses()).extracting(Verse::mood).containsOnly(Mood.GENTLE);
        assertThat(desk.hymn().verses().get(1).singing()).isEqualTo(Singing.GENTLE);
        desk.press("u");
        assertThat(desk.hymn().verses()).extracting(Verse::mood).containsOnly(Mood.PLAIN);
    }

    @Test
    void a_mood_left_blank_leaves_each_verse_its_own() {
        desk.press("g");
        assertThat(desk.press("E").form().text(7)).isEmpty();
        desk.press("<Esc>");
        fill("E", 7, "merry");
        assertThat(desk.form().complaint()).startsWith("To sound: ").contains("gentle, plain, bright or festal");
        desk.press("^U", "<Enter>");
        assertThat(desk.hymn().verses()).extracting(Verse::mood).contains(Mood.BRIGHT, Mood.PLAIN);
    }

    @Test
    void a_label_left_blank_is_the_usual_one() {
        desk.press("e", "^U", "'women'", "<Enter>");
        assertThat(fill("e", 0, "").verse().label()).isEqualTo("V1");
    }

    @Test
    void a_piston_and_a_note_are_kept_with_the_verse() {
        desk.press(
                "e", "<Tab>", "<Tab>", "<Tab>", "^U", "'gt 3 + sw 2'", "<Tab>", "^U", "'wait for the bell'", "<Enter>");
        assertThat(desk.verse().piston() + ", " + desk.verse().note()).isEqualTo("Great 3, Swell 2, wait for the bell");
    }

    @Test
    void a_piston_that_holds_something_else_in_another_verse_is_told_at_once() {
        assertThat(fill("e", 3, "G3").said()).matches("G3 holds something else in Intro; free for V1: G[0-9].");
        assertThat(desk.verse().piston()).isEqualTo("G3");
        assertThat(fill("e", 3, "G4").said()).doesNotContain("holds something else");
    }

    @ParameterizedTest
    @CsvSource({
        "Banana, '\"Banana\" is not a piston of this organ, which has generals G1 to G6, Great 1 to 4, Swell 1 to 4.'",
        "G9, The organ has no piston G9: its generals are G1 to G6.",
        "Swell 5, The Swell has no piston 5: it has 1 to 4.",
        "9/Great 1, The organ has no memory level 9 for piston 9/Great 1: it has 8."
    })
    void a_piston_that_the_organ_does_not_have_is_refused_with_those_that_it_has(String typed, String sentence) {
        assertThat(fill("e", 3, typed).form().complaint()).isEqualTo(sentence);
    }

    @Test
    void an_old_piston_that_the_organ_does_not_have_is_kept_until_another_is_typed() {
        Desk old = Desk.with(
                "harvest-festival",
                plan -> plan.withVerse(
                        new VersePlace(0, 0), plan.verse(new VersePlace(0, 0)).withPiston("Banana")));
        assertThat(old.press("e", "^U", "'first'", "<Enter>").verse().piston()).isEqualTo("Banana");
        assertThat(old.verse().label()).isEqualTo("first");
    }

    @Test
    void a_form_kept_as_it_was_leaves_nothing_to_save() {
        assertThat(desk.press("S", "<Enter>").state().isUnsaved()).isFalse();
    }

    @Test
    void control_s_in_a_form_keeps_it() {
        assertThat(desk.press("e", "^U", "'women'", "^S").verse().label()).isEqualTo("women");
    }

    @Test
    void the_field_after_the_last_is_the_first() {
        assertThat(desk.press("e", "<Tab>", "<Tab>", "<Tab>", "<Tab>", "<Tab>")
                        .form()
                        .at())
                .isZero();
    }

    @Test
    void the_field_before_the_first_is_the_last() {
        assertThat(desk.press("e", "<Shift-Tab>").form().at()).isEqualTo(4);
    }

    @Test
    void letters_that_are_commands_elsewhere_are_typed() {
        desk.press("e", "^U", "'xXqQuU?/[]<>'", "<Enter>");
        assertThat(desk.verse().label()).isEqualTo("xXqQuU?/[]<>");
    }

    @Test
    void a_pictograph_is_taken_away_by_one_key() {
        desk.press("e", "^U", "'a\uD83C\uDFB9b'", "<Left>", "<Backspace>", "<Enter>");
        assertThat(desk.verse().label()).isEqualTo("ab");
    }

    @Test
    void a_paste_too_long_for_a_field_is_told() {
        desk.press("e").answer(new Event.Paste("x".repeat(3000)));
        assertThat(desk.said()).isEqualTo("Too long: a field holds at most 2000 characters.");
    }

    @Test
    void pasted_control_characters_do_not_come_into_the_plan() {
        desk.press("e", "^U").answer(new Event.Paste("a\u001B[2J\u0000\tb")).press("<Enter>");
        assertThat(desk.verse().label()).isEqualTo("a[2J b");
    }

    @Test
    void a_day_may_be_said_from_today() {
        assertThat(fill("S", 1, "next Sunday").plan().heading().date()).contains(Desk.TODAY.plusDays(6));
        assertThat(fill("S", 1, "29 Nov").plan().heading().date()).contains(LocalDate.of(2026, 11, 29));
        assertThat(fill("S", 1, "2 Feb").plan().heading().date()).contains(LocalDate.of(2027, 2, 2));
    }

    @Test
    void a_new_hymn_with_only_a_number_is_called_by_it() {
        desk.press("I", "'77'", "<Tab>", "<Tab>", "'LONG MARTON'", "<Tab>", "^U", "'2 verses'", "<Enter>");
        assertThat(desk.hymn().title()).isEqualTo("Hymn 77");
        assertThat(desk.labels()).containsExactly("Intro", "V1", "Last");
        assertThat(desk.effects()).anyMatch(wanted -> wanted.is("findHymn"));
    }

    @Test
    void a_new_hymn_of_no_verses_has_its_introduction() {
        desk.press("I", "<Tab>", "'A tune'", "<Tab>", "<Tab>", "^U", "'0'", "<Enter>");
        assertThat(desk.labels()).containsExactly("Intro");
    }

    @Test
    void a_new_hymn_of_one_verse_calls_it_the_first_and_not_the_last() {
        desk.press("I", "<Tab>", "'A tune'", "<Tab>", "<Tab>", "^U", "'1'", "<Enter>");
        assertThat(desk.labels()).containsExactly("Intro", "V1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"61", "-1", "", "four"})
    void a_new_hymn_of_another_number_of_verses_is_told_the_limits(String typed) {
        desk.press("I", "<Tab>", "'A tune'", "<Tab>", "<Tab>", "^U", "'" + typed + "'", "<Enter>");
        assertThat(desk.form().complaint()).isEqualTo("Verses: enter a whole number from 0 to 60.");
    }

    @Test
    void a_new_hymn_stands_after_the_one_where_we_are() {
        desk.press("]", "I", "<Tab>", "'A tune'", "<Enter>");
        assertThat(desk.plan().hymns().get(2).title()).isEqualTo("A tune");
    }

    @Test
    void a_new_plan_is_for_the_next_sunday() {
        desk.answer(new LibraryEvent.PlanBegun("o", "O", Player.WITH_PEDALS, 100));
        assertThat(desk.form().text(1)).isEqualTo("2026-10-04");
        assertThat(desk.form().text(3)).isEqualTo("100");
    }

    @ParameterizedTest
    @CsvSource({"2026-10-03, 2026-10-04", "2026-10-04, 2026-10-11", "2026-10-05, 2026-10-11", "2026-12-28, 2027-01-10"})
    void the_next_sunday_without_a_service_is_never_today(LocalDate today, String sunday) {
        State state = Update.empty(80, 24, Marks.UNICODE, today);
        FormBox form = ServiceForm.ofNewPlan(
                state,
                "organ",
                "Organ",
                new ServiceHeading("", Optional.empty(), 100, ""),
                Set.of(LocalDate.of(2027, 1, 3)));
        assertThat(form.text(1)).isEqualTo(sunday);
    }

    @Test
    void a_new_plan_needs_a_title() {
        desk.answer(new LibraryEvent.PlanBegun("o", "O", Player.WITH_PEDALS, 100));
        assertThat(desk.press("<Enter>").form().complaint()).isEqualTo("A service needs a title.");
    }

    @ParameterizedTest
    @CsvSource({"80, 24", "60, 18"})
    void no_help_of_a_field_is_cut(int columns, int rows) {
        for (String form : List.of("e", "E", "I", "S")) {
            Desk small = Desk.with("harvest-festival", columns, rows).press("n", form);
            for (int i = 0; i < small.form().fields().size(); i++) {
                FormBox.Field field = small.form().fields().get(small.form().at());
                assertThat(unbroken(small))
                        .contains(field.name() + ": "
                                + field.hint().of(field.line().text().strip()));
                small.press("<Tab>");
            }
        }
    }

    @Test
    void a_date_is_told_with_its_day_in_the_churchs_year_as_soon_as_it_can_be_read() {
        Desk service = Desk.with("harvest-festival", 80, 24).press("S", "<Tab>");
        assertThat(unbroken(service))
                .contains("Date: Sun 4 Oct 2026, Eighteenth Sunday after Trinity, Proper 22: ordinary");
        assertThat(unbroken(service.press("^U", "'2027-03-2'")))
                .contains("Date: the day, such as 20 Dec 2026 or 2026-12-20; may be blank");
        assertThat(unbroken(service.press("'8'"))).contains("Date: Sun 28 Mar 2027, Easter Day: festal");
    }

    /** All that is on the screen as one line. */
    private static String unbroken(Desk desk) {
        Frame frame = desk.frame();
        StringBuilder text = new StringBuilder();
        for (int y = 0; y < frame.height(); y++) {
            text.append(frame.row(y).strip()).append(' ');
        }
        return text.toString();
    }

    @ParameterizedTest
    @CsvSource({"0, 12", "5, 17", "40, 52", "200, 17"})
    void the_caret_is_seen_in_a_text_of_any_length(int length, int column) {
        Desk typing = Desk.with("harvest-festival", 80, 24).press("e", "^U");
        typing.answer(new Event.Paste("x".repeat(length)));
        assertThat(typing.frame().caretX()).isEqualTo(column);
    }

    @Test
    void the_caret_stands_behind_wide_characters_by_their_columns() {
        Desk typing = Desk.with("harvest-festival", 80, 24).press("e", "^U", "'赞美'");
        assertThat(typing.frame().caretX()).isEqualTo(12 + 4);
    }

    @Test
    void the_other_fields_show_their_beginnings() {
        Desk typing = Desk.with("harvest-festival", 80, 24)
                .press("e", "^U", "'begins here " + "x".repeat(200) + "'", "<Tab>");
        assertThat(typing.screen()).contains("Label     begins here xxx");
    }

    @Test
    void a_long_text_is_shown_in_several_rows_and_typed_into_in_the_last_of_them() {
        String all = "Great: Open Diapason 8, Principal 4, Twelfth 2 2/3, Fifteenth 2, Mixture III; Swell: Oboe 8";
        Desk typing = Desk.with("harvest-festival", 80, 24).press("e", "^U", "'" + all + "'");
        assertThat(unbroken(typing)).contains(all);
        assertThat(typing.frame().row(typing.frame().caretY())).contains("Swell: Oboe 8");
        assertThat(unbroken(typing.press("<Tab>"))).contains(all);
    }

    @Test
    void a_form_goes_when_its_plan_is_closed_for_another() {
        OpenPlan wedding = Shipped.plan("wedding");
        desk.press("e")
                .answer(new FileEvent.PlanOpened(
                        "wedding",
                        wedding.plan(),
                        wedding.instrument(),
                        Desk.organ(wedding.instrument()),
                        Optional.empty()));
        assertThat(desk.state().top()).isEqualTo(new PlanScreen());
    }
}
