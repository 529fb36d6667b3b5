package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.screen.state.Event;

class TtyTest {

    @Test
    void the_size_is_rows_and_columns() {
        assertThat(Tty.size("24 80\n")).contains(new Event.Resize(80, 24));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0 0", "24", "24 x", "stty: not a terminal", "24 80 1", "99999 80", "-1 80"})
    void a_line_that_knows_no_size_has_none(String answer) {
        assertThat(Tty.size(answer)).isEmpty();
    }

    @Test
    void the_character_set_is_the_named_one_and_an_unknown_one_is_ascii() {
        assertThat(Console.charset("UTF-8")).isEqualTo(StandardCharsets.UTF_8);
        assertThat(Console.charset("ANSI_X3.4-1968")).isEqualTo(StandardCharsets.US_ASCII);
        assertThat(Console.charset("ISO-8859-1")).isEqualTo(StandardCharsets.ISO_8859_1);
        assertThat(Console.charset("")).isEqualTo(StandardCharsets.US_ASCII);
        assertThat(Console.charset("no-such-set")).isEqualTo(StandardCharsets.US_ASCII);
    }
}
