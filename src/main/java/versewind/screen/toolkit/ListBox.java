package versewind.screen.toolkit;

import java.util.List;
import java.util.Optional;

/**
 * A list with a mark that moves through it, scrolled so that the marked row is in the middle.
 *
 * @param rows from top to bottom
 * @param marked index of the marked row; 0 in a list without rows
 */
public record ListBox<T>(List<T> rows, int marked) {

    public ListBox {
        rows = List.copyOf(rows);
        marked = Math.max(0, Math.min(marked, rows.size() - 1));
    }

    /** Draws a row. */
    @FunctionalInterface
    public interface RowPainter<T> {
        void paint(T row, int index, int y);
    }

    /** With its first row marked. */
    public static <T> ListBox<T> of(List<T> rows) {
        return new ListBox<>(rows, 0);
    }

    public ListBox<T> move(int by) {
        return mark(marked + by);
    }

    /** With a row marked; the nearest that there is. */
    public ListBox<T> mark(int row) {
        return new ListBox<>(rows, row);
    }

    /** The marked row, if there are any. */
    public Optional<T> current() {
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(marked));
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    public int size() {
        return rows.size();
    }

    /** How many there are, and which of them is marked: "3 of 12 findings". */
    public String position(String what) {
        String counted = rows.size() + " " + what + (rows.size() == 1 ? "" : "s");
        return rows.size() < 2 ? counted : (marked + 1) + " of " + counted;
    }

    /** Writes the position, and which way there is more, into the rule under a box that shows so many rows. */
    public void paintPosition(Frame frame, Box box, int height, String what) {
        if (rows.size() < 2) {
            return;
        }
        int top = top(height);
        String more = (top > 0 ? ", more above" : "") + (top + height < rows.size() ? ", more below" : "");
        String text = " " + position(what) + more + " ";
        frame.write(box.end() - Text.columns(text), box.y() + box.height(), text, Style.FAINT);
    }

    /** The first row shown in a window of so many rows. */
    int top(int height) {
        return Math.max(0, Math.min(marked - height / 2, rows.size() - height));
    }

    /** Draws the rows that a window shows, the first of them in row {@code y}. */
    public void each(int y, int height, RowPainter<T> painter) {
        each(y, height, top(height), painter);
    }

    private void each(int y, int height, int top, RowPainter<T> painter) {
        for (int i = top; i < Math.min(rows.size(), top + height); i++) {
            painter.paint(rows.get(i), i, y + i - top);
        }
    }

    /** Draws the rows that a window shows, the marked one as the place where keys act. */
    public void paint(Frame frame, Box window, RowPainter<T> painter) {
        paint(frame, window, top(window.height()), painter);
    }

    /** The same, page by page: what is read aloud stays where it is until the marked row leaves the window. */
    public void paintPage(Frame frame, Box window, RowPainter<T> painter) {
        int height = Math.max(1, window.height());
        paint(frame, window, marked / height * height, painter);
    }

    private void paint(Frame frame, Box window, int top, RowPainter<T> painter) {
        each(window.y(), window.height(), top, painter);
        if (!rows.isEmpty()) {
            int y = window.y() + marked - top;
            frame.write(window.x() - 1, y, frame.mark(Mark.HERE), Style.STRONG);
            frame.paint(window.x(), y, window.width(), Style.CURSOR);
        }
    }
}
