package versewind.screen.toolkit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextTest {

    @ParameterizedTest
    @ValueSource(
            ints = {
                0x00, 0x0A, 0x1B, 0x7F, 0x85, 0x9B, 0xAD, 0x200B, 0x200D, 0x200E, 0x200F, 0x2028, 0x2029, 0x202A,
                0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068, 0x2069, 0xD800, 0xDC00, 0xE000, 0xFEFF, 0xFFF9,
                0xFFFF, 0xE0001, 0x10FFFF
            })
    void a_character_that_would_do_something_or_show_nothing_becomes_a_question_mark(int point) {
        assertThat(Text.clean("a" + Character.toString(point) + "b")).isEqualTo("a?b");
    }

    @Test
    void a_tab_becomes_a_blank() {
        assertThat(Text.clean("two\ttabs\t")).isEqualTo("two tabs ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Tuba 8", "Flûte", "Prière", "Οὐρανός", "赞美", "שיר", "Köln – Dom"})
    void what_people_write_stays_as_it_is(String text) {
        assertThat(Text.clean(text)).isEqualTo(text);
    }

    @Test
    void what_a_terminal_cannot_show_has_a_plain_form() {
        StringBuilder plain = new StringBuilder();
        "Récit d’Été – Flöte 音 5⅓".codePoints().forEach(point -> plain.appendCodePoint(Text.plain(point)));
        assertThat(plain).hasToString("Recit d'Ete - Flote ? 5?");
    }

    @Test
    void an_accent_is_put_over_its_letter() {
        assertThat(Text.clean("Re\u0301cit")).isEqualTo("Récit");
    }

    @Test
    void every_text_made_harmless_is_harmless() {
        for (int point = 0; point <= Character.MAX_CODE_POINT; point += 17) {
            String clean = Text.clean(Character.toString(point));
            assertThat(Text.clean(clean)).isEqualTo(clean);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Great, 5",
        "Flûte, 5",
        "Flu\u0302te, 5",
        "q\u0303, 1",
        "赞美, 4",
        "한글, 4",
        "ｆ, 2",
        "\u26EA, 2",
        "\uD83C\uDFB9, 2",
        "\uD83D\uDE82, 2",
        "\u266A, 1",
        "\u2669, 1",
        "’, 1"
    })
    void a_text_takes_so_many_columns(String text, int columns) {
        assertThat(Text.columns(text)).isEqualTo(columns);
    }

    @Test
    void a_text_that_fits_is_not_cut() {
        assertThat(Text.fit("Bourdon", 7, "…")).isEqualTo("Bourdon");
    }

    @Test
    void a_text_too_long_ends_with_the_mark() {
        assertThat(Text.fit("Bourdon", 6, "…")).isEqualTo("Bourd…");
    }

    @Test
    void a_wide_character_is_not_cut_in_half() {
        assertThat(Text.fit("赞美诗", 4, "…")).isEqualTo("赞…");
    }

    @ParameterizedTest
    @CsvSource({"1, …", "0, ''", "-3, ''"})
    void where_there_is_hardly_room_there_is_the_mark_or_nothing(int columns, String fitting) {
        assertThat(Text.fit("Bourdon", columns, "…")).isEqualTo(fitting);
    }

    @Test
    void lines_are_broken_between_words() {
        assertThat(Text.wrapped("Open Diapason and Dulciana", 13)).containsExactly("Open Diapason", "and Dulciana");
    }

    @Test
    void a_word_longer_than_a_line_is_broken() {
        assertThat(Text.wrapped("see /home/organist/plans", 10)).containsExactly("see", "/home/orga", "nist/plans");
    }

    @Test
    void lines_that_are_broken_stay_so() {
        assertThat(Text.wrapped("first\nsecond\r\n\nfourth", 20)).containsExactly("first", "second", "", "fourth");
    }

    @Test
    void nothing_is_one_empty_line() {
        assertThat(Text.wrapped("", 20)).containsExactly("");
    }

    @Test
    void a_line_that_fits_stays_one() {
        assertThat(Text.wrapped("Nothing to save.", 21)).containsExactly("Nothing to save.");
    }

    @Test
    void lines_of_wide_characters_are_counted_in_columns() {
        assertThat(Text.wrapped("赞美诗", 4)).containsExactly("赞美", "诗");
    }

    @Test
    void a_character_wider_than_the_line_is_left_out() {
        assertThat(Text.wrapped("赞美诗", 1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "In the bleak midwinter, 16, In the bleak…",
        "'O come, all ye faithful', 8, O come…",
        "In the bleak midwinter, 22, In the bleak midwinter",
        "Silence, 5, Sile…"
    })
    void a_title_is_cut_after_a_word(String title, int columns, String fitting) {
        assertThat(Text.fitWords(title, columns, "…")).isEqualTo(fitting);
    }
}
