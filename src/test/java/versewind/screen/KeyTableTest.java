package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeyTableTest {

    static List<KeyTable<?>> tables() {
        return HelpScreen.TABLES;
    }

    /** Two rows may have the same key only if each is for a mode of its own. */
    @ParameterizedTest
    @MethodSource("tables")
    void a_key_has_one_meaning_in_each_mode_of_a_screen(KeyTable<?> table) {
        Set<Key> everywhere = new HashSet<>();
        Set<List<Object>> inModes = new HashSet<>();
        for (KeyTable.Row<?> row : table.rows()) {
            for (Key key : row.keys()) {
                assertThat(row.mode()
                                .map(mode -> inModes.add(List.of(mode, key)))
                                .orElseGet(() -> everywhere.add(key)))
                        .as(row.keyNames() + ": " + row.does())
                        .isTrue();
            }
        }
        inModes.forEach(each -> assertThat(everywhere).doesNotContain((Key) each.get(1)));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void keys_that_mean_the_same_everywhere_mean_nothing_else_anywhere(KeyTable<?> table) {
        assertThat(table.rows())
                .filteredOn(
                        row -> row.keyNames().equals("Ctrl-C") || row.keyNames().equals("Ctrl-L"))
                .hasSize(table == PlanScreen.KEYS ? 2 : 0);
    }

    static List<KeyTable<?>> tables_of_screens_into_which_text_is_typed() {
        return List.of(FindScreen.KEYS, FormBox.KEYS, Chooser.KEYS, LibraryScreen.KEYS, PasteScreen.KEYS);
    }

    @ParameterizedTest
    @MethodSource("tables_of_screens_into_which_text_is_typed")
    void where_text_is_typed_no_character_is_a_command(KeyTable<?> table) {
        assertThat(table.rows().stream().flatMap(row -> row.keys().stream()))
                .noneMatch(key -> key.named() == Key.Named.CHARACTER && !key.control());
    }

    @Test
    void the_names_of_keys_fit_into_their_column() {
        assertThat(HelpScreen.lines(Marks.UNICODE))
                .allSatisfy(line -> assertThat(line.keys().length()).isLessThan(24));
    }

    /** Every printable key and every named key, on either side: something changes, or something is said. */
    @ParameterizedTest
    @ValueSource(strings = {"STOPS", "VERSES"})
    void no_key_does_nothing(String side) {
        List<Key> keys = new ArrayList<>();
        for (char c = ' '; c <= '~'; c++) {
            keys.add(Key.of(c));
        }
        for (Key.Named named : Key.Named.values()) {
            if (named != Key.Named.CHARACTER) {
                keys.add(Key.of(named));
            }
        }
        for (Key key : keys) {
            Desk desk = Desk.with("harvest-festival", 80, 24).press("n", "<Down>");
            if (side.equals("VERSES")) {
                desk.press("<Tab>");
            }
            desk.effects();
            State before = desk.state();
            desk.answer(new Event.Press(key));
            boolean answered = !desk.state().equals(before) || !desk.effects().isEmpty();
            assertThat(answered).as(key.name()).isTrue();
        }
    }

    @Test
    void an_unknown_key_is_answered_with_a_sentence() {
        assertThat(Desk.with("harvest-festival", 80, 24).press("j").said())
                .isEqualTo("j has no meaning here; ? shows all keys.");
    }
}
