package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.plan.Plan;
import versewind.screen.library.LibraryScreen;
import versewind.screen.organ.PasteScreen;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.FindScreen;
import versewind.screen.state.Chooser;
import versewind.screen.state.Event;
import versewind.screen.state.FormBox;
import versewind.screen.state.KeyTable;
import versewind.screen.state.State;
import versewind.screen.toolkit.Key;

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

    /** Keys that go from one thing to another, whatever there is to go to. */
    private static final Set<Key> MOVING =
            Set.copyOf(Key.all("Up, Down, Left, Right, Home, End, Page Up, Page Down, Tab, Shift-Tab, Backspace"));

    /** Keys whose meaning has several words, and by which first words they are called. */
    private static final Map<String, Set<String>> SEVERAL_WORDS = Map.ofEntries(
            // Says yes to what is marked or asked.
            Map.entry(
                    "Enter",
                    Set.of(
                            "describe",
                            "edit",
                            "go",
                            "take",
                            "do",
                            "OK",
                            "choose",
                            "open",
                            "stay",
                            "on",
                            "same",
                            "yes",
                            "proposals",
                            "restore")),
            // Out of where one is.
            Map.entry("Esc", Set.of("close", "back", "stop", "clear", "Cancel", "not", "stay")),
            Map.entry("q", Set.of("close", "back", "stop", "leave")),
            Map.entry("Ctrl-Q", Set.of("close", "leave")),
            // Away with it.
            Map.entry("x", Set.of("delete", "ignore", "discard")),
            Map.entry("Delete", Set.of("delete", "ignore")),
            // More and less of those who sing.
            Map.entry("+", Set.of("they", "more")),
            Map.entry("=", Set.of("they", "more")),
            Map.entry("-", Set.of("they", "fewer")),
            // Done with what was typed.
            Map.entry("Ctrl-S", Set.of("save", "OK", "read")),
            Map.entry("?", Set.of("help", "close")),
            Map.entry("F1", Set.of("help", "close")),
            // Two exceptions: page-turning pedals send the space bar, and what is numbered is chosen by its number.
            Map.entry("Space", Set.of("draw", "on", "verse")),
            Map.entry("1", Set.of("congregation", "too")),
            Map.entry("2", Set.of("small", "right")),
            Map.entry("3", Set.of("soloist", "too")));

    private static final Pattern FIRST_WORD = Pattern.compile("(?:the |an? )?(\\w+).*");

    private static String firstWord(String does) {
        Matcher matcher = FIRST_WORD.matcher(does);
        assertThat(matcher.matches()).as(does).isTrue();
        return matcher.group(1);
    }

    private static List<KeyTable<?>> questions() {
        Event refused = new FileEvent.SaveRefused(
                Desk.CHANGED_ELSEWHERE, Desk.with("wedding", 80, 24).plan(), List.of());
        List<Desk> asked = List.of(
                Desk.with("wedding", 80, 24).press(" ", "q"),
                Desk.with("wedding", 80, 24).answer(refused),
                Desk.with("wedding", 80, 24).press("e", "z", "^C"),
                Desk.with("wedding", 80, 24).press("P", "P"),
                Desk.with("wedding", 80, 24).press("^X"),
                Desk.with("wedding", 80, 24).press("K", "y", "1", "<Esc>"),
                Desk.withDraft("wedding", plan -> plan.withHymns(List.of())));
        assertThat(asked).allSatisfy(desk -> assertThat(desk.question()).isNotBlank());
        return asked.stream()
                .<KeyTable<?>>map(desk -> desk.state().top().keys())
                .toList();
    }

    @Test
    void a_key_has_one_meaning_on_all_screens() {
        Map<String, Set<String>> meanings = new TreeMap<>();
        Stream.concat(tables().stream(), questions().stream())
                .flatMap(table -> table.rows().stream())
                .filter(row -> !row.does().isBlank())
                .forEach(row -> row.keys().stream()
                        .filter(key -> !MOVING.contains(key))
                        .forEach(key -> meanings.computeIfAbsent(key.name(), none -> new TreeSet<>())
                                .add(firstWord(row.does()))));
        meanings.forEach((key, words) -> {
            if (SEVERAL_WORDS.containsKey(key)) {
                assertThat(words).as(key).isEqualTo(SEVERAL_WORDS.get(key));
            } else {
                assertThat(words).as(key).hasSize(1);
            }
        });
    }

    @Test
    void caps_lock_never_turns_a_command_into_one_that_destroys() {
        Map<Key, String> all = new HashMap<>();
        tables().stream().flatMap(table -> table.rows().stream()).forEach(row -> row.keys()
                .forEach(key -> all.put(key, row.does().split("\\W", 2)[0])));
        all.forEach((key, word) -> {
            if (Set.of("delete", "discard", "ignore", "put").contains(word) && key.isCharacter()) {
                int other = Character.isLowerCase(key.character())
                        ? Character.toUpperCase(key.character())
                        : Character.toLowerCase(key.character());
                assertThat(other == key.character() || !all.containsKey(Key.of(other)))
                        .as(key.name())
                        .isTrue();
            }
        });
    }

    @ParameterizedTest
    @CsvSource({
        "'n,^X', 7 verses",
        "'n,&', 5 verses",
        "'v,V', '21 verses, 4 introductions and 1 interlude'",
        "'P,P', '21 verses, 4 introductions and 1 interlude'"
    })
    void what_changes_more_than_one_verse_asks_first_and_says_how_many(String keys, String verses) {
        Desk desk = Desk.with("harvest-festival", 80, 24).press("0").press(keys.split(","));
        Plan before = desk.plan();
        assertThat(desk.question()).isNotBlank();
        assertThat(desk.screen()).contains(verses);
        assertThat(desk.press("<Esc>").plan()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 5})
    void enter_draws_no_stop(int further) {
        Desk desk = Desk.with("harvest-festival", 80, 24);
        IntStream.range(0, further).forEach(i -> desk.press("<Down>"));
        Plan before = desk.plan();
        assertThat(desk.press("<Enter>", "<Enter>").plan()).isEqualTo(before);
    }

    static List<KeyTable<?>> tables_of_screens_into_which_text_is_typed() {
        return List.of(
                FindScreen.KEYS, FormBox.KEYS, Chooser.KEYS, LibraryScreen.KEYS, PasteScreen.KEYS, CommandScreen.KEYS);
    }

    @ParameterizedTest
    @MethodSource("tables_of_screens_into_which_text_is_typed")
    void where_text_is_typed_no_character_is_a_command(KeyTable<?> table) {
        assertThat(table.rows().stream().flatMap(row -> row.keys().stream()))
                .noneMatch(key -> key.named() == Key.Named.CHARACTER && !key.control());
    }

    @Test
    void the_names_of_keys_fit_into_their_column() {
        assertThat(HelpScreen.keyLines())
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
        assertThat(Desk.with("harvest-festival", 80, 24).press("J").said())
                .isEqualTo("J does nothing here; ? lists the keys that do.");
    }

    @Test
    void over_another_screen_it_is_said_what_the_key_does_there() {
        Desk findings = Desk.with("harvest-festival", 80, 24).press("f");
        assertThat(findings.press("s").said()).isEqualTo("s does nothing here; Esc, then s: save.");
        assertThat(findings.press("J").said()).isEqualTo("J does nothing here; ? lists the keys that do.");
    }
}
