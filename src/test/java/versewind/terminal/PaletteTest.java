package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TextColor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.screen.toolkit.Style;

class PaletteTest {

    private static final int BLACK = 0;
    private static final int RED = 1;
    private static final int GREEN = 2;
    private static final int MAGENTA = 5;
    private static final int WHITE = 7;

    @ParameterizedTest
    @EnumSource(Style.class)
    void text_can_be_read_on_paper_white_and_on_black(Style style) {
        TextAttributes look = Palette.COLOUR.look(style);
        if (look.background() == TextAttributes.OWN) {
            // Blue is lost on black, cyan, white and yellow on white; green holds if it is bold.
            assertThat(look.foreground()).isIn(TextAttributes.OWN, RED, GREEN, MAGENTA);
            assertThat(look.foreground() == GREEN && (look.attributes() & TextAttributes.BOLD) == 0)
                    .isFalse();
        } else {
            assertThat(look.foreground())
                    .as("on a ground of its own a text has a colour of its own")
                    .isIn(BLACK, WHITE);
            assertThat(look.background() == RED).isEqualTo(look.foreground() == WHITE);
        }
    }

    /** Contrast: Web Content Accessibility Guidelines 2.2, definitions of contrast ratio and relative luminance. */
    @ParameterizedTest
    @EnumSource(Style.class)
    void in_a_window_every_text_has_a_contrast_of_four_and_a_half_to_one(Style style) {
        TextAttributes look = Palette.COLOUR.look(style);
        double text = luminance(ScreenPainter.foreground(look));
        double ground = luminance(ScreenPainter.background(look));
        assertThat((Math.max(text, ground) + 0.05) / (Math.min(text, ground) + 0.05))
                .isGreaterThanOrEqualTo(4.5);
    }

    private static double luminance(TextColor.RGB colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int eightBits) {
        double value = eightBits / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }

    @ParameterizedTest
    @EnumSource(Style.class)
    void without_colours_there_is_bold_underline_and_reverse_and_nothing_else(Style style) {
        TextAttributes look = Palette.MONOCHROME.look(style);
        assertThat(look.foreground()).isEqualTo(TextAttributes.OWN);
        assertThat(look.background()).isEqualTo(TextAttributes.OWN);
        assertThat(look.attributes() & ~(TextAttributes.BOLD | TextAttributes.UNDERLINE | TextAttributes.REVERSE))
                .isZero();
    }

    @ParameterizedTest
    @EnumSource(Palette.class)
    void the_cursor_is_reversed_the_resting_one_underlined_and_text_is_the_terminals_own(Palette palette) {
        assertThat(palette.look(Style.CURSOR)).isEqualTo(new TextAttributes(TextAttributes.REVERSE));
        assertThat(palette.look(Style.RESTING_CURSOR)).isEqualTo(new TextAttributes(TextAttributes.UNDERLINE));
        assertThat(palette.look(Style.TEXT)).isEqualTo(TextAttributes.PLAIN);
    }

    @Test
    void a_change_of_look_adds_what_is_new_and_resets_only_to_take_away() {
        assertThat(TextAttributes.change(TextAttributes.PLAIN, new TextAttributes(TextAttributes.REVERSE)))
                .isEqualTo("\033[7m");
        assertThat(TextAttributes.change(new TextAttributes(TextAttributes.BOLD), TextAttributes.PLAIN))
                .isEqualTo("\033[m");
        assertThat(TextAttributes.change(
                        new TextAttributes(TextAttributes.BOLD),
                        new TextAttributes(TextAttributes.BOLD, MAGENTA, TextAttributes.OWN)))
                .isEqualTo("\033[35m");
        assertThat(TextAttributes.change(new TextAttributes(TextAttributes.BOLD), new TextAttributes(0, BLACK, WHITE)))
                .isEqualTo("\033[0;30;47m");
        assertThat(TextAttributes.change(
                        new TextAttributes(TextAttributes.BOLD), new TextAttributes(TextAttributes.BOLD)))
                .isEmpty();
    }
}
