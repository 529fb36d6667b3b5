package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Shipped;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.screen.desk.DeskScreen;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.Layout;
import versewind.screen.plan.PlanScreen;
import versewind.screen.state.Event;
import versewind.screen.state.PlanEdit;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Text;

/** Windows of other sizes, and what is shown when there is too much or too little of it. */
class WindowTest {

    private static String row(Desk desk, int fromBottom) {
        Frame frame = desk.frame();
        return frame.row(frame.height() - fromBottom);
    }

    @ParameterizedTest
    @CsvSource({"59, 18", "60, 17", "24, 5", "10, 10"})
    void a_window_too_small_says_what_it_needs(int columns, int rows) {
        Frame frame = Desk.with("harvest-festival", columns, rows).frame();
        String text = IntStream.range(0, rows).mapToObj(frame::row).collect(Collectors.joining(" "));
        assertThat(text.strip())
                .isEqualTo("Versewind needs 60 columns and 18 rows; this window has " + columns + " by " + rows
                        + ". Nothing is lost." + (columns < 40 ? "" : " K opens the desk, which fits."));
    }

    @Test
    void a_window_of_nothing_is_painted() {
        assertThat(Desk.with("harvest-festival", 0, 0).frame().height()).isZero();
    }

    @Test
    void the_smallest_window_shows_the_plan() {
        assertThat(Desk.with("harvest-festival", 60, 18).frame().row(0)).startsWith(" Harvest Festival");
    }

