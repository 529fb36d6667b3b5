package versewind.screen;

import java.util.List;
import java.util.stream.Stream;

/** Keys and what they do, side by side in a row, as many as fit. */
final class KeyRow {

    private static final int NARROW = 2;
    private static final int WIDE = 3;

    private KeyRow() {}

    /**
     * A command by its first key.
     *
     * @param command the command
     * @param words what it does, in fewer words than its own
     */
    record Hint(Command command, String words) {}

    /** The first key of each of some commands and what it does, before a column. */
    static void paint(Frame frame, int x, int y, int limit, Command... commands) {
        List<Hint> hints = Stream.of(commands)
                .map(command -> new Hint(command, command.does()))
                .toList();
        paint(frame, x, y, limit, hints, Style.FAINT, WIDE);
    }

    /** Hints over the whole width of the screen. */
    static void paint(Frame frame, int y, List<Hint> hints, Style style) {
        paint(frame, 1, y, frame.width(), hints, style, NARROW);
    }

    private static void paint(Frame frame, int x, int y, int limit, List<Hint> hints, Style style, int gap) {
        int at = x;
        for (Hint hint : hints) {
            String key = hint.command().keys().get(0).name();
            if (at + Text.columns(key) + 1 + Text.columns(hint.words()) > limit) {
                return;
            }
            at = frame.write(at, y, key, Style.KEY);
            at = frame.write(at + 1, y, hint.words(), style) + gap;
        }
    }
}
