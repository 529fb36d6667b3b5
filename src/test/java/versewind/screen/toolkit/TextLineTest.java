package versewind.screen.toolkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.screen.toolkit.Key.Named;

class TextLineTest {

    private static final String KEYS = "\uD83C\uDFB9";

    /** A line with its caret where a bar stands. */
    private static TextLine line(String marked) {
        return new TextLine(marked.replace("|", ""), marked.indexOf('|'), false);
    }

    private static String marked(TextLine line) {
        return line.text().substring(0, line.caret()) + "|" + line.text().substring(line.caret());
    }

    @ParameterizedTest
    @CsvSource({
        "ab|, LEFT, a|b",
        "|ab, LEFT, |ab",
        "|ab, RIGHT, a|b",
        "ab|, RIGHT, ab|",
        "ab|, HOME, |ab",
        "|ab, END, ab|",
        "ab|c, BACKSPACE, a|c",
        "|ab, BACKSPACE, |ab",
        "a|bc, DELETE, a|c",
        "ab|, DELETE, ab|"
    })
    void a_key_edits_the_line(String before, Named key, String after) {
        assertThat(marked(line(before).after(Key.of(key)))).isEqualTo(after);
    }

    @ParameterizedTest
    @CsvSource({
        "a" + KEYS + "|, LEFT, a|" + KEYS,
        "|" + KEYS + "a, RIGHT, " + KEYS + "|a",
        "a" + KEYS + "|b, BACKSPACE, a|b",
        "a|" + KEYS + "b, DELETE, a|b"
    })
    void a_pictograph_is_one_character(String before, Named key, String after) {
        assertThat(marked(line(before).after(Key.of(key)))).isEqualTo(after);
    }

    @ParameterizedTest
    @EnumSource(
            value = Named.class,
            names = {"UP", "DOWN", "PAGE_UP", "PAGE_DOWN", "ENTER", "ESCAPE", "TAB", "BACK_TAB", "INSERT", "F1", "F12"})
    void other_keys_change_nothing(Named key) {
        assertThat(marked(line("a|b").after(Key.of(key)))).isEqualTo("a|b");
    }

    @Test
    void a_character_is_typed_at_the_caret() {
        assertThat(marked(line("a|b").after(Key.of('x')))).isEqualTo("ax|b");
    }

    @Test
    void control_u_takes_away_what_stands_before_the_caret() {
        assertThat(marked(line("abc|de").after(Key.control('u')))).isEqualTo("|de");
    }

    @Test
    void other_characters_held_with_control_are_not_typed() {
        assertThat(marked(line("a|b").after(Key.control('w')))).isEqualTo("a|b");
    }

    static Stream<Arguments> pastes() {
        return Stream.of(
                arguments("one\ntwo", "one two"),
                arguments("one\r\ntwo", "one two"),
                arguments("one\ttwo", "one two"),
                arguments("one\u2028two", "one two"),
                arguments("one\n", "one"),
                arguments("\r\none", "one"),
                arguments("one\u001B[31mtwo", "one[31mtwo"),
                arguments("nul\u0000l", "null"),
                arguments("a\u009Bb", "ab"));
    }

    @ParameterizedTest
    @MethodSource("pastes")
    void pasted_text_becomes_one_harmless_line(String pasted, String text) {
        assertThat(TextLine.EMPTY.typed(pasted).text()).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n\r\n", "\u0007"})
    void pasted_line_breaks_alone_are_nothing(String pasted) {
        assertThat(line("a|b").typed(pasted)).isEqualTo(line("a|b"));
    }

    @Test
    void a_blank_is_typed() {
        assertThat(TextLine.of("a").after(Key.of(' ')).text()).isEqualTo("a ");
    }

    @Test
    void a_text_as_long_as_can_be_is_taken() {
        String longest = "x".repeat(TextLine.LONGEST);
        assertThat(TextLine.EMPTY.typed(longest).text()).isEqualTo(longest);
    }

    @Test
    void a_text_longer_than_can_be_is_not_taken_in_part() {
        assertThat(TextLine.of("a").typed("x".repeat(TextLine.LONGEST))).isEqualTo(TextLine.of("a"));
    }

    @Test
    void what_is_typed_takes_the_place_of_what_is_marked() {
        assertThat(TextLine.marked("29 Nov").typed("6")).isEqualTo(TextLine.of("6"));
        assertThat(TextLine.marked("29 Nov").after(Key.of(Key.Named.BACKSPACE))).isEqualTo(TextLine.EMPTY);
        assertThat(TextLine.marked("x".repeat(TextLine.LONGEST)).hasRoomFor("y"))
                .isTrue();
    }

    @Test
    void an_arrow_key_goes_into_what_is_marked() {
        assertThat(TextLine.marked("29 Nov").after(Key.of(Key.Named.END)).typed("!"))
                .isEqualTo(TextLine.of("29 Nov!"));
    }
}
