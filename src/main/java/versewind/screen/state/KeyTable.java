package versewind.screen.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/**
 * The keys of a screen: which key does what, in which words. The help, the row of hints, the README's table and the
 * test that no key means two things are made from it. Filled once, where the screen's constant is made.
 */
public final class KeyTable<S extends Screen> {

    private static final String PAGE = "Page ";
    private static final int GAP = 2;

    private final List<Row<S>> rows = new ArrayList<>();
    private String heading;

    private KeyTable(String heading) {
        this.heading = heading;
    }

    /** What a key does. */
    @FunctionalInterface
    public interface Action<S> {
        State on(S screen, State state);
    }

    /**
     * A row of the table.
     *
     * @param heading under which it is listed
     * @param mode the part of the screen in which the keys have this meaning; empty for all
     * @param keys the keys, the one that is hinted at first
     * @param does what they do; blank where another row already says so
     * @param action does it
     */
    public record Row<S>(String heading, Optional<Object> mode, List<Key> keys, String does, Action<S> action) {

        /** The names of the keys: "u, Ctrl-Z". */
        public String keyNames() {
            return String.join(", ", keys.stream().map(Key::name).toList());
        }
    }

    /** An empty table, listed under a heading. */
    public static <S extends Screen> KeyTable<S> under(String heading) {
        return new KeyTable<>(heading);
    }

    /** With the keys that follow listed under another heading. */
    public KeyTable<S> heading(String other) {
        heading = other;
        return this;
    }

    /**
     * With keys.
     *
     * @param keys their names, as {@link Key#name} writes them, with commas between them
     * @param does what they do
     */
    public KeyTable<S> key(String keys, String does, Action<S> action) {
        return add(new Row<>(heading, Optional.empty(), Key.all(keys), does, action));
    }

    /** With keys that have their meaning in one mode of the screen alone. */
    public KeyTable<S> key(Object mode, String keys, String does, Action<S> action) {
        return add(new Row<>(heading, Optional.of(mode), Key.all(keys), does, action));
    }

    private KeyTable<S> add(Row<S> row) {
        rows.add(row);
        return this;
    }

    /** With the keys that move the mark of a {@link Listing}. */
    public KeyTable<S> list(String rowName) {
        return key("Down, Tab", "the " + rowName + " below", listed(1, rowName))
                .key("Up, Shift-Tab", "the " + rowName + " above", listed(-1, rowName))
                .key("Home", "the first " + rowName, listed(-ListBox.MOST, rowName))
                .key("End", "the last " + rowName, listed(ListBox.MOST, rowName));
    }

    /** The same, and page by page, of so many rows. */
    public KeyTable<S> list(String rowName, ToIntFunction<State> page) {
        return list(rowName)
                .key("Page Down", "a page down", (screen, state) -> listed(page.applyAsInt(state), rowName)
                        .on(screen, state))
                .key("Page Up", "a page up", (screen, state) -> listed(-page.applyAsInt(state), rowName)
                        .on(screen, state));
    }

    private static <S extends Screen> Action<S> listed(int by, String rowName) {
        return (screen, state) -> ((Listing<?>) (Screen) screen).moved(state, by, rowName);
    }

    public List<Row<S>> rows() {
        return List.copyOf(rows);
    }

    /** The state after a key, if a table that is made for a screen has it. */
    static <S extends Screen> Optional<State> pressed(KeyTable<S> table, Screen screen, Key key, State state) {
        return table.rows.stream()
                .filter(row -> row.keys().contains(key))
                .map(row -> new Command<>(row, screen))
                .filter(command -> command.isFor(screen.mode(state)))
                .findFirst()
                .map(command -> command.done(state));
    }

    /**
     * A row of the table that is made for a screen.
     *
     * @param row of the table
     * @param screen on which it is done
     */
    public record Command<S extends Screen>(Row<S> row, Screen screen) {

        private boolean isFor(Object mode) {
            return row.mode().map(mode::equals).orElse(true);
        }

        /** The state after it is done on the screen, which is on top. */
        @SuppressWarnings("unchecked") // the table of a screen is made for it
        public State done(State state) {
            return row.action().on((S) screen, state);
        }
    }

    /** What a key does on the top screen. */
    static Optional<String> does(State state, Key key) {
        return commands(state).stream()
                .map(Command::row)
                .filter(row -> row.keys().contains(key))
                .map(Row::does)
                .findFirst();
    }

    /** What can be done on the top screen, its own commands first. */
    public static List<Command<?>> commands(State state) {
        Screen top = state.top();
        List<Command<?>> commands = new ArrayList<>();
        for (KeyTable<?> table : List.of(top.keys(), state.doors().keys())) {
            table.commands(top, top.mode(state), commands);
        }
        return commands;
    }

    private void commands(Screen screen, Object mode, List<Command<?>> into) {
        rows.stream()
                .filter(row -> !row.does().isBlank())
                .map(row -> new Command<>(row, screen))
                .filter(command -> command.isFor(mode))
                .forEach(into::add);
    }

    /** Writes hints, as many as fit before a column: a key alone, or with fewer words than its own, "Space draw". */
    public void hints(Frame frame, int x, int y, int limit, Style style, String... hints) {
        int at = x;
        for (String hint : hints) {
            int end = hint.indexOf(' ', hint.startsWith(PAGE) ? PAGE.length() : 0);
            String key = end < 0 ? hint : hint.substring(0, end);
            String words = end < 0 ? row(key).does() : hint.substring(end + 1);
            if (at + Text.columns(key) + 1 + Text.columns(words) <= limit) {
                at = frame.write(frame.write(at, y, key, Style.KEY) + 1, y, words, style) + GAP;
            }
        }
    }

    /** The row of a key. */
    private Row<?> row(String name) {
        Key key = Key.all(name).get(0);
        return rows.stream().filter(row -> row.keys().contains(key)).findFirst().orElseThrow();
    }

    /** Writes hints in the last row of the frame. */
    public void hints(Frame frame, String... hints) {
        hints(frame, 1, frame.height() - 1, frame.width() - 1, Style.FAINT, hints);
    }

    /** Writes hints that all have their own words in the last row of the frame. */
    public static void hintsInWords(Frame frame, String... hints) {
        under("").hints(frame, hints);
    }

    /** Writes hints in the last row of a box. */
    public void hints(Frame frame, Box box, String... keys) {
        hints(frame, box.x(), box.y() + box.height() - 1, box.end(), Style.FAINT, keys);
    }
}
