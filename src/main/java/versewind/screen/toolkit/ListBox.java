package versewind.screen.toolkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import versewind.organ.Count;

/**
 * A list with a mark that moves through it, scrolled so that the marked row is in the middle; in words page by page, so
 * that what is read aloud stays where it is until the mark leaves the page.
 *
 * @param rows from top to bottom
 * @param marked index of the marked row; 0 in a list without rows
 */
public record ListBox<T>(List<T> rows, int marked) {

    /** More rows than any list has: moves the mark to an end. */
    public static final int MOST = 1_000_000_000;

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

    /** What is said where the mark cannot move that way: "The last finding."; empty where it can. */
    public Optional<String> end(int by, String rowName) {
        if (rows.isEmpty()) {
            return Optional.of("There is no " + rowName + " here.");
        }
        if (move(by).marked != marked) {
            return Optional.empty();
        }
        return Optional.of("The " + (rows.size() == 1 ? "only " : by > 0 ? "last " : "first ") + rowName + ".");
    }

    /** Where the marked row stands: "3 of 12". */
    public String place() {
        return (marked + 1) + " of " + rows.size();
    }

    /** How many there are, and which of them is marked: "3 of 12 findings". */
    public String position(String what) {
        String counted = Count.of(rows.size(), what);
        return rows.size() < 2 ? counted : (marked + 1) + " of " + counted;
    }

    /** Writes the position, and which way there is more, into the rule under a box that shows so many rows. */
    public void paintPosition(Frame frame, Box box, int height, String what) {
        if (rows.size() < 2) {
            return;
        }
        int top = frame.marks() == Marks.WORDS ? 0 : top(height);
        boolean isCut = frame.marks() != Marks.WORDS && top + height < rows.size();
        String more = (top > 0 ? ", more above" : "") + (isCut ? ", more below" : "");
        String text = " " + position(what) + more + " ";
        frame.write(box.end() - Text.columns(text), box.y() + box.height(), text, Style.FAINT);
    }

    /** The first row shown in a window of so many rows. */
    int top(int height) {
        return Math.max(0, Math.min(marked - height / 2, rows.size() - height));
    }

    /** Draws the rows that a window shows, the first of them in row {@code y}. */
    public void each(int y, int height, RowPainter<T> painter) {
        int top = top(height);
        for (int i = top; i < Math.min(rows.size(), top + height); i++) {
            painter.paint(rows.get(i), i, y + i - top);
        }
    }

    /**
     * Draws the rows that a window shows, the marked one as the place where keys act.
     *
     * @param words a row in words, drawn in as many lines as it needs where all is in words
     */
    public void paint(Frame frame, Box window, Function<T, String> words, RowPainter<T> painter) {
        if (frame.marks() == Marks.WORDS) {
            paintWords(frame, window, words);
            return;
        }
        each(window.y(), window.height(), painter);
        if (!rows.isEmpty()) {
            mark(frame, window, window.y() + marked - top(window.height()));
        }
    }

    /** The same where rows are drawn in words alone. */
    public void paintWords(Frame frame, Box window, Function<T, String> words) {
        List<List<String>> page = new ArrayList<>();
        int lines = 0;
        int here = 0;
        for (int i = 0; i < rows.size(); i++) {
            List<String> row = Text.wrapped(words.apply(rows.get(i)), window.width());
            if (lines + row.size() > window.height()) {
                if (i > marked) {
                    break;
                }
                page.clear();
                lines = 0;
            }
            here = i == marked ? lines : here;
            page.add(row);
            lines += row.size();
        }
        int y = window.y();
        for (List<String> row : page) {
            Box.write(frame, window.x(), y, row, window.y() + window.height() - y, Style.TEXT);
            y += row.size();
        }
        if (!rows.isEmpty()) {
            mark(frame, window, window.y() + here);
        }
    }

    /** Where all is read aloud the caret is the mark, so that no row is written again for its look. */
    private static void mark(Frame frame, Box window, int y) {
        if (frame.marks() == Marks.WORDS) {
            frame.caret(window.x(), y);
            return;
        }
        frame.write(window.x() - 1, y, frame.mark(Mark.HERE), Style.STRONG);
        frame.paint(window.x(), y, window.width(), Style.CURSOR);
    }
}
