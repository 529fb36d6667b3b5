package versewind.screen.state;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import versewind.plan.Sought;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.screen.toolkit.TextLine;

/**
 * A list to choose from, over another screen, that is narrowed down by typing.
 *
 * @param title its heading
 * @param rows all rows
 * @param filter what was typed
 * @param list the rows that fit
 * @param chosen what is done with a row; without it the list is only read
 * @param doing what the key that chooses does with a row, by its id
 */
public record Chooser(
        String title,
        List<Row> rows,
        TextLine filter,
        ListBox<Row> list,
        Optional<Choice> chosen,
        UnaryOperator<String> doing)
        implements TextEntry, Listing<Chooser.Row> {

    public static final KeyTable<Chooser> KEYS = KeyTable.<Chooser>under("Choosing from a list")
            .list("row", state -> Chooser.USUAL_ROWS)
            .key("Enter", Chooser.CHOOSE, Chooser::choose)
            .key("Esc", "close the list", (chooser, state) -> state.close());

    private static final int WIDTH = 76;

    /** Rows of the list for which there is room even where fewer fit what was typed. */
    private static final int USUAL_ROWS = 12;

    private static final String CHOOSE = "choose";

    /** The most rows under a list in which the marked row stands whole, where one is too long for its line. */
    private static final int MOST_IN_FULL = 6;

    public Chooser {
        rows = List.copyOf(rows);
    }

    /**
     * A row.
     *
     * @param id what is chosen by it
     * @param first what it says
     * @param second what it says in less weight
     */
    public record Row(String id, String first, String second) {

        /** All that it says. */
        public String words() {
            return second.isBlank() ? first.strip() : first.strip() + ", " + second;
        }

        boolean isCut(int columns) {
            return Text.columns(first) + 2 + Text.columns(second) > columns;
        }

        public void paint(Frame frame, Box window, int y) {
            int left = window.width() - Text.columns(first) - 2;
            int seconds = Math.min(Text.columns(second), Math.max(left, window.width() / 2));
            int firsts = window.width() - seconds - 2;
            frame.write(window.x(), y, frame.fit(first, firsts), Style.TEXT);
            frame.write(window.end() - seconds, y, frame.fit(second, seconds), Style.FAINT);
        }
    }

    /** What is done with a row that was chosen, the list still open. */
    @FunctionalInterface
    public interface Choice {
        State on(String id, State state);
    }

    /** A list of which one is chosen. */
    public static Chooser of(String title, List<Row> rows, Choice chosen) {
        return new Chooser(title, rows, TextLine.EMPTY, ListBox.of(rows), Optional.of(chosen), id -> CHOOSE);
    }

    /** With other words for what is done with a row, by its id. */
    public Chooser doing(UnaryOperator<String> words) {
        return new Chooser(title, rows, filter, list, chosen, words);
    }

    /** A list that is only read. */
    public static Chooser read(String title, List<Row> rows) {
        return new Chooser(title, rows, TextLine.EMPTY, ListBox.of(rows), Optional.empty(), id -> CHOOSE);
    }

    /** Of some rows, those that hold every word typed. */
    public static List<Row> fitting(List<Row> rows, String typed) {
        Sought sought = Sought.of(typed);
        return rows.stream()
                .filter(row -> sought.isIn(row.id() + " " + row.first() + " " + row.second()))
                .sorted(Comparator.comparing(row -> !sought.beginsWordsOf(row.first())))
                .toList();
    }

    /** With something else typed; the caret alone leaves the row that is marked. */
    private Chooser with(TextLine line) {
        ListBox<Row> fitting = line.text().equals(filter.text()) ? list : ListBox.of(fitting(rows, line.text()));
        return new Chooser(title, rows, line, fitting, chosen, doing);
    }

    private State choose(State state) {
        if (list.isEmpty()) {
            return state.says("Nothing in the list matches the filter.");
        }
        String id = list.current().orElseThrow().id();
        return chosen.map(choice -> choice.on(id, state)).orElseGet(state::close);
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public TextLine line() {
        return filter;
    }

    @Override
    public State typed(TextLine line, State state) {
        return state.show(with(line));
    }

    @Override
    public Screen marking(int row) {
        return new Chooser(title, rows, filter, list.mark(row), chosen, doing);
    }

    @Override
    public String words(Row row, State state) {
        return row.words();
    }

    private String none() {
        return rows.isEmpty() ? "None yet." : "Nothing matches the filter.";
    }

    /** The title too when it opens, what the filter holds if that changed, and what the key that chooses does now. */
    @Override
    public String spoken(State before, State now) {
        String said = list.isEmpty() ? none() : Listing.super.spoken(before, now);
        boolean isOpen = before.top() instanceof Chooser was && was.title.equals(title);
        String does = isOpen ? ((Chooser) before.top()).does() : CHOOSE;
        String enter = does().equals(does) ? "" : " Enter: " + does() + ".";
        return isOpen
                ? filter.after(((Chooser) before.top()).filter) + said + enter
                : title + (title.endsWith("?") ? " " : ". ") + said + enter;
    }

    /** What the key that chooses does with the marked row. */
    private String does() {
        return list.current().map(row -> doing.apply(row.id())).orElse(CHOOSE);
    }

    @Override
    public void paint(Frame frame, State state) {
        int columns = Math.min(WIDTH, frame.width() - 4);
        int inFull = frame.marks() == Marks.WORDS
                ? 0
                : rows.stream()
                        .filter(row -> row.isCut(columns))
                        .mapToInt(row -> Math.min(
                                MOST_IN_FULL, Text.wrapped(row.words(), columns).size()))
                        .max()
                        .orElse(0);
        int wanted = Math.max(list.size(), Math.min(rows.size(), USUAL_ROWS)) + 4 + inFull;
        Box box = Box.open(frame, title, WIDTH, wanted);
        Box window = box.rows(1, box.height() - 3 - inFull);
        list.current().filter(row -> inFull > 0 && row.isCut(columns)).ifPresent(row -> {
            List<String> lines = Text.wrapped(row.words(), columns);
            int y = box.y() + box.height() - 1 - inFull;
            Box.write(frame, box.x(), y, lines, inFull, Style.MESSAGE);
        });
        list.paint(frame, window, Row::words, (row, index, y) -> row.paint(frame, window, y));
        filter.paintFilter(frame, box.x(), box.y(), box.end(), list.marked() == 0);
        list.paintPosition(frame, box, window.height(), "row");
        if (list.isEmpty()) {
            frame.write(box.x(), box.y() + 1, none(), Style.FAINT);
        }
        if (chosen.isEmpty()) {
            KEYS.hints(frame, box, "Esc");
        } else {
            KEYS.hints(frame, box, "Enter " + does(), "Esc");
        }
    }
}
