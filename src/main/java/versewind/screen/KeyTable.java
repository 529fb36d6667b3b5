package versewind.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The keys of a screen: which key does what, in which words. The help, the row of hints, the README's table and the
 * test that no key means two things are made from it. Filled once, where the screen's constant is made.
 */
final class KeyTable<S extends Screen> {

    /** The keys of a screen that has none of its own. */
    static final KeyTable<Screen> NONE = under("");

    private static final int GAP = 3;
    private static final int CLOSE_GAP = 2;

    private final List<Row<S>> rows = new ArrayList<>();
    private String heading;

    private KeyTable(String heading) {
        this.heading = heading;
    }

    /** What a key does. */
    @FunctionalInterface
    interface Action<S> {
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
    record Row<S>(String heading, Optional<Object> mode, List<Key> keys, String does, Action<S> action) {

        /** The names of the keys: "u, Ctrl-Z". */
        String keyNames() {
            return String.join(", ", keys.stream().map(Key::name).toList());
        }
    }

    /** An empty table, listed under a heading. */
    static <S extends Screen> KeyTable<S> under(String heading) {
        return new KeyTable<>(heading);
    }

    /** With the keys that follow listed under another heading. */
    KeyTable<S> heading(String other) {
        heading = other;
        return this;
    }

    /**
     * With keys.
     *
     * @param keys their names, as {@link Key#name} writes them, with commas between them
     * @param does what they do
     */
    KeyTable<S> key(String keys, String does, Action<S> action) {
        return add(new Row<>(heading, Optional.empty(), Key.all(keys), does, action));
    }

    /** With keys that have their meaning in one mode of the screen alone. */
    KeyTable<S> key(Object mode, String keys, String does, Action<S> action) {
        return add(new Row<>(heading, Optional.of(mode), Key.all(keys), does, action));
    }

    private KeyTable<S> add(Row<S> row) {
        rows.add(row);
        return this;
    }

    /** With the arrows and the tabulator that move the mark of a list. */
    KeyTable<S> list(String rowName, ListOf<S> list) {
        return key("Down, Tab", "the " + rowName + " below", (screen, state) -> list.moved(screen, state, 1))
                .key("Up, Shift-Tab", "the " + rowName + " above", (screen, state) -> list.moved(screen, state, -1));
    }

    /** The list of a screen. */
    @FunctionalInterface
    interface ListOf<S> {
        /** The screen with its mark moved. */
        S moved(S screen, int by);

        default State moved(S screen, State state, int by) {
            return state.show((Screen) moved(screen, by));
        }
    }

    List<Row<S>> rows() {
        return List.copyOf(rows);
    }

    /** The state after a key, if the table of a screen has it. */
    static Optional<State> pressed(Screen screen, Key key, State state) {
        return pressed(screen.keys(), screen, key, state);
    }

    @SuppressWarnings("unchecked") // the table of a screen is made for it
    private static <S extends Screen> Optional<State> pressed(KeyTable<S> table, Screen screen, Key key, State state) {
        for (Row<S> row : table.rows) {
            if (row.keys().contains(key)
                    && row.mode().map(screen.mode(state)::equals).orElse(true)) {
                return Optional.of(row.action().on((S) screen, state));
            }
        }
        return Optional.empty();
    }

    /** Writes keys, by their names, and what they do, as many as fit before a column. */
    void hints(Frame frame, int x, int y, int limit, String... keys) {
        int at = x;
        for (String key : keys) {
            at = hint(frame, at, y, limit, key, row(key).does(), Style.FAINT) + GAP;
        }
    }

    /** Writes keys over the whole width, each with fewer words than its own: "Space on". */
    void hints(Frame frame, int y, Style style, String... hints) {
        int at = 1;
        for (String hint : hints) {
            int cut = hint.indexOf(' ');
            String key = row(hint.substring(0, cut)).keys().get(0).name();
            at = hint(frame, at, y, frame.width(), key, hint.substring(cut + 1), style) + CLOSE_GAP;
        }
    }

    /** Writes a key and words and returns the column after them; where they do not fit, one in which nothing fits. */
    private static int hint(Frame frame, int x, int y, int limit, String key, String words, Style style) {
        if (x + Text.columns(key) + 1 + Text.columns(words) > limit) {
            return limit;
        }
        return frame.write(frame.write(x, y, key, Style.KEY) + 1, y, words, style);
    }

    private Row<S> row(String name) {
        Key key = Key.all(name).get(0);
        return rows.stream().filter(row -> row.keys().contains(key)).findFirst().orElseThrow();
    }

    /** Writes hints in the last row of a box. */
    void hints(Frame frame, Box box, String... keys) {
        hints(frame, box.x(), box.y() + box.height() - 1, box.end(), keys);
    }
}
