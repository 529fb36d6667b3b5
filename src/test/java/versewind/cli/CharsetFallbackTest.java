package versewind.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class CharsetFallbackTest {

    private static final CharsetFallback ASCII = new CharsetFallback(StandardCharsets.US_ASCII);
    private static final CharsetFallback LATIN = new CharsetFallback(StandardCharsets.ISO_8859_1);
    private static final CharsetFallback ALL = new CharsetFallback(StandardCharsets.UTF_8);

    @Test
    void a_terminal_that_has_all_letters_shows_them() {
        assertThat(ALL.of("Grand Ch\u0153ur \u2014 \u8b9a\u7f8e")).isEqualTo("Grand Ch\u0153ur \u2014 \u8b9a\u7f8e");
    }

    @Test
    void accents_are_left_out_where_there_are_none() {
        assertThat(ASCII.of("R\u00e9cit, Fl\u00f6te")).isEqualTo("Recit, Flote");
        assertThat(ASCII.of("Re\u0301cit")).isEqualTo("Recit");
    }

    @Test
    void accents_that_there_are_stay() {
        assertThat(LATIN.of("R\u00e9cit \u2014 Dvo\u0159\u00e1k")).isEqualTo("R\u00e9cit - Dvor\u00e1k");
    }

    @Test
    void quotation_marks_and_dashes_become_those_of_a_typewriter() {
        assertThat(ASCII.of("\u201cO Lord\u2019s day\u201d \u2013 1\u2026")).isEqualTo("\"O Lord's day\" - 1...");
    }

    @Test
    void what_cannot_be_written_at_all_is_marked() {
        assertThat(ASCII.of("\u8b9a\u7f8e 1")).isEqualTo("?? 1");
    }

    @Test
    void nothing_that_moves_the_cursor_gets_through() {
        assertThat(ALL.of("a\033[2Jb\rc\u202ed\u0085e")).isEqualTo("a?[2Jb?c?d?e");
    }

    @Test
    void lines_stay_lines() {
        assertThat(ASCII.ofLines("\u00e9\n\nb\n")).isEqualTo("e\n\nb\n");
        assertThat(ASCII.ofLines("")).isEmpty();
    }
}