    @Test
    void after_a_window_too_small_all_is_as_it_was() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("n", "<Right>", "e", "'abc'");
        String before = desk.screen();
        desk.answer(new Event.Resize(20, 5)).answer(new Event.Resize(80, 24));
        assertThat(desk.screen()).isEqualTo(before);
    }

    @Test
    void another_size_leaves_what_was_said() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("p").answer(new Event.Resize(100, 30));
        assertThat(desk.said()).isEqualTo("This is the start of the service.");
    }

    @Test
    void a_long_sentence_is_read_to_its_end() {
        Desk desk = Desk.with("harvest-festival", 60, 18);
        desk.answer(new Event.Failed("plans/wedding.json, line 14, hymns[1].verses[2].drawn: the organ has no stop "
                + "\"Open Diapson 8\" in Great. Did you mean \"Open Diapason 8\"?"));
        assertThat(row(desk, 1)).endsWith("\"Open Diapason 8\"?");
    }

    @Test
    void a_sentence_longer_than_the_window_is_high_is_painted() {
        Desk desk = Desk.with("harvest-festival", 60, 18).answer(new Event.Failed("No. ".repeat(1000)));
        assertThat(row(desk, 1)).isNotBlank();
    }

    @Test
    void a_long_question_is_read_to_its_end() {
        Desk desk = Desk.with("harvest-festival", 60, 18);
        desk.answer(new FileEvent.SaveRefused(Desk.CHANGED_ELSEWHERE, desk.plan(), List.of()));
        assertThat(desk.screen()).containsPattern("opened it\\.|(?m)^  it\\.$");
    }

    @ParameterizedTest
    @ValueSource(strings = {"e", "E", "I", "S"})
    void under_a_form_no_keys_are_named_that_it_does_not_have(String form) {
        assertThat(row(Desk.with("harvest-festival", 80, 24).press(form), 1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"60, 18", "80, 24", "120, 40"})
    void keys_named_in_a_box_are_not_cut(int columns, int rows) {
        Desk desk = Desk.with("harvest-festival", columns, rows);
        desk.library(Desk.listed("a", "A plan", ""));
        assertThat(desk.screen()).containsPattern("(?m)(copy|rename|delete|help|leave) *$");
    }

    @Test
    void the_hymn_where_we_are_is_shown_in_a_hymn_without_verses() {
        Plan many = Shipped.plan("harvest-festival").plan();
        Desk desk = Desk.with(
                "harvest-festival",
                plan -> plan.withHymns(IntStream.range(0, 30)
                        .mapToObj(i -> many.hymns().get(0).withVerses(List.of()))
                        .toList()));
        for (int i = 0; i < 29; i++) {
            assertThat(desk.screen()).containsPattern("▸208 Come");
            desk.press("]");
        }
        assertThat(desk.screen()).containsPattern("▸208 Come");
    }

    @ParameterizedTest
    @CsvSource({"60, 18", "80, 24", "200, 60"})
    void strange_names_leave_the_columns_straight(int columns, int rows) {
        Desk desk = strange(OddOrgans.withStrangeNames(), columns, rows).press("I", "<Tab>", "'A tune'", "<Enter>");
        Frame frame = desk.frame();
        Layout layout = Layout.of(desk.state());
        assertThat(IntStream.range(layout.top(), layout.statusTop()).takeWhile(y -> frame.character(0, y) != '─'))
                .isNotEmpty()
                .allMatch(y -> frame.character(layout.gridWidth(), y) == '│');
    }

    @ParameterizedTest
    @CsvSource({"60, 18", "80, 24", "200, 60"})
    void long_names_stay_in_their_columns(int columns, int rows) {
        Desk desk = strange(OddOrgans.withLongNames(), columns, rows).press("I", "<Tab>", "'A tune'", "<Enter>");
        Frame frame = desk.frame();
        Layout layout = Layout.of(desk.state());
        assertThat(IntStream.range(layout.top(), layout.statusTop()).takeWhile(y -> frame.character(0, y) != '─'))
                .isNotEmpty()
                .allMatch(y -> frame.character(layout.gridWidth(), y) == '│');
    }

    @ParameterizedTest
    @CsvSource({"60, 18", "80, 24"})
    void a_box_over_wide_characters_has_straight_edges(int columns, int rows) {
        Desk desk = strange(OddOrgans.withStrangeNames(), columns, rows);
        desk.press("I", "<Tab>", "'" + "赞".repeat(40) + "'", "<Enter>", "S");
        Frame frame = desk.frame();
        for (int y = 0; y < frame.height(); y++) {
            assertThat(Text.columns(frame.row(y))).isLessThanOrEqualTo(columns);
        }
    }

    private static Desk strange(Instrument organ, int columns, int rows) {
        Plan plan = new Plan(new ServiceHeading("Trial", Optional.empty(), 1, ""), "organ", List.of());
        return Desk.with(plan, organ, Update.empty(columns, rows, Marks.UNICODE, Desk.TODAY), Optional.empty());
    }

    @Test
    void one_person_is_not_people() {
        assertThat(strange(OddOrgans.withoutStops(), 80, 24).frame().row(0)).endsWith("1 person");
    }

    @Test
    void a_long_search_leaves_room_for_what_is_found() {
        Desk desk = Desk.with("harvest-festival", 60, 18).press("/", "'" + "x".repeat(80) + "'");
        assertThat(row(desk, 1)).contains("  no stop has this in ");
    }

    @Test
    void the_caret_of_a_long_search_is_seen() {
        Desk desk = Desk.with("harvest-festival", 60, 18).press("/", "'" + "x".repeat(80) + "'");
        assertThat(desk.frame().caretX()).isBetween(7, 36);
    }

    @Test
    void the_caret_of_a_long_filter_is_seen() {
        Desk desk = Desk.with("harvest-festival", 60, 18);
        desk.library(Desk.listed("a", "A plan", ""));
        assertThat(desk.press("'" + "x".repeat(80) + "'").frame().caretX()).isBetween(0, 58);
    }

    @Test
    void a_search_begun_among_the_verses_and_left_leads_back_to_them() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("<Tab>", "/", "'oboe'", "<Esc>");
        assertThat(desk.work().side()).isEqualTo(PlanEdit.Side.VERSES);
    }

    @Test
    void a_stop_found_from_the_verses_has_the_keys() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("<Tab>", "/", "'oboe'", "<Enter>");
        assertThat(desk.work().side()).isEqualTo(PlanEdit.Side.STOPS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"<Left>", "<Home>", "<PageDown>", "<F5>"})
    void a_key_that_types_nothing_leaves_the_knob_that_was_found(String key) {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("/", "'flute'", "<Tab>");
        String found = desk.knob();
        assertThat(desk.press(key).knob()).isEqualTo(found);
    }

    @ParameterizedTest
    @ValueSource(strings = {"<Left>", "<Right>", "<PageDown>", "<F5>"})
    void a_key_that_types_nothing_leaves_the_row_that_is_marked(String key) {
        Desk desk = Desk.with("harvest-festival", 80, 24);
        desk.library(Desk.listed("a", "One plan", ""), Desk.listed("b", "Another plan", ""));
        desk.press("'plan'", "<Down>", key).effects();
        assertThat(desk.press("<Enter>").effects()).containsExactly(Wanted.of("openPlan", "b"));
    }

    @Test
    void typing_marks_the_first_row_that_fits() {
        Desk desk = Desk.with("harvest-festival", 80, 24);
        desk.library(Desk.listed("a", "One plan", ""), Desk.listed("b", "Another plan", ""));
        desk.press("<Down>", "'one'").effects();
        assertThat(desk.press("<Enter>").effects()).containsExactly(Wanted.of("openPlan", "a"));
    }

    @Test
    void the_marked_row_does_not_leave_the_list() {
        Desk desk = Desk.with("harvest-festival", 80, 24);
        desk.library(Desk.listed("a", "One plan", ""), Desk.listed("b", "Another plan", ""));
        desk.press("<Up>", "<Down>", "<Down>", "<Down>", "<Down>").effects();
        assertThat(desk.press("<Enter>").effects()).containsExactly(Wanted.of("openPlan", "b"));
    }

    @Test
    void where_nothing_fits_nothing_is_chosen() {
        Desk desk = Desk.with("harvest-festival", 80, 24);
        desk.library(Desk.listed("a", "One plan", ""));
        assertThat(desk.press("'zzz'", "<Enter>").said()).isEqualTo("Nothing in the list matches the filter.");
    }

    @Test
    void a_window_too_small_tells_the_question_that_waits() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press(" ").answer(new Event.Resize(40, 10));
        assertThat(desk.press("^C").screen()).contains("This plan has");
    }

    @Test
    void a_search_that_finds_nothing_stays_where_it_began() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("<Down>", "/", "'zink'");
        assertThat(desk.knob()).isEqualTo("Great: Open Diapason 8");
    }

    @Test
    void a_window_too_small_for_the_plan_shows_the_desk_when_it_is_asked_for() {
        Desk desk = Desk.with("harvest-festival", 40, 10);
        assertThat(desk.screen().replace("\n", " ")).contains("K opens the desk, which fits.");
        assertThat(desk.press("K").state().top()).isInstanceOf(DeskScreen.class);
        assertThat(desk.screen()).doesNotContain("Versewind needs");
        assertThat(desk.press("<Esc>").screen()).contains("Versewind needs");

        Desk smaller = Desk.with("harvest-festival", 39, 10);
        assertThat(smaller.press("K").state().top()).isInstanceOf(PlanScreen.class);
        assertThat(smaller.screen()).doesNotContain("desk");
    }

    @Test
    void back_tab_goes_to_the_last_that_fits() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("/", "'flute'", "<Shift-Tab>");
        assertThat(desk.knob()).isEqualTo("Pedal: Bass Flute 8");
    }
}
