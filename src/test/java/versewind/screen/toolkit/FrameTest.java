package versewind.screen.toolkit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrameTest {

    private final Frame frame = new Frame(8, 2);

    @Test
    void what_would_stand_outside_is_cut_off() {
        frame.write(5, 0, "Great", Style.TEXT);
        assertThat(frame.row(0)).isEqualTo("     Gre");
    }

    @Test
    void what_would_stand_before_the_first_column_is_cut_off() {
        frame.write(-2, 0, "Great", Style.TEXT);
        assertThat(frame.row(0)).isEqualTo("eat");
    }

    @ParameterizedTest
    @CsvSource({"-1", "2"})
    void what_would_stand_above_or_below_is_not_drawn(int row) {
        frame.write(0, row, "Great", Style.TEXT);
        assertThat(frame.row(0) + frame.row(1)).isEmpty();
    }

    @Test
    void text_does_not_reach_the_limit() {
        frame.write(1, 0, "Great", Style.TEXT, 4);
        assertThat(frame.row(0)).isEqualTo(" Gre");
    }

    @Test
    void writing_gives_the_column_after_it() {
        assertThat(frame.write(1, 0, "赞a", Style.TEXT)).isEqualTo(4);
    }

    @Test
    void a_wide_character_that_has_room_for_half_of_it_is_left_out() {
        frame.write(5, 0, "赞美", Style.TEXT);
        assertThat(frame.row(0)).isEqualTo("     赞");
    }

    @Test
    void a_wide_character_fills_two_cells() {
        frame.write(0, 0, "赞", Style.TEXT);
        assertThat(frame.character(1, 0)).isEqualTo(Frame.SECOND_HALF);
    }

    @Test
    void writing_over_the_second_half_of_a_wide_character_blanks_the_first() {
        frame.write(0, 0, "赞美", Style.TEXT);
        frame.write(1, 0, "x", Style.TEXT);
        assertThat(frame.row(0)).isEqualTo(" x美");
    }

    @Test
    void writing_over_the_first_half_of_a_wide_character_blanks_the_second() {
        frame.write(0, 0, "赞美", Style.TEXT);
        frame.write(0, 0, "x", Style.TEXT);
        assertThat(frame.row(0)).isEqualTo("x 美");
    }

    @Test
    void a_wide_character_across_two_others_blanks_what_is_left_of_them() {
        frame.write(0, 0, "赞美", Style.TEXT);
        frame.write(1, 0, "诗", Style.TEXT);
        assertThat(frame.row(0)).isEqualTo(" 诗");
    }

    @Test
    void clearing_a_rectangle_blanks_the_wide_characters_that_it_cuts() {
        frame.write(0, 0, "赞美诗歌", Style.TEXT);
        frame.clear(1, 0, 4, 1);
        assertThat(frame.row(0)).isEqualTo("      歌");
    }

    @Test
    void control_characters_are_made_harmless_as_they_are_written() {
        frame.write(0, 0, "a\u001B[2J", Style.TEXT);
        assertThat(frame.row(0)).isEqualTo("a?[2J");
    }

    @Test
    void an_accent_takes_no_cell() {
        frame.write(0, 0, "q\u0303a", Style.TEXT);
        assertThat(frame.row(0)).isEqualTo("qa");
    }

    @ParameterizedTest
    @CsvSource({"8, 0", "0, 2", "-1, 0"})
    void a_caret_outside_is_not_shown(int x, int y) {
        frame.caret(x, y);
        assertThat(frame.caretX()).isEqualTo(-1);
    }

    @Test
    void a_run_of_cells_gets_another_style_and_keeps_its_characters() {
        frame.write(0, 0, "Great", Style.TEXT);
        frame.paint(1, 0, 2, Style.CURSOR);
        assertThat(frame.row(0) + frame.styleRow(0)).isEqualTo("Great.CC.....");
    }

    @Test
    void a_frame_of_nothing_can_be_drawn_on() {
        Frame nothing = new Frame(0, 0);
        assertThat(nothing.write(0, 0, "Great", Style.TEXT)).isZero();
    }
}
