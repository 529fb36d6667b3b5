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
        upward(frame, frame.height() - 1);
    }

    /** Draws it upward from a row of its own; it may cover what stands there. In words it is drawn over all else. */
    public void paint(Frame frame, int y) {
        if (frame.marks() != Marks.WORDS && !text.isBlank()) {
            upward(frame, y);
        }
    }

    private void upward(Frame frame, int last) {
        List<String> lines = Text.wrapped(text, frame.width() - 2);
        int top = Math.max(0, last + 1 - lines.size());
        frame.clear(0, top, frame.width(), last + 1 - top);
        for (int i = 0; i < lines.size(); i++) {
            frame.write(1, top + i, lines.get(i), style);
        }
        if (frame.marks() == Marks.WORDS && frame.caretY() < 0) {
            frame.caret(1, top); // what is read aloud stands on the line of the caret
        }
    }
}
