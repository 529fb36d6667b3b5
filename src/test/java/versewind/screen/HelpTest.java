package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HelpTest {

    /** All rows that are read from the first line to the last. */
    private static Set<String> read(Desk desk) {
        Set<String> rows = new LinkedHashSet<>();
        desk.press("?");
        for (int page = 0; page < 20; page++) {
            Frame frame = desk.frame();
            for (int y = 1; y < frame.height() - 1; y++) {
                rows.add(frame.row(y).strip());
            }
            desk.press("<PageDown>");
        }
        return rows;
    }

    @ParameterizedTest
    @CsvSource({"80, 24", "60, 18", "120, 40", "200, 60"})
    void everything_is_read_to_its_end(int columns, int rows) {
        Set<String> words = new HashSet<>();
        read(Desk.with("harvest-festival", columns, rows)).forEach(row -> words.addAll(List.of(row.split(" +"))));
        assertThat(HelpScreen.lines(Marks.UNICODE)).allSatisfy(line -> assertThat(words)
                .contains((line.keys() + " " + line.does()).strip().split(" +")));
    }

    @ParameterizedTest
    @CsvSource({"80, 24", "60, 18"})
    void every_command_stands_beside_its_keys(int columns, int rows) {
        Set<String> read = read(Desk.with("harvest-festival", columns, rows));
        assertThat(HelpScreen.lines(Marks.UNICODE))
                .filteredOn(line -> line.does().length() < columns - 26)
                .allSatisfy(line ->
                        assertThat(read).anyMatch(row -> row.startsWith(line.keys()) && row.endsWith(line.does())));
    }

    @Test
    void up_leads_back_to_the_first_line() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("?", " ", " ", " ", "<PageUp>", "<PageUp>", "<PageUp>");
        assertThat(desk.state().top()).isEqualTo(new HelpScreen(0));
    }

    @Test
    void beyond_the_last_line_there_is_nothing_to_read() {
        Desk desk = Desk.with("harvest-festival", 80, 24)
                .press("?")
                .press(Collections.nCopies(20, " ").toArray(String[]::new));
        State last = desk.state();
        assertThat(desk.press("<Down>").state()).isEqualTo(last);
    }

    @Test
    void on_a_screen_high_enough_all_keys_are_seen_at_once() {
        Desk desk = Desk.with("harvest-festival", 80, 260).press("?");
        int lines = HelpScreen.shown(desk.state()).size();
        assertThat(desk.screen()).contains("lines 1 to " + lines + " of " + lines);
    }

    @Test
    void a_window_made_higher_while_reading_at_the_end_shows_more() {
        Desk desk = Desk.with("harvest-festival", 80, 24)
                .press("?")
                .press(Collections.nCopies(20, " ").toArray(String[]::new));
        desk.answer(new Event.Resize(80, 40));
        assertThat(desk.frame().row(37)).isNotBlank();
    }

    @ParameterizedTest
    @CsvSource({"<Esc>", "?", "q", "<F1>"})
    void the_help_is_closed(String key) {
        assertThat(Desk.with("harvest-festival", 80, 24).press("?", key).state().top())
                .isEqualTo(new PlanScreen());
    }

    @Test
    void other_keys_leave_the_help_and_the_plan_as_they_are() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("?");
        State before = desk.state().with(Notice.NONE);
        assertThat(desk.press("x").state().with(Notice.NONE)).isEqualTo(before);
    }
}
