package versewind.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.googlecode.lanterna.TextColor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.screen.toolkit.Style;

class PaletteTest {

    private static final int BLACK = 0;
    private static final int MAGENTA = 5;
    private static final int WHITE = 7;

    /**
     * XTerm's published defaults (XTerm-col.ad, XTerm 379): red3, gray90 and the rest, then the bright ones, which it
     * also takes for bold ones of the first eight.
     */
    private static final int[] XTERM = {
        0x000000, 0xCD0000, 0x00CD00, 0xCDCD00, 0x0000EE, 0xCD00CD, 0x00CDCD, 0xE5E5E5,
        0x7F7F7F, 0xFF0000, 0x00FF00, 0xFFFF00, 0x5C5CFF, 0xFF00FF, 0x00FFFF, 0xFFFFFF
    };

    /** The terminal's own colours are black on white or white on black; dim ones are two thirds as XTerm has them. */
    @ParameterizedTest
    @EnumSource(Style.class)
    void in_a_terminal_every_text_has_a_contrast_of_four_and_a_half_to_one_on_white_and_on_black(Style style) {
        for (Palette palette : Palette.values()) {
            TextAttributes look = palette.look(style);
            for (int ground : new int[] {0x000000, 0xFFFFFF}) {
                int own = 0xFFFFFF - ground;
                int text = look.foreground() == TextAttributes.OWN ? own : xterm(look.foreground());
                int behind = look.background() == TextAttributes.OWN ? ground : xterm(look.background());
                if ((look.attributes() & TextAttributes.DIM) != 0) {
                    text = text / 0xFF * 0xAA;
                }
                assertThat(contrast(rgb(text), rgb(behind)))
                        .as(palette + " on " + ground)
                        .isGreaterThanOrEqualTo(4.5);
                if ((look.attributes() & TextAttributes.BOLD) != 0 && look.foreground() >= 0 && look.foreground() < 8) {
                    assertThat(contrast(rgb(xterm(look.foreground() + 8)), rgb(behind)))
                            .isGreaterThanOrEqualTo(4.5);
                }
            }
        }
    }

    @Test
    void the_measure_knows_colours_that_are_lost_on_one_ground() {
        assertThat(contrast(rgb(xterm(10)), rgb(0xFFFFFF)))
                .as("bold green on white")
                .isLessThan(1.5);
        assertThat(contrast(rgb(xterm(MAGENTA)), rgb(0))).as("magenta on black").isLessThan(4.5);
        assertThat(contrast(rgb(0xFFFFFF), rgb(0))).isEqualTo(21);
    }

    /** A colour of XTerm; from 16 on the cube of 6 by 6 by 6 (256colres.pl). */
    private static int xterm(int index) {
        if (index < XTERM.length) {
            return XTERM[index];
        }
        int cube = index - XTERM.length;
        return step(cube / 36) << 16 | step(cube / 6 % 6) << 8 | step(cube % 6);
    }

    private static int step(int sixth) {
        return sixth == 0 ? 0 : 55 + 40 * sixth;
    }

    private static TextColor.RGB rgb(int colour) {
        return new TextColor.RGB(colour >> 16, colour >> 8 & 0xFF, colour & 0xFF);
    }

    private static double contrast(TextColor.RGB text, TextColor.RGB ground) {
        double one = luminance(text);
        double other = luminance(ground);
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    /** Contrast: Web Content Accessibility Guidelines 2.2, definitions of contrast ratio and relative luminance. */
    @ParameterizedTest
    @EnumSource(Style.class)
    void in_a_window_every_text_has_a_contrast_of_four_and_a_half_to_one(Style style) {
        TextAttributes look = Palette.COLOUR.look(style);
        assertThat(contrast(ScreenPainter.foreground(look), ScreenPainter.background(look)))
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
