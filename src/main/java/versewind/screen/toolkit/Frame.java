package versewind.screen.toolkit;

import java.util.Arrays;

/**
 * A screenful of cells, each with a character and a style. A character two columns wide fills its own cell and leaves
 * {@link #SECOND_HALF} in the next.
 *
 * <p>Views draw on it from the top left, columns x and rows y from 0; what would fall outside is cut off.
 */
public final class Frame {

    /** Stands in the cell to the right of a character two columns wide. */
    public static final int SECOND_HALF = 0;

    /** How much of a state a frame shows. */
    public enum Extent {
        /** What stands in the plan and how it sounds: the first screen waits for nothing else. */
        AT_ONCE,
        /** Also what must be found out: findings, what is usual, what to change, the day of the church's year. */
        ALL
    }

    private final int width;
    private final int height;
    private final int[] characters;
    private final Style[] styles;
    private int caretX = -1;
    private int caretY = -1;

    private final Marks marks;
    private final Extent extent;

    /** A blank frame, drawn with the marks of Unicode. */
    public Frame(int width, int height) {
        this(width, height, Marks.UNICODE);
    }

    /** A blank frame. */
    public Frame(int width, int height, Marks marks) {
        this(width, height, marks, Extent.ALL);
    }

    /** A blank frame that shows all, or only what is known at once. */
    public Frame(int width, int height, Marks marks, Extent extent) {
        this.marks = marks;
        this.extent = extent;
        this.width = width;
        this.height = height;
        this.characters = new int[width * height];
        this.styles = new Style[width * height];
        Arrays.fill(characters, ' ');
        Arrays.fill(styles, Style.TEXT);
    }

    /** Whether all is shown on it, and not only what is known at once. */
    public boolean isWhole() {
        return extent == Extent.ALL;
    }

    /** The marks that it is drawn with. */
    public Marks marks() {
        return marks;
    }

    /** A mark as it is drawn here. */
    public String mark(Mark mark) {
        return mark.in(marks);
    }

    /** A text cut to a number of columns, with a mark where something was cut. */
    public String fit(String text, int columns) {
        return Text.fit(text, columns, mark(Mark.CUT));
    }

    /** Number of columns. */
    public int width() {
        return width;
    }

    /** Number of rows. */
    public int height() {
        return height;
    }

    /** The character of a cell, as a code point, or {@link #SECOND_HALF}. */
    public int character(int x, int y) {
        return characters[y * width + x];
    }

    /** The style of a cell. */
    public Style style(int x, int y) {
        return styles[y * width + x];
    }

    /** Column of the text caret, -1 where none is shown. */
    public int caretX() {
        return caretX;
    }

    /** Row of the text caret, -1 where none is shown. */
    public int caretY() {
        return caretY;
    }

    /** Shows the text caret in a cell, if that lies inside. */
    public void caret(int x, int y) {
        boolean inside = x >= 0 && x < width && y >= 0 && y < height;
        caretX = inside ? x : -1;
        caretY = inside ? y : -1;
    }

    /** Writes text from a cell to the right and returns the column after it. The text is made harmless first. */
    public int write(int x, int y, String text, Style style) {
        return write(x, y, text, style, width);
    }

    /** Writes text as far as a column that it may not reach. */
    public int write(int x, int y, String text, Style style, int limit) {
        int[] points = Text.clean(text).codePoints().toArray();
        int at = x;
        for (int point : points) {
            int columns = Text.columns(point);
            if (at + columns > Math.min(limit, width)) {
                break;
            }
            if (columns > 0) {
                set(at, y, point, style);
                if (columns == 2) {
                    set(at + 1, y, SECOND_HALF, style);
                }
            }
            at += columns;
        }
        return at;
    }

    /** Draws a mark of one cell. */
    public void put(int x, int y, Mark mark, Style style) {
        set(x, y, mark(mark).codePointAt(0), style);
    }

    /** Gives a run of cells another style. The place where keys act has the caret too, which is read aloud. */
    public void paint(int x, int y, int columns, Style style) {
        if (style == Style.CURSOR) {
            caret(x, y);
        }
        for (int i = Math.max(0, x); i < Math.min(width, x + columns); i++) {
            if (y >= 0 && y < height) {
                styles[y * width + i] = style;
            }
        }
    }

    /** Blanks a rectangle. */
    public void clear(int x, int y, int columns, int rows) {
        for (int row = y; row < y + rows; row++) {
            for (int column = x; column < x + columns; column++) {
                set(column, row, ' ', Style.TEXT);
            }
        }
    }

    private void set(int x, int y, int point, Style style) {
        if (x >= 0 && x < width && y >= 0 && y < height) {
            int cell = y * width + x;
            blankOtherHalf(x, cell);
            characters[cell] = point;
            styles[cell] = style;
        }
    }

    /** A character two columns wide that loses one of its cells leaves a blank in the other. */
    private void blankOtherHalf(int x, int cell) {
        if (x > 0 && characters[cell] == SECOND_HALF) {
            characters[cell - 1] = ' ';
        }
        if (x + 1 < width && characters[cell + 1] == SECOND_HALF) {
            characters[cell + 1] = ' ';
        }
    }

    /** True if some cells of a row hold nothing. */
    public boolean isBlank(int x, int y, int columns) {
        int first = y * width + x;
        return Arrays.stream(characters, first, first + columns).allMatch(point -> point == ' ');
    }

    /** The characters of a row, without the blanks at its end. */
    public String row(int y) {
        StringBuilder row = new StringBuilder();
        for (int x = 0; x < width; x++) {
            int point = character(x, y);
            if (point != SECOND_HALF) {
                row.appendCodePoint(point);
            }
        }
        return row.toString().stripTrailing();
    }

    /** Style letters of a row. */
    public String styleRow(int y) {
        StringBuilder row = new StringBuilder();
        for (int x = 0; x < width; x++) {
            row.append(style(x, y).letter());
        }
        return row.toString();
    }
}
