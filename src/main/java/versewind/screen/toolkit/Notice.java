package versewind.screen.toolkit;

import java.util.List;

/**
 * What the program last said.
 *
 * @param text a sentence; blank for nothing
 * @param style how it is shown
 */
public record Notice(String text, Style style) {

    public static final Notice NONE = new Notice("", Style.MESSAGE);

    /** Something that went well or that is good to know. */
    public static Notice says(String text) {
        return new Notice(text, Style.MESSAGE);
    }

    /** Something that did not work. */
    public static Notice warns(String text) {
        return new Notice(text, Style.BAD);
    }

    /** Draws it upward from the last row; it may cover what stands there. */
    public void paint(Frame frame) {
        List<String> lines = Text.wrapped(text, frame.width() - 2);
        int top = Math.max(0, frame.height() - lines.size());
        frame.clear(0, top, frame.width(), frame.height() - top);
        for (int i = 0; i < lines.size(); i++) {
            frame.write(1, top + i, lines.get(i), style);
        }
    }

    /** Draws it in a row of its own, as far as it fits; in words it is drawn in full over all else. */
    public void paint(Frame frame, int y) {
        if (frame.marks() == Marks.WORDS) {
            return;
        }
        frame.write(1, y, frame.fit(text, frame.width() - 2), style);
    }
}
