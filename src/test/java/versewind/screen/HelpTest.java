package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.screen.plan.PlanScreen;
import versewind.screen.state.Event;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.TextLine;

class HelpTest {

    /** All rows that are read from the first line to the last. */
    private static Set<String> read(Desk desk) {
        Set<String> rows = new LinkedHashSet<>();
        desk.press("?");
        for (int page = 0; page < 40; page++) {
            Frame frame = desk.frame();
            for (int y = 1; y < frame.height() - 1; y++) {
                rows.add(frame.row(y).strip());
            }
            desk.press("<PageDown>");
        }
        return rows;
    }

    private static List<HelpScreen.Line> lines(Desk desk) {
        return HelpScreen.lines(desk.state());
    }

    @ParameterizedTest
    @CsvSource({"80, 24", "60, 18", "120, 40", "200, 60"})
    void everything_is_read_to_its_end(int columns, int rows) {
        Desk desk = Desk.with("harvest-festival", columns, rows);
        List<HelpScreen.Line> lines = lines(desk);
        Set<String> words = new HashSet<>();
        read(desk).forEach(row -> words.addAll(List.of(row.split(" +"))));
        assertThat(lines).allSatisfy(line -> assertThat(words)
                .contains((line.keys() + " " + line.does()).strip().split(" +")));
    }

    @ParameterizedTest
    @CsvSource({"80, 24", "60, 18"})
    void every_command_stands_beside_its_keys(int columns, int rows) {
        Desk desk = Desk.with("harvest-festival", columns, rows);
        List<HelpScreen.Line> lines = lines(desk);
        Set<String> read = read(desk);
        assertThat(lines.stream()
                        .filter(line -> line.does().length() < columns - 26)
                        .filter(line -> read.stream()
                                .noneMatch(row -> row.startsWith(line.keys()) && row.endsWith(line.does())))
                        .map(line -> line.keys() + " " + line.does()))
                .isEmpty();
    }

    @Test
    void up_leads_back_to_the_first_line_and_beyond_the_last_there_is_none() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("?");
        int last = lines(Desk.with("harvest-festival", 80, 24)).size() - 1;
        desk.press(Collections.nCopies(40, "<PageDown>").toArray(String[]::new));
        assertThat(desk.state().top()).isEqualTo(new HelpScreen(TextLine.EMPTY, last));
        desk.press(Collections.nCopies(40, "<PageUp>").toArray(String[]::new));
        assertThat(desk.state().top()).isEqualTo(HelpScreen.START);
    }

    static Stream<Desk> screens() {
        return Stream.of(
                Desk.with("harvest-festival", 80, 24),
                Desk.with("harvest-festival", 80, 24).press("<Tab>"),
                Desk.with("harvest-festival", 80, 24).press("f"),
                Desk.with("harvest-festival", 80, 24).press("e"),
                Desk.with("harvest-festival", 80, 24).press("/"),
                Desk.with("harvest-festival", 80, 24).press("K"),
                Desk.with("harvest-festival", 80, 24).press("K", "y"),
                Desk.with("harvest-festival", 80, 24).press(" ", "q"),
                Desk.with("harvest-festival", 80, 24).library(Desk.listed("a", "Evensong", "")));
    }

    @ParameterizedTest
    @MethodSource("screens")
    void help_begins_with_the_keys_of_the_screen_on_which_it_is_asked_for(Desk desk) {
        String first = KeyTable.commands(desk.state()).get(0).row().does();
        Screen before = desk.state().top();
        assertThat(desk.press("<F1>").frame().row(2)).contains(first.substring(0, Math.min(20, first.length())));
        assertThat(desk.press("<F1>").state().top()).isEqualTo(before);
    }

    @Test
    void what_is_typed_keeps_the_lines_that_hold_it_and_enter_does_the_marked_one() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("?", "'duplicate verse'");
        assertThat(desk.frame().row(2)).contains("duplicate the verse");
        int verses = desk.work().verses().size();
        desk.press("<Enter>");
        assertThat(desk.state().top()).isEqualTo(new PlanScreen());
        assertThat(desk.work().verses()).hasSize(verses + 1);
    }

    @Test
    void keys_of_other_screens_are_only_read() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("?", "'add one like'", "<Enter>");
        assertThat(desk.said()).isEqualTo("This is for another screen, and only to be read here.");
    }

    @ParameterizedTest
    @CsvSource({"<Esc>", "?", "<F1>"})
    void the_help_is_closed(String key) {
        assertThat(Desk.with("harvest-festival", 80, 24).press("?", key).state().top())
                .isEqualTo(new PlanScreen());
    }

    /** Its key and its name do the same, for every command of a screen that changes nothing else by being asked for. */
    @ParameterizedTest
    @MethodSource("screens")
    void every_command_of_a_screen_is_reached_by_its_name(Desk desk) {
        State beneath = desk.state();
        for (KeyTable.Command<?> command : KeyTable.commands(beneath)) {
            State line = CommandScreen.open(beneath.top(), beneath);
            line = Update.step(line, new Event.Paste(command.row().does())).state();
            assertThat(View.paint(line).row(line.rows() - 2).strip() + marked(line))
                    .as(command.row().does())
                    .contains(command.row().keyNames());
        }
    }

    /** The row that is marked. */
    private static String marked(State line) {
        Frame frame = View.paint(line);
        return IntStream.range(0, frame.height())
                .filter(y -> frame.style(1, y) == Style.CURSOR)
                .mapToObj(frame::row)
                .collect(Collectors.joining());
    }

    @Test
    void a_command_is_found_by_a_few_letters_with_its_key_beside_it() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press(":", "'sheet'");
        assertThat(desk.screen()).contains("write the sheet for the music desk").containsPattern("desk +W");
        assertThat(desk.press("<Enter>").screen()).contains("Write which sheet?");
    }

    @Test
    void a_command_is_found_by_another_word_for_it() {
        Desk desk = Desk.with("harvest-festival", 80, 24);
        assertThat(KeyTable.commands(desk.state()))
                .extracting(command -> command.row().does())
                .containsAll(CommandScreen.OTHER_WORDS.keySet());
        assertThat(desk.press(":", "'quit'").screen()).containsPattern("leave +q, Ctrl-Q");
    }

    @Test
    void the_next_command_that_fits_is_marked_by_the_tabulator() {
        Desk desk = Desk.with("harvest-festival", 80, 24).press(":", "'undo'", "<Tab>", "<Shift-Tab>", "<Enter>");
        assertThat(desk.said()).isEqualTo("Nothing to undo.");
    }
}
