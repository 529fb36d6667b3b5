package versewind.screen.plan;

import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Enlarged;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Mark;

/**
 * Where the parts of the screen lie, from its size.
 *
 * @param gridWidth columns of the stop grid, which begins in column 0
 * @param listX first column of the verse list
 * @param listWidth its columns
 * @param top first row of both
 * @param height rows of both
 * @param statusTop first row of the status bar
 */
public record Layout(int gridWidth, int listX, int listWidth, int top, int height, int statusTop) {

    /** From this height on the moves have two rows. */
    private static final int TALL = 22;

    /** From this height on what is advised has a row. */
    private static final int AIRY = 24;

    private static final int HEADER_ROWS = 2;

    /** Columns in which no two divisions stand side by side. */
    private static final int SPOKEN_WIDTH = 24;

    private static final int NARROWEST_LIST = 27;
    private static final int SMALL_LIST = 24;
    private static final int WIDEST_LIST = 46;

    public static Layout of(State state) {
        Layout usual = of(state.columns(), state.rows());
        if (!state.isLarge()) {
            return usual;
        }
        int gridWidth = of(state.columns() / Enlarged.COLUMNS, state.rows()).gridWidth() * Enlarged.COLUMNS;
        return new Layout(
                gridWidth,
                gridWidth + Enlarged.COLUMNS,
                state.columns() - gridWidth - Enlarged.COLUMNS,
                usual.top(),
                usual.height(),
                usual.statusTop());
    }

    /** The same for a frame that holds stops and verses alone, and is enlarged where letters are large. */
    static Layout ofPanels(State state) {
        Layout whole = of(state);
        if (!state.isLarge()) {
            return whole;
        }
        int height = whole.height() / Enlarged.ROWS;
        return new Layout(
                whole.gridWidth() / Enlarged.COLUMNS,
                whole.listX() / Enlarged.COLUMNS,
                whole.listWidth() / Enlarged.COLUMNS,
                0,
                height,
                height);
    }

    public static Layout of(int columns, int rows) {
        int listWidth = columns < 72 ? SMALL_LIST : Math.min(WIDEST_LIST, NARROWEST_LIST + (columns - 80) / 3);
        listWidth = Math.max(columns < 72 ? SMALL_LIST : NARROWEST_LIST, listWidth);
        int gridWidth = columns - listWidth - 1;
        int statusTop = rows - statusRows(rows);
        return new Layout(gridWidth, gridWidth + 1, listWidth, HEADER_ROWS, statusTop - HEADER_ROWS, statusTop);
    }

    /** Rows of the status bar: who sings and how it is played, the levels, what is advised, the moves, messages. */
    static int statusRows(int rows) {
        return 3 + adviceRows(rows) + moveRows(rows);
    }

    /** Rows for what is advised. */
    static int adviceRows(int rows) {
        return rows < AIRY ? 0 : 1;
    }

    /** Rows for the moves. */
    static int moveRows(int rows) {
        return rows < TALL ? 1 : 2;
    }

    /** How many rows over the status bar hold nothing but the rule between stops and verses. */
    static int blankRows(Frame frame, State state) {
        Layout layout = of(state);
        int y = layout.statusTop();
        while (y > layout.top()
                && frame.row(y - 1).replace(frame.mark(Mark.WALL), "").isBlank()) {
            y--;
        }
        return layout.statusTop() - y;
    }

    /** The knobs of the open instrument as they lie on this screen. */
    static StopGridLayout grid(State state, PlanEdit work) {
        if (state.isSpoken()) {
            return StopGridLayout.of(work.sound(), SPOKEN_WIDTH, Integer.MAX_VALUE);
        }
        Layout layout = ofPanels(state);
        return StopGridLayout.of(work.sound(), layout.gridWidth(), Math.max(4, layout.height()));
    }
}
