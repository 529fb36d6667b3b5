package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.screen.Style;

class PaletteTest {

    private static final int BLACK = 0;
    private static final int RED = 1;
    private static final int GREEN = 2;
    private static final int MAGENTA = 5;
    private static final int WHITE = 7;

    @ParameterizedTest
    @EnumSource(Style.class)
    void text_can_be_read_on_paper_white_and_on_black(Style style) {
        Look look = Palette.COLOUR.look(style);
        if (look.background() == Look.OWN) {
            // Blue is lost on black, cyan, white and yellow on white; green holds if it is bold.
            assertThat(look.foreground()).isIn(Look.OWN, RED, GREEN, MAGENTA);
            assertThat(look.foreground() == GREEN && (look.attributes() & Look.BOLD) == 0)
                    .isFalse();
        } else {
            assertThat(look.foreground())
                    .as("on a ground of its own a text has a colour of its own")
                    .isIn(BLACK, WHITE);
            assertThat(look.background() == RED).isEqualTo(look.foreground() == WHITE);
        }
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void without_colours_there_is_bold_underline_and_reverse_and_nothing_else(Style style) {
        Look look = Palette.MONOCHROME.look(style);
        assertThat(look.foreground()).isEqualTo(Look.OWN);
        assertThat(look.background()).isEqualTo(Look.OWN);
        assertThat(look.attributes() & ~(Look.BOLD | Look.UNDERLINE | Look.REVERSE))
                .isZero();
    }

    @ParameterizedTest
    @EnumSource(Palette.class)
    void the_cursor_is_reversed_the_resting_one_underlined_and_text_is_the_terminals_own(Palette palette) {
        assertThat(palette.look(Style.CURSOR)).isEqualTo(new Look(Look.REVERSE));
        assertThat(palette.look(Style.RESTING_CURSOR)).isEqualTo(new Look(Look.UNDERLINE));
        assertThat(palette.look(Style.TEXT)).isEqualTo(Look.PLAIN);
    }

    @Test
    void a_change_of_look_adds_what_is_new_and_resets_only_to_take_away() {
        assertThat(Look.change(Look.PLAIN, new Look(Look.REVERSE))).isEqualTo("\033[7m");
        assertThat(Look.change(new Look(Look.BOLD), Look.PLAIN)).isEqualTo("\033[m");
        assertThat(Look.change(new Look(Look.BOLD), new Look(Look.BOLD, MAGENTA, Look.OWN)))
                .isEqualTo("\033[35m");
        assertThat(Look.change(new Look(Look.BOLD), new Look(0, BLACK, WHITE))).isEqualTo("\033[0;30;47m");
        assertThat(Look.change(new Look(Look.BOLD), new Look(Look.BOLD))).isEmpty();
    }
}
