package versewind.screen;

import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Style;

/** Lets tests of other packages draw on a frame. */
public final class Drawing {

    private Drawing() {}

    public static void write(Frame frame, int x, int y, String text, Style style) {
        frame.write(x, y, text, style);
    }

    public static void paint(Frame frame, int x, int y, int columns, Style style) {
        frame.paint(x, y, columns, style);
    }

    public static void caret(Frame frame, int x, int y) {
        frame.caret(x, y);
    }
}
