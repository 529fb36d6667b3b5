package versewind.terminal;

import static versewind.terminal.Look.BOLD;
import static versewind.terminal.Look.DIM;
import static versewind.terminal.Look.OWN;
import static versewind.terminal.Look.REVERSE;
import static versewind.terminal.Look.UNDERLINE;

import versewind.screen.Style;

/**
 * What each style looks like.
 *
 * <p>Text stands in the terminal's own colours, so that it can be read on paper white as well as on black. Of the eight
 * colours only magenta and a bold green stand on that unknown ground; the pale ones, cyan and yellow, are grounds
 * themselves with black upon them: a drawn stop is a lit knob.
 */
enum Palette {
    /** The eight ANSI colours. */
    COLOUR {
        @Override
        Look look(Style style) {
            return switch (style) {
                case TEXT -> Look.PLAIN;
                case FAINT -> new Look(DIM);
                case STRONG, SINGERS, KEY, MESSAGE -> new Look(BOLD);
                case HEADING -> new Look(BOLD, MAGENTA, OWN);
                case DRAWN -> new Look(0, BLACK, CYAN);
                case CURSOR -> new Look(REVERSE);
                case RESTING_CURSOR -> new Look(UNDERLINE);
                case GOOD -> new Look(BOLD, GREEN, OWN);
                case NEAR -> new Look(0, BLACK, YELLOW);
                case BAD -> new Look(BOLD, WHITE, RED);
                case BAR -> new Look(0, MAGENTA, OWN);
                case FIELD -> new Look(0, BLACK, WHITE);
            };
        }
    },

    /** Bold, underline and reverse only. */
    MONOCHROME {
        @Override
        Look look(Style style) {
            return switch (style) {
                case TEXT, FAINT, GOOD, BAR -> Look.PLAIN;
                case STRONG, DRAWN, NEAR, SINGERS, KEY, MESSAGE -> new Look(BOLD);
                case HEADING -> new Look(BOLD | UNDERLINE);
                case CURSOR -> new Look(REVERSE);
                case RESTING_CURSOR, FIELD -> new Look(UNDERLINE);
                case BAD -> new Look(BOLD | REVERSE);
            };
        }
    };

    private static final int BLACK = 0;
    private static final int RED = 1;
    private static final int GREEN = 2;
    private static final int YELLOW = 3;
    private static final int MAGENTA = 5;
    private static final int CYAN = 6;
    private static final int WHITE = 7;

    abstract Look look(Style style);
}
