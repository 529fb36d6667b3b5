package versewind.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MarksTest {

    private static List<String> ofOneColumn(Marks marks) {
        return List.of(
                marks.drawn(),
                marks.in(),
                marks.here(),
                marks.cut(),
                marks.rule(),
                marks.wall(),
                marks.weak(),
                marks.nearlyWeak(),
                marks.nearlyStrong(),
                marks.right(),
                marks.strong(),
                marks.unsaved(),
                marks.moreLeft(),
                marks.moreRight(),
                marks.plus(),
                marks.minus(),
                marks.singers(),
                marks.bar(0.5));
    }

    @ParameterizedTest
    @EnumSource
    void a_mark_takes_one_column(Marks marks) {
        assertThat(ofOneColumn(marks))
                .allSatisfy(mark -> assertThat(Text.columns(mark)).isEqualTo(1));
    }

    @Test
    void the_plain_marks_are_ascii() {
        assertThat(String.join("", ofOneColumn(Marks.ASCII)) + Marks.ASCII.beat())
                .matches("[ -~]*");
    }

    @ParameterizedTest
    @EnumSource
    void what_is_drawn_can_be_told_from_what_is_in_without_colour(Marks marks) {
        assertThat(marks.drawn()).isNotEqualTo(marks.in());
    }

    @ParameterizedTest
    @EnumSource
    void the_marks_of_verdicts_differ(Marks marks) {
        assertThat(List.of(marks.weak(), marks.nearlyWeak(), marks.right(), marks.nearlyStrong(), marks.strong()))
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
