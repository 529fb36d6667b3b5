package versewind.screen;

import java.util.ArrayList;
import java.util.List;

/** All keys, made from the table of commands. */
final class HelpView {

    private static final int KEYS = 24;
    private static final int FEWER_KEYS = 18;
    private static final int WIDE = 72;
    private static final int EDGE_ROWS = 3;

    /** The tables of keys of all screens. */
    static final List<KeyTable<?>> TABLES = List.of(
            ReadingsScreen.KEYS, FormBox.KEYS, Chooser.KEYS, FindingsScreen.KEYS, DeskScreen.KEYS, FeedbackScreen.KEYS);

    private HelpView() {}

    /** A line of the help: a heading, or keys and what they do. */
    record Line(String keys, String does) {
        boolean isHeading() {
            return does.isEmpty();
        }
    }

    static List<Line> lines(Marks marks) {
        List<Line> lines = new ArrayList<>(List.of(
                new Line("Marks and words", ""),
                new Line(marks.drawn() + " " + marks.in(), "drawn, and in"),
                new Line(marks.right(), "the organ is right for those who sing"),
                new Line(marks.nearlyWeak() + " " + marks.weak(), "only just strong enough, and too weak"),
                new Line(marks.nearlyStrong() + " " + marks.strong(), "only just soft enough, and too strong"),
                new Line(
                        marks.bar(1) + marks.bar(1) + marks.singers(),
                        "how loud the organ is, and where the singers are"),
                new Line("dB after a verdict", "how much of it stands clear: 0 even, +15 wholly, -15 not"),
                new Line("pp to fff", "from this organ's softest stop to its full organ"),
                new Line("sone", "loudness as it is felt: twice as many, twice as loud"),
                new Line("lag", "how late the sound reaches the farthest singers"),
                new Line("caution, remark", "what is found; f shows all, and what mends it"),
                new Line("coupled down", "the feet play a manual, no pedal stop is drawn")));
        for (Command.Group group : Command.Group.values()) {
            if (!lines.isEmpty()) {
                lines.add(new Line("", ""));
            }
            lines.add(new Line(group.title(), ""));
            for (Command command : Command.values()) {
                if (command.group() == group && !Command.UNLISTED.contains(command)) {
                    lines.add(new Line(command.keyNames(), command.does()));
                }
            }
            TABLES.stream()
                    .flatMap(table -> table.rows().stream())
                    .filter(row ->
                            row.heading().equals(group.title()) && !row.does().isEmpty())
                    .forEach(row -> lines.add(new Line(row.keyNames(), row.does())));
        }
        return lines;
    }

    /** The lines as they are shown, long ones broken. */
    static List<Line> shown(State state) {
        int columns = state.columns() - keys(state) - 2;
        List<Line> shown = new ArrayList<>();
        for (Line line : lines(state.marks())) {
            String keys = line.keys();
            for (String part : Text.wrapped(line.does(), columns)) {
                shown.add(new Line(keys, part));
                keys = "";
            }
        }
        return shown;
    }

    private static int keys(State state) {
        return state.columns() < WIDE ? FEWER_KEYS : KEYS;
    }

    /** How many lines are shown at once. */
    static int room(State state) {
        return Math.max(1, state.rows() - EDGE_ROWS);
    }

    static void paint(Frame frame, State state, Panel.Help help) {
        frame.clear(0, 0, frame.width(), frame.height());
        frame.caret(-1, -1);
        List<Line> lines = shown(state);
        int top = Math.max(0, Math.min(help.top(), lines.size() - room(state)));
        int shown = Math.min(lines.size(), top + room(state));
        frame.write(1, 0, "Keys", Style.HEADING);
        String part = "lines " + (top + 1) + " to " + shown + " of " + lines.size();
        frame.write(frame.width() - part.length() - 1, 0, part, Style.FAINT);
        for (int i = top; i < shown; i++) {
            Line line = lines.get(i);
            int y = 1 + i - top;
            int end = frame.write(1, y, line.keys(), line.isHeading() ? Style.HEADING : Style.KEY);
            frame.write(Math.max(1 + keys(state), end + 1), y, line.does(), Style.TEXT);
        }
        KeyRow.paint(
                frame,
                1,
                frame.height() - 1,
                frame.width(),
                Command.HELP_DOWN,
                Command.HELP_PAGE_DOWN,
                Command.HELP_PAGE_UP,
                Command.CLOSE_HELP);
    }
}
