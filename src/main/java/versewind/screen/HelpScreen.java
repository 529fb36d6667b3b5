package versewind.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All keys, made from the tables of all screens, over everything.
 *
 * @param top the first line shown
 */
record HelpScreen(int top) implements Screen {

    static final KeyTable<HelpScreen> KEYS = KeyTable.<HelpScreen>under("Reading the help")
            .key("Down", "a line down", (help, state) -> help.read(state, 1))
            .key("Up", "a line up", (help, state) -> help.read(state, -1))
            .key("Space, Page Down", "a page down", (help, state) -> help.read(state, room(state) - 1))
            .key("Page Up", "a page up", (help, state) -> help.read(state, 1 - room(state)))
            .key("Esc, ?, q, F1", "close the help", (help, state) -> state.close());

    /** The tables of keys of all screens, in the order in which the help lists them. */
    static final List<KeyTable<?>> TABLES = List.of(
            PlanScreen.KEYS,
            ReadingsScreen.KEYS,
            UsualScreen.KEYS,
            FindScreen.KEYS,
            FormBox.KEYS,
            Chooser.KEYS,
            LibraryScreen.KEYS,
            FindingsScreen.KEYS,
            ProposalsScreen.KEYS,
            SearchScreen.KEYS,
            OrganScreen.KEYS,
            PasteScreen.KEYS,
            DeskScreen.KEYS,
            FeedbackScreen.KEYS,
            KEYS);

    private static final int KEY_COLUMNS = 24;
    private static final int FEWER_KEY_COLUMNS = 18;
    private static final int WIDE = 72;
    private static final int EDGE_ROWS = 3;

    /** A line of the help: a heading, or keys and what they do. */
    record Line(String keys, String does) {
        boolean isHeading() {
            return does.isEmpty();
        }
    }

    static List<Line> lines(Marks marks) {
        List<Line> lines = new ArrayList<>(List.of(
                new Line("Marks and words", ""),
                new Line(Mark.DRAWN.in(marks) + " " + Mark.IN.in(marks), "drawn, and not drawn"),
                new Line(
                        Stream.of(Mark.RIGHT, Mark.ONLY_JUST, Mark.WEAK, Mark.STRONG)
                                .map(mark -> mark.in(marks))
                                .collect(Collectors.joining(" ")),
                        "right for the singers, only just, too weak, too strong"),
                new Line(
                        Stream.of(Mark.PERHAPS_RIGHT, Mark.PERHAPS_ONLY_JUST, Mark.PERHAPS_WEAK, Mark.PERHAPS_STRONG)
                                .map(mark -> mark.in(marks))
                                .collect(Collectors.joining(" ")),
                        "the same with odds of less than 8 in 10"),
                new Line("share", "of all that is heard, this much is the organ's own, or the melody's"),
                new Line("index", "how well words are understood, by ANSI S3.5"),
                new Line(marks.bar(1) + Mark.EDGE.in(marks) + marks.bar(1), "the share, and from where it is right"),
                new Line("pp to fff", "from this organ's softest stop to its full organ"),
                new Line("sone", "perceived loudness: twice as many, twice as loud"),
                new Line("lag", "how late the sound reaches the farthest singers"),
                new Line("caution, remark", "a finding; f shows all, with their fixes"),
                new Line("coupled down", "the feet play a manual through its coupler; no pedal stop is drawn")));
        lines.addAll(keyLines());
        return lines;
    }

    /** All keys under their headings, each heading after a blank line. */
    static List<Line> keyLines() {
        Map<String, List<Line>> lines = new LinkedHashMap<>();
        for (KeyTable<?> table : TABLES) {
            table.rows().stream().filter(row -> !row.does().isEmpty()).forEach(row -> lines.computeIfAbsent(
                            row.heading(), HelpScreen::under)
                    .add(new Line(row.keyNames(), row.does())));
        }
        return lines.values().stream().flatMap(List::stream).toList();
    }

    private static List<Line> under(String heading) {
        return new ArrayList<>(List.of(new Line("", ""), new Line(heading, "")));
    }

    /** The lines as they are shown, long ones broken. */
    static List<Line> shown(State state) {
        int columns = state.columns() - keyColumns(state.columns()) - 2;
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

    private static int keyColumns(int columns) {
        return columns < WIDE ? FEWER_KEY_COLUMNS : KEY_COLUMNS;
    }

    /** How many lines are shown at once. */
    private static int room(State state) {
        return Math.max(1, state.rows() - EDGE_ROWS);
    }

    private State read(State state, int further) {
        int last = Math.max(0, shown(state).size() - room(state));
        return state.show(new HelpScreen(Math.max(0, Math.min(top + further, last))));
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public Layer layer() {
        return Layer.SHEET;
    }

    @Override
    public void paint(Frame frame, State state) {
        List<Line> lines = shown(state);
        int first = Math.max(0, Math.min(top, lines.size() - room(state)));
        int last = Math.min(lines.size(), first + room(state));
        frame.write(1, 0, "Keys", Style.HEADING);
        String part = "lines " + (first + 1) + " to " + last + " of " + lines.size();
        frame.write(frame.width() - part.length() - 1, 0, part, Style.FAINT);
        for (int i = first; i < last; i++) {
            Line line = lines.get(i);
            int y = 1 + i - first;
            int end = frame.write(1, y, line.keys(), line.isHeading() ? Style.HEADING : Style.KEY);
            frame.write(Math.max(1 + keyColumns(frame.width()), end + 1), y, line.does(), Style.TEXT);
        }
        KEYS.hints(frame, 1, frame.height() - 1, frame.width(), "Down", "Space", "Page Up", "Esc");
    }
}
