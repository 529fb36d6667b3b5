package versewind.terminal;

/**
 * Control sequences that move the cursor. Columns and rows count from 0.
 *
 * <p>Source: ECMA-48, 5th edition, 8.3.18 to 8.3.22 (CUB, CUD, CUF, CUP, CUU), as far as the VT100 has them.
 */
final class Motion {

    private Motion() {}

    /** Moves to a cell from anywhere. */
    static String absolute(int x, int y) {
        if (x == 0) {
            return y == 0 ? "\033[H" : "\033[" + (y + 1) + "H";
        }
        return "\033[" + (y == 0 ? "" : y + 1) + ";" + (x + 1) + "H";
    }

    /** The shorter of a relative and an absolute move between two cells. */
    static String cheapest(int fromX, int fromY, int x, int y) {
        String absolute = absolute(x, y);
        String relative = vertical(y - fromY) + horizontal(fromX, x);
        return relative.length() < absolute.length() ? relative : absolute;
    }

    private static String vertical(int rows) {
        return rows == 0 ? "" : step(Math.abs(rows), rows < 0 ? 'A' : 'B');
    }

    private static String horizontal(int fromX, int x) {
        int columns = x - fromX;
        if (columns == 0) {
            return "";
        }
        if (columns > 0) {
            return step(columns, 'C');
        }
        String fromMargin = x == 0 ? "\r" : "\r" + step(x, 'C');
        String back = -columns <= 3 ? "\b".repeat(-columns) : step(-columns, 'D');
        return back.length() <= fromMargin.length() ? back : fromMargin;
    }

    private static String step(int count, char direction) {
        return "\033[" + (count == 1 ? "" : count) + direction;
    }
}
