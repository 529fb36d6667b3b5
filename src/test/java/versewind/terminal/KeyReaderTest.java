package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.screen.state.Event;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Key.Named;

class KeyReaderTest {

    private static final int GAP = 5;

    @ParameterizedTest
    @CsvSource({
        "[A, UP",
        "[B, DOWN",
        "[C, RIGHT",
        "[D, LEFT",
        "OA, UP",
        "OB, DOWN",
        "OC, RIGHT",
        "OD, LEFT",
        "[H, HOME",
        "OH, HOME",
        "[1~, HOME",
        "[7~, HOME",
        "[F, END",
        "OF, END",
        "[4~, END",
        "[8~, END",
        "[2~, INSERT",
        "[3~, DELETE",
        "[5~, PAGE_UP",
        "[6~, PAGE_DOWN",
        "[Z, BACK_TAB",
        "OM, ENTER",
        "OP, F1",
        "OQ, F2",
        "OR, F3",
        "OS, F4",
        "[P, F1",
        "[S, F4",
        "[11~, F1",
        "[12~, F2",
        "[13~, F3",
        "[14~, F4",
        "[[A, F1",
        "[[B, F2",
        "[[C, F3",
        "[[D, F4",
        "[[E, F5",
        "[15~, F5",
        "[17~, F6",
        "[18~, F7",
        "[19~, F8",
        "[20~, F9",
        "[21~, F10",
        "[23~, F11",
        "[24~, F12",
        "[1;2A, UP",
        "[3;2~, DELETE",
        "[1;2H, HOME"
    })
    void a_key_is_known_by_the_sequence_that_any_usual_terminal_sends(String sequence, Named named) {
        assertThat(inputs("\033" + sequence)).containsExactly(press(Key.of(named)));
    }

