package versewind.screen.toolkit;

import java.util.List;

/**
 * A text of several lines that is being edited.
 *
 * @param text what it holds; its lines end in {@code \n}
 * @param caret where the next character goes, counted in UTF-16 units from the start
 */
public record TextBlock(String text, int caret) {

    public static final TextBlock EMPTY = new TextBlock("", 0);

    private static final String TAB = "    ";
    private static final int PAGE = 15;

    /** A text with the caret at its end; line breaks of every kind become {@code \n}. */
    public static TextBlock of(String text) {
        return EMPTY.typed(text);
    }

    /** With text typed or pasted at the caret. */
    public TextBlock typed(String more) {
        String plain = more.replace("\r\n", "\n").replace('\r', '\n');
        return new TextBlock(text.substring(0, caret) + plain + text.substring(caret), caret + plain.length());
    }

    /** With the caret at the beginning of a line, counted from 1; at the last line for a number beyond it. */
    public TextBlock atLine(int number) {
        int start = 0;
        for (int i = 1; i < number && text.indexOf('\n', start) >= 0; i++) {
            start = text.indexOf('\n', start) + 1;
        }
        return at(start);
    }

    /** The line of the caret. */
    public String line() {
        return text.substring(start(caret), end(caret));
    }

    /** How many lines stand above that of the caret. */
    public int row() {
        return (int)
                text.substring(0, caret).chars().filter(each -> each == '\n').count();
    }

    /** After a key that moves the caret or edits the text; the same for every other key. */
    public TextBlock after(Key key) {
        if (key.control()) {
            return key.character() == 'j' ? typed("\n") : this;
        }
        return switch (key.named()) {
            case CHARACTER -> typed(Character.toString(key.character()));
            case ENTER -> typed("\n");
            case TAB -> typed("\t");
            case LEFT -> at(before());
            case RIGHT -> at(behind());
            case HOME -> at(start(caret));
            case END -> at(end(caret));
            case UP -> lines(-1);
            case DOWN -> lines(1);
            case PAGE_UP -> lines(-PAGE);
            case PAGE_DOWN -> lines(PAGE);
            case BACKSPACE -> new TextBlock(text.substring(0, before()) + text.substring(caret), before());
            case DELETE -> new TextBlock(text.substring(0, caret) + text.substring(behind()), caret);
            case ESCAPE, BACK_TAB, INSERT -> this;
            case F1, F2, F3, F4, F5, F6, F7, F8, F9, F10, F11, F12 -> this;
        };
    }

    private TextBlock at(int other) {
        return new TextBlock(text, other);
    }

    private int before() {
        return caret == 0 ? 0 : text.offsetByCodePoints(caret, -1);
    }

    private int behind() {
        return caret == text.length() ? caret : text.offsetByCodePoints(caret, 1);
    }

    private int start(int place) {
        return text.lastIndexOf('\n', place - 1) + 1;
    }

    private int end(int place) {
        int end = text.indexOf('\n', place);
        return end < 0 ? text.length() : end;
    }

    /** So many lines further down, in the same column where the line is long enough. */
    private TextBlock lines(int by) {
        int column = caret - start(caret);
        int line = start(caret);
        for (int i = 0; i < Math.abs(by); i++) {
            int next = by > 0 ? end(line) + 1 : line - 1;
            if (next < 0 || next > text.length()) {
                return i == 0 ? this : at(Math.min(line + column, end(line)));
            }
            line = by > 0 ? next : start(next);
        }
        return at(Math.min(line + column, end(line)));
    }

    /** Draws as many of its lines as there is room for, that of the caret among them. */
    public void paint(Frame frame, int x, int y, int width, int height) {
        List<String> lines = List.of(text.split("\n", -1));
        int here = row();
        ListBox<String> list = new ListBox<>(lines, here);
        list.each(y, height, (line, index, row) -> {
            String shown = line.replace("\t", TAB);
            int before = index == here
                    ? Text.columns(text.substring(start(caret), caret).replace("\t", TAB))
                    : 0;
            int skip = Math.min(shown.length(), Math.max(0, before - width + 1));
            frame.write(x, row, frame.fit(shown.substring(skip), width), Style.TEXT);
            if (index == here) {
                frame.caret(x + before - skip, row);
            }
        });
    }
}
