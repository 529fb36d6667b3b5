package versewind.terminal;

import static versewind.terminal.TextAttributes.BOLD;
import static versewind.terminal.TextAttributes.DIM;
import static versewind.terminal.TextAttributes.OWN;
import static versewind.terminal.TextAttributes.REVERSE;
import static versewind.terminal.TextAttributes.UNDERLINE;

import versewind.screen.toolkit.Style;

/**
 * The attributes and colours of each style.
 *
 * <p>Text has the terminal's own colours, so that it can be read on white as well as on black. A colour says how the
 * organ stands to the singers and nothing else: green, magenta, white on red. None of the eight colours is legible on
 * both grounds, so that green and magenta are of the 256. What is drawn is bold.
 */
enum Palette {
    /** Colours of which every pair has a contrast of at least 4.5 to 1, on white and on black. */
    COLOUR {
        @Override
        TextAttributes look(Style style) {
            return switch (style) {
                case TEXT, BAR -> TextAttributes.PLAIN;
                case FAINT -> new TextAttributes(DIM);
                case STRONG, HEADING, DRAWN, EDGE, KEY, MESSAGE -> new TextAttributes(BOLD);
                case CURSOR -> new TextAttributes(REVERSE);
                case RESTING_CURSOR -> new TextAttributes(UNDERLINE);
                case GOOD -> new TextAttributes(0, GREEN, OWN);
                case NEAR -> new TextAttributes(0, MAGENTA, OWN);
                case BAD -> new TextAttributes(BOLD, WHITE, RED);
                case FIELD -> new TextAttributes(0, BLACK, WHITE);
            };
        }
    },

    /** Bold, underline and reverse only. */
    MONOCHROME {
        @Override
        TextAttributes look(Style style) {
            return switch (style) {
                case TEXT, FAINT, GOOD, BAR -> TextAttributes.PLAIN;
                case STRONG, DRAWN, NEAR, EDGE, KEY, MESSAGE -> new TextAttributes(BOLD);
                case HEADING -> new TextAttributes(BOLD | UNDERLINE);
                case CURSOR -> new TextAttributes(REVERSE);
                case RESTING_CURSOR, FIELD -> new TextAttributes(UNDERLINE);
                case BAD -> new TextAttributes(BOLD | REVERSE);
            };
        }
    };

    private static final int BLACK = 0;
    private static final int RED = 1;
    /** Green 3 of 6 and blue 2: of the greens of the cube the one that is legible on both grounds. */
    static final int GREEN = 29;
    /** Red 5 of 6 and blue 4, likewise. */
    static final int MAGENTA = 163;

    private static final int WHITE = 7;

    abstract TextAttributes look(Style style);
}
