package versewind.screen.toolkit;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A line of text being typed.
 *
 * @param text what it holds
 * @param caret where the next character goes, counted in UTF-16 units from the start
 * @param isMarked whether all of it is marked, so that what is typed or pasted takes its place
 */
public record TextLine(String text, int caret, boolean isMarked) {

    /** The longest text that a field takes, in UTF-16 units. */
    public static final int LONGEST = 2000;

    private static final Pattern BREAKS_AROUND = Pattern.compile("^\\R+|\\R+$");
    private static final Pattern BREAK_OR_TAB = Pattern.compile("\\R|\\t");
    private static final Pattern CONTROL = Pattern.compile("\\p{Cc}");

    public static final TextLine EMPTY = of("");

    /** A line that holds a text, the caret at its end. */
    public static TextLine of(String text) {
        return at(text, text.length());
    }

    /** A line that holds what stood there before, marked: typing replaces it, the arrow keys go into it. */
    public static TextLine marked(String text) {
        return new TextLine(text, text.length(), !text.isEmpty());
    }

    /** What a filter holds after a key, to be heard before what it leaves; blank where it holds what it held. */
    public String after(TextLine before) {
        if (text.equals(before.text)) {
            return "";
        }
        return text.isBlank() ? "Filter empty. " : "Filter: " + text + ". ";
    }

    private static TextLine at(String text, int caret) {
        return new TextLine(text, caret, false);
    }

    /**
     * With text typed or pasted at the caret, if it has room. Line breaks and tabs in it become spaces, but line breaks
     * around it and control characters are left out.
     */
    public TextLine typed(String more) {
        if (isMarked) {
            return EMPTY.typed(more);
        }
        String line = harmless(more);
        return hasRoomFor(more)
                ? at(text.substring(0, caret) + line + text.substring(caret), caret + line.length())
                : this;
    }

    /** Whether a text still fits. */
    public boolean hasRoomFor(String more) {
        return (isMarked ? 0 : text.length()) + harmless(more).length() <= LONGEST;
    }

    private static String harmless(String text) {
        String trimmed = BREAKS_AROUND.matcher(text).replaceAll("");
        String line = BREAK_OR_TAB.matcher(trimmed).replaceAll(" ");
        return CONTROL.matcher(line).replaceAll("");
    }

    /** After a key that edits a line; the same for every other key. */
    public TextLine after(Key key) {
        if (key.control()) {
            return key.character() == 'u' ? at(text.substring(caret), 0) : this;
        }
        if (isMarked && (key.named() == Key.Named.BACKSPACE || key.named() == Key.Named.DELETE)) {
            return EMPTY;
        }
        return switch (key.named()) {
            case CHARACTER -> typed(Character.toString(key.character()));
            case LEFT -> at(text, before());
            case RIGHT -> at(text, behind());
            case HOME -> at(text, 0);
            case END -> of(text);
            case BACKSPACE -> at(text.substring(0, before()) + text.substring(caret), before());
            case DELETE -> at(text.substring(0, caret) + text.substring(behind()), caret);
            case UP, DOWN, PAGE_UP, PAGE_DOWN, ENTER, ESCAPE, TAB, BACK_TAB, INSERT -> this;
            case F1, F2, F3, F4, F5, F6, F7, F8, F9, F10, F11, F12 -> this;
        };
    }

    /** How many rows of so many columns show all of it, with room for the caret at its end. */
    public int rows(int width) {
        return starts(width).size();
    }

    /** Where each row begins, in UTF-16 units: after a blank if there is one in the right half. */
    private List<Integer> starts(int width) {
        List<Integer> starts = new ArrayList<>(List.of(0));
        int columns = 0;
        int blank = 0;
        for (int i = 0; i < text.length(); ) {
            int next = text.offsetByCodePoints(i, 1);
            int start = starts.get(starts.size() - 1);
            columns += Text.columns(text.substring(i, next));
            if (columns >= width && i > start) {
                int broken = blank > start + width / 2 ? blank : i;
                starts.add(broken);
                columns = Text.columns(text.substring(broken, next));
            }
            blank = text.charAt(i) == ' ' ? next : blank;
            i = next;
        }
        return starts;
    }

    /** Draws the field in several rows; where they do not hold all of it, so that the caret is seen. */
    public void paint(Frame frame, int x, int y, int width, int rows, boolean here) {
        if (rows == 1) {
            paint(frame, x, y, width, here);
            return;
        }
        List<Integer> starts = starts(width);
        int at = 0;
        while (at + 1 < starts.size() && starts.get(at + 1) <= caret) {
            at++;
        }
        int first = here ? Math.max(0, at + 1 - rows) : 0;
        for (int row = 0; row < rows; row++) {
            int line = first + row;
            frame.write(x, y + row, " ".repeat(width), Style.FIELD);
            if (line < starts.size()) {
                int end = line + 1 < starts.size() ? starts.get(line + 1) : text.length();
                String part = text.substring(starts.get(line), end);
                frame.write(x, y + row, part, here && isMarked ? Style.STRONG : Style.FIELD, x + width);
            }
        }
        if (here) {
            frame.caret(x + Text.columns(text.substring(starts.get(at), caret)), y + at - first);
        }
    }

    /**
     * Draws the field that holds it; a long text is moved so that the caret of the field that is typed into is seen.
     */
    public void paint(Frame frame, int x, int y, int width, boolean here) {
        frame.write(x, y, " ".repeat(width), Style.FIELD);
        int before = Text.columns(text.substring(0, caret));
        int skip = here ? Math.max(0, before - width + 1) : 0;
        int start = 0;
        while (start < text.length() && Text.columns(text.substring(0, start)) < skip) {
            start = text.offsetByCodePoints(start, 1);
        }
        frame.write(x, y, text.substring(start), here && isMarked ? Style.STRONG : Style.FIELD, x + width);
        if (here) {
            frame.caret(x + before - Text.columns(text.substring(0, start)), y);
        }
    }

    /**
     * Draws the field that narrows a list down. What is typed there has the caret as long as the first row is marked;
     * else the list has it.
     */
    public void paintFilter(Frame frame, int x, int y, int end, boolean isFirstMarked) {
        int field = frame.write(x, y, "Filter: ", Style.TEXT);
        paint(frame, field, y, Math.max(1, end - field), isFirstMarked && !text.isEmpty());
    }

    private int before() {
        return caret == 0 ? 0 : text.offsetByCodePoints(caret, -1);
    }

    private int behind() {
        return caret == text.length() ? caret : text.offsetByCodePoints(caret, 1);
    }
}
