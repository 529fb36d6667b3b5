package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandTest {

    @ParameterizedTest
    @EnumSource(Command.Where.class)
    void a_key_has_one_meaning_in_each_place(Command.Where where) {
        Map<Key, List<Command>> meanings = new HashMap<>();
        for (Command command : Command.values()) {
            if (where.answersTo(command.where())) {
                command.keys().forEach(key -> meanings.computeIfAbsent(key, k -> new ArrayList<>())
                        .add(command));
            }
        }
        assertThat(meanings.values())
                .allSatisfy(commands -> assertThat(commands).hasSize(1));
    }

    static List<KeyTable<?>> tables() {
        return HelpView.TABLES;
    }

    @ParameterizedTest
    @MethodSource("tables")
    void a_key_stands_once_in_a_table(KeyTable<?> table) {
        assertThat(table.rows().stream().flatMap(row -> row.keys().stream()))
                .doesNotContainNull()
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(Command.class)
    void every_command_has_something_to_do(Command command) {
        assertThat(Update.table()).containsKey(command);
        assertThat(command.keys()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"FIND", "LIBRARY", "STOP_TEXT"})
    void where_text_is_typed_no_character_is_a_command(String where) {
        Command.Where place = Command.Where.valueOf(where);
        assertThat(Stream.of(Command.values())
                        .filter(command -> place.answersTo(command.where()))
                        .flatMap(command -> command.keys().stream()))
                .noneMatch(key -> key.named() == Key.Named.CHARACTER && !key.control());
    }

    @Test
    void the_help_lists_every_command() {
        List<String> said =
                HelpView.lines(Marks.UNICODE).stream().map(HelpView.Line::does).toList();
        assertThat(Stream.of(Command.values()).map(Command::does))
                .allSatisfy(does -> assertThat(said).contains(does));
    }

    @Test
    void the_names_of_keys_fit_into_their_column() {
        assertThat(HelpView.lines(Marks.UNICODE))
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
                .isEqualTo("j means nothing here; ? shows all keys.");
    }
}