    @ParameterizedTest
    @CsvSource({"[1;5C, RIGHT", "[1;6D, LEFT", "[5;5~, PAGE_UP", "[15;5~, F5"})
    void a_key_held_with_control_says_so(String sequence, Named named) {
        assertThat(inputs("\033" + sequence)).containsExactly(press(new Key(named, 0, true)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[99~",
                "[25~",
                "[1;3A",
                "[E",
                "[I",
                "[O",
                "[?1;2c",
                "[>0;276;0c",
                "[24;80R",
                "[7$",
                "[3^",
                "[27;5;115~",
                "[115;5u",
                "[;5A",
                "[1;99999999999A",
                "[?2004;1$y",
                "[<0;10;10M",
                "Op",
                "O5P",
                "[[Z",
                "]11;rgb:ffff/ffff/ffff\007",
                "]10;rgb:0/0/0\033\\",
                "P>|xterm(379)\033\\",
                "P1$r0m\033\\"
            })
    void a_sequence_that_is_no_key_of_ours_is_no_letters_either(String sequence) {
        assertThat(inputs("\033" + sequence + "x")).containsExactly(letter('x'));
        assertThat(inputs("\033" + sequence + "\033[A")).containsExactly(press(Key.of(Named.UP)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "O", "[1", "[1;5"})
    void a_sequence_that_never_ends_keeps_nobody_waiting_for_long(String beginning) {
        assertThat(inputs(SlowLine.pieces(1_000, "\033" + beginning, "x"), StandardCharsets.UTF_8))
                .containsExactly(letter('x'));
    }

    @Test
    void keys_after_an_unknown_sequence_are_heard() {
        assertThat(inputs("a\033[99~b\033[?1;2cc")).containsExactly(letter('a'), letter('b'), letter('c'));
    }

    @Test
    void escape_is_a_key_of_its_own() {
        assertThat(inputs("\033")).containsExactly(press(Key.of(Named.ESCAPE)));
        assertThat(inputs("\033\033")).containsExactly(press(Key.of(Named.ESCAPE)), press(Key.of(Named.ESCAPE)));
    }

    @Test
    void escape_and_a_letter_typed_ahead_are_both_heard() {
        assertThat(inputs("\033q")).containsExactly(press(Key.of(Named.ESCAPE)), letter('q'));
        assertThat(inputs("\033P7")).doesNotContain(letter('P'));
        assertThat(inputs("\033Pj")).containsExactly(press(Key.of(Named.ESCAPE)), letter('P'), letter('j'));
        assertThat(inputs("\033\033[A")).containsExactly(press(Key.of(Named.ESCAPE)), press(Key.of(Named.UP)));
    }

    @Test
    void an_arrow_stays_whole_on_a_slow_line() {
        assertThat(inputs(SlowLine.pieces(GAP, "\033", "[", "A", "x"), StandardCharsets.UTF_8))
                .containsExactly(press(Key.of(Named.UP)), letter('x'));
        assertThat(inputs(SlowLine.pieces(GAP, "\033", "[", "2", "4", "~"), StandardCharsets.UTF_8))
                .containsExactly(press(Key.of(Named.F12)));
        assertThat(inputs(SlowLine.pieces(GAP, "\033", "O", "B"), StandardCharsets.UTF_8))
                .containsExactly(press(Key.of(Named.DOWN)));
    }

    @Test
    void escape_is_answered_after_forty_milliseconds_without_the_next_key() {
        int just = EscapeSequence.ESCAPE_MS;
        assertThat(inputs(SlowLine.pieces(just, "\033", "[A"), StandardCharsets.UTF_8))
                .containsExactly(press(Key.of(Named.UP)));
        KeyReader patient = new KeyReader(SlowLine.pieces(Integer.MAX_VALUE, "\033", "[A"), StandardCharsets.UTF_8);
        long start = System.nanoTime();
        assertThat(patient.next()).isEqualTo(press(Key.of(Named.ESCAPE)));
        assertThat(System.nanoTime() - start).as("ns").isGreaterThanOrEqualTo(40_000_000);
    }

    @Test
    void control_and_a_letter_is_a_key() {
        assertThat(inputs("\3\23\32\34\1"))
                .containsExactly(
                        press(Key.control('c')),
                        press(Key.control('s')),
                        press(Key.control('z')),
                        press(Key.control('\\')),
                        press(Key.control('a')));
        assertThat(inputs("\0")).containsExactly(press(Key.control(' ')));
    }

    @Test
    void enter_tab_and_backspace_are_known_in_each_form() {
        assertThat(inputs("\rx\n\t\b\177"))
                .containsExactly(
                        press(Key.of(Named.ENTER)),
                        letter('x'),
                        press(Key.of(Named.ENTER)),
                        press(Key.of(Named.TAB)),
                        press(Key.of(Named.BACKSPACE)),
                        press(Key.of(Named.BACKSPACE)));
        assertThat(inputs("\r\n")).as("one key of some terminals").containsExactly(press(Key.of(Named.ENTER)));
        assertThat(inputs("\r\r")).hasSize(2);
    }

    @Test
    void letters_beyond_ascii_are_read_in_the_terminals_character_set() {
        assertThat(inputs(line("é漢\uD83C\uDFB5", StandardCharsets.UTF_8), StandardCharsets.UTF_8))
                .containsExactly(letter('é'), letter('漢'), letter(0x1F3B5));
        assertThat(inputs(line("é", StandardCharsets.ISO_8859_1), StandardCharsets.ISO_8859_1))
                .containsExactly(letter('é'));
        assertThat(inputs(SlowLine.pieces(GAP, "\303", "\251"), StandardCharsets.UTF_8))
                .as("one letter in two pieces")
                .containsExactly(letter('é'));
    }

    @Test
    void bytes_that_are_no_characters_type_nothing() {
        assertThat(inputs("a\377\376b")).containsExactly(letter('a'), letter('b'));
        assertThat(inputs("a\302\205b")).as("a C1 control").containsExactly(letter('a'), letter('b'));
    }

    @Test
    void a_paste_comes_as_one_piece_and_none_of_it_is_a_key() {
        assertThat(inputs("a\033[200~q\r\nx\ry\033[A\3 z\033[201~b"))
                .containsExactly(letter('a'), new Event.Paste("q\nx\ny\033[A\3 z"), letter('b'));
    }

    @Test
    void a_paste_stays_whole_on_a_slow_line() {
        assertThat(inputs(
                        SlowLine.pieces(GAP, "\033[20", "0~Sal", "icional 8\033", "[201", "~"), StandardCharsets.UTF_8))
                .containsExactly(new Event.Paste("Salicional 8"));
        assertThat(inputs("\033[200~\033[201~")).containsExactly(new Event.Paste(""));
    }

    @Test
    void a_paste_that_never_ends_is_left_with_control_c() {
        assertThat(inputs(SlowLine.pieces(500, "\033[200~quint", "\3", "a"), StandardCharsets.UTF_8))
                .containsExactly(press(Key.control('c')), letter('a'));
    }

    @Test
    void a_paste_that_the_line_breaks_off_is_no_keys() {
        assertThat(inputs("a\033[200~quint")).containsExactly(letter('a'));
        assertThat(inputs(SlowLine.dropped("a\033[200~quint"), StandardCharsets.UTF_8))
                .containsExactly(letter('a'));
    }

    @Test
    void a_long_paste_is_read_in_linear_time() {
        String text = "Gedackt 8, Principal 4 ".repeat(10_000);
        assertThat(inputs("\033[200~" + text + "\033[201~")).containsExactly(new Event.Paste(text));
    }

    @Test
    void the_end_of_the_input_and_a_dropped_line_are_a_hangup_after_all_that_was_typed() {
        KeyReader ended = new KeyReader(SlowLine.of("a"), StandardCharsets.UTF_8);
        assertThat(List.of(ended.next(), ended.next(), ended.next()))
                .containsExactly(letter('a'), new Event.Hangup(), new Event.Hangup());
        KeyReader dropped = new KeyReader(SlowLine.dropped("b"), StandardCharsets.UTF_8);
        assertThat(List.of(dropped.next(), dropped.next())).containsExactly(letter('b'), new Event.Hangup());
    }

    @Test
    void no_bytes_whatever_bring_the_reader_down() {
        Random random = new Random(7);
        String likely = "\033\033\033[[[O]P;~0123456789ABmMzZ$?>\007\\\r\n";
        for (int i = 0; i < 300; i++) {
            StringBuilder bytes = new StringBuilder();
            for (int j = 0; j < 40; j++) {
                boolean any = random.nextInt(8) == 0;
                bytes.append(any ? (char) random.nextInt(256) : likely.charAt(random.nextInt(likely.length())));
            }
            // A paste that was begun is never ended here, and would take all that follows with it.
            String noise = bytes.toString().replace("200~", "");
            assertThat(inputs(noise + "\033\\\033[AQ")).as(noise).endsWith(press(Key.of(Named.UP)), letter('Q'));
        }
    }

    @Test
    void keys_do_not_depend_on_how_their_bytes_are_split() {
        Random random = new Random(12);
        String[] likely = {
            "\033",
            "\033[",
            "\033O",
            "\033[A",
            "\033[1;5C",
            "\033[[B",
            "\033[24~",
            "\033]11;",
            "\033P1",
            "\007",
            "\033\\",
            "x",
            "\r\n",
            "\r",
            "\n",
            "\303\251",
            "\360\237\216\265",
            "\033[200~",
            "\033[201~",
            ";",
            "7",
            "~",
            "$",
            "\0",
            "\b",
            "\377"
        };
        for (int i = 0; i < 300; i++) {
            StringBuilder bytes = new StringBuilder();
            for (int j = random.nextInt(20); j >= 0; j--) {
                boolean any = random.nextInt(5) == 0;
                bytes.append(any ? (char) random.nextInt(256) : likely[random.nextInt(likely.length)]);
            }
            // Open sequences are ended, since each would be waited for at the end of the input.
            bytes.append("\033\\\033[AQ");
            List<String> pieces = new ArrayList<>();
            for (int start = 0, end; start < bytes.length(); start = end) {
                end = start + 1 + random.nextInt(Math.min(4, bytes.length() - start));
                pieces.add(bytes.substring(start, end));
            }
            assertThat(inputs(SlowLine.pieces(1, pieces.toArray(String[]::new)), StandardCharsets.UTF_8))
                    .as("%s", pieces)
                    .isEqualTo(inputs(bytes.toString()));
        }
    }

    private static List<Event> inputs(String bytes) {
        return inputs(SlowLine.of(bytes), StandardCharsets.UTF_8);
    }

    private static List<Event> inputs(InputStream bytes, Charset charset) {
        KeyReader keys = new KeyReader(bytes, charset);
        return new ArrayList<>(Stream.generate(keys::next)
                .takeWhile(input -> !(input instanceof Event.Hangup))
                .toList());
    }

    private static SlowLine line(String text, Charset charset) {
        return SlowLine.of(new String(text.getBytes(charset), StandardCharsets.ISO_8859_1));
    }

    private static Event press(Key key) {
        return new Event.Press(key);
    }

    private static Event letter(int character) {
        return press(Key.of(character));
    }
}
