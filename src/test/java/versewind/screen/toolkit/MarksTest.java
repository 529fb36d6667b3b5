package versewind.screen.toolkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MarksTest {

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"BEAT", "PLUS_MINUS"})
    void a_mark_takes_one_column(Mark mark) {
        assertThat(Text.columns(mark.in(Marks.UNICODE))).isEqualTo(1);
        assertThat(Text.columns(mark.in(Marks.ASCII))).isEqualTo(1);
    }

    @ParameterizedTest
    @EnumSource
    void the_plain_marks_are_ascii(Mark mark) {
        assertThat(mark.in(Marks.ASCII)).matches("[ -~]*");
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "WORDS")
    void what_is_drawn_can_be_told_from_what_is_in_without_colour(Marks marks) {
        assertThat(Mark.DRAWN.in(marks)).isNotEqualTo(Mark.IN.in(marks));
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "WORDS")
    void the_marks_of_verdicts_differ(Marks marks) {
        assertThat(EnumSet.range(Mark.WEAK, Mark.PERHAPS_STRONG).stream().map(mark -> mark.in(marks)))
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource({"0, ' '", "0.05, ' '", "0.07, ▏", "0.5, ▌", "0.94, █", "1, █", "-3, ' '", "17, █"})
    void a_cell_of_a_bar_is_filled_to_the_nearest_eighth(double share, String cell) {
        assertThat(Marks.UNICODE.bar(share)).isEqualTo(cell);
    }

    @ParameterizedTest
    @CsvSource({"0.4, ' '", "0.6, #"})
    void a_cell_of_a_plain_bar_is_full_or_empty(double share, String cell) {
        assertThat(Marks.ASCII.bar(share)).isEqualTo(cell);
    }
}
