package versewind.screen.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;

class BigLettersTest {

    private static final BigLetters.Dot SMALL = new BigLetters.Dot(1, 1);
    private static final BigLetters.Dot WIDE = new BigLetters.Dot(2, 1);

    private static List<String> painted(String text, BigLetters.Dot dot, Marks marks) {
        BigLetters letters = BigLetters.of(text).orElseThrow();
        Frame frame = new Frame(letters.columns(dot), BigLetters.DOTS_HIGH * dot.rows());
        letters.paint(frame, 0, 0, dot, marks, Style.STRONG);
        return IntStream.range(0, frame.height()).mapToObj(frame::row).toList();
    }

    @Test
    void a_letter_is_made_of_cells() {
        assertThat(painted("V1", SMALL, Marks.ASCII))
                .containsExactly("#   #  #", "#   # ##", "#   #  #", " # #   #", "  #   ###");
    }

    @Test
    void a_dot_can_be_wider_and_higher() {
        assertThat(painted("T", new BigLetters.Dot(2, 2), Marks.UNICODE).subList(0, 4))
                .containsExactly("█".repeat(10), "█".repeat(10), "    ██", "    ██");
    }

    @Test
    void every_letter_and_digit_has_a_form_of_its_own() {
        String all = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789";
        assertThat(all.chars()
                        .mapToObj(letter -> painted(Character.toString(letter), SMALL, Marks.ASCII))
                        .distinct())
                .hasSize(all.length());
    }

    @Test
    void small_letters_and_accents_are_written_as_capitals() {
        assertThat(painted("refr\u00e6in \u00e9\u00df", SMALL, Marks.ASCII))
                .isEqualTo(painted("REFRAEIN ESS", SMALL, Marks.ASCII));
    }

    @Test
    void what_has_no_form_is_not_shown_in_part() {
        assertThat(BigLetters.of("V\u8b9a")).isEmpty();
        assertThat(BigLetters.of(" ")).isEmpty();
    }

    @Test
    void the_largest_size_that_fits_is_taken() {
        BigLetters letters = BigLetters.of("208 V1").orElseThrow();
        assertThat(letters.fitting(List.of(WIDE, SMALL), letters.columns(WIDE))).contains(WIDE);
        assertThat(letters.fitting(List.of(WIDE, SMALL), letters.columns(WIDE) - 1))
                .contains(SMALL);
        assertThat(letters.fitting(List.of(WIDE, SMALL), 10)).isEmpty();
    }
}
