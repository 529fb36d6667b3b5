package versewind.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.plan.Sought;
import versewind.screen.desk.DeskScreen;
import versewind.screen.desk.FeedbackScreen;
import versewind.screen.library.LibraryScreen;
import versewind.screen.organ.OrganScreen;
import versewind.screen.organ.PasteScreen;
import versewind.screen.organ.SavingScreen;
import versewind.screen.plan.ConflictScreen;
import versewind.screen.plan.FindScreen;
import versewind.screen.plan.FindingsScreen;
import versewind.screen.plan.PlanScreen;
import versewind.screen.plan.ProposalsScreen;
import versewind.screen.plan.ReadingsScreen;
import versewind.screen.plan.SearchScreen;
import versewind.screen.plan.UsualScreen;
import versewind.screen.state.Chooser;
import versewind.screen.state.Covering;
import versewind.screen.state.FormBox;
import versewind.screen.state.KeyTable;
import versewind.screen.state.State;
import versewind.screen.state.TextEntry;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.screen.toolkit.TextLine;

/**
 * The keys of the screen beneath, then the marks and all other keys, made from the tables of all screens. What is typed
 * keeps the lines that hold it.
 *
 * @param filter typed so far
 * @param marked the line that is marked, of those that fit
 */
record HelpScreen(TextLine filter, int marked) implements TextEntry, Covering {

    static final HelpScreen START = new HelpScreen(TextLine.EMPTY, 0);

    static final KeyTable<HelpScreen> KEYS = KeyTable.<HelpScreen>under("Reading the help")
            .key("Down, Tab", "a line down", (help, state) -> help.read(state, 1))
            .key("Up, Shift-Tab", "a line up", (help, state) -> help.read(state, -1))
            .key("Home", "the first line", (help, state) -> help.read(state, -ListBox.MOST))
            .key("End", "the last line", (help, state) -> help.read(state, ListBox.MOST))
            .key("Page Down", "a page down", (help, state) -> help.page(state, 1))
            .key("Page Up", "a page up", (help, state) -> help.page(state, -1))
            .key("Enter", "do it, if it is a command of the screen beneath", HelpScreen::chosen)
            .key("Esc, ?, F1", "close the help", (help, state) -> state.close());

    /** The tables of keys of all screens, in the order in which the help lists them. */
    static final List<KeyTable<?>> TABLES = List.of(
            new PlanScreen().keys(),
            Rooms.ALL.keys(),
            ReadingsScreen.KEYS,
            UsualScreen.KEYS,
            FindScreen.KEYS,
            FormBox.KEYS,
            Chooser.KEYS,
            LibraryScreen.KEYS,
            FindingsScreen.KEYS,
            ProposalsScreen.KEYS,
            SearchScreen.KEYS,
            ConflictScreen.KEYS,
            OrganScreen.KEYS,
            SavingScreen.KEYS,
            PasteScreen.KEYS,
            DeskScreen.KEYS,
            FeedbackScreen.KEYS,
            CommandScreen.KEYS,
            KEYS);

    private static final String NOTHING = "Nothing matches the filter.";
    private static final int KEY_COLUMNS = 24;
    private static final int FEWER_KEY_COLUMNS = 18;
    private static final int WIDE = 72;
    private static final int TOP = 1;
    private static final int FOOT = 2;

    /**
     * A line of the help.
     *
     * @param heading under which it stands
     * @param keys or the mark that is explained
     * @param does what they do, or it means
     * @param command what is done by it here, if it can be
     */
    record Line(String heading, String keys, String does, Optional<KeyTable.Command<?>> command) {}

    /**
     * A row that is shown: a heading, or a part of a line.
     *
     * @param line index of the line, of the first one under a heading
     */
    record Row(int line, String keys, String does) {
        boolean isHeading() {
            return does.isEmpty();
        }
    }

    private static List<Line> marks(Marks marks) {
        Map<String, String> words = new LinkedHashMap<>();
        if (marks != Marks.WORDS) {
            signs(words, marks);
        }
        words.put("share", "of all that is heard, this much is the organ's own, or the melody's");
        words.put("index", "how well words are understood, by ANSI S3.5");
        words.put("pp to fff", "from this organ's softest stop to its full organ");
        words.put("sone", "perceived loudness: twice as many, twice as loud");
        words.put("lag", "how late the sound reaches the farthest singers");
        words.put("caution, remark", "a finding; f shows all, with their fixes");
        words.put("pedal by coupler", "the feet play a manual through its coupler; any pedal stops drawn sound too");
        return words.entrySet().stream()
                .map(each -> new Line("Marks and words", each.getKey(), each.getValue(), Optional.empty()))
                .toList();
    }

    private static void signs(Map<String, String> words, Marks marks) {
        words.put(in(marks, Mark.DRAWN, Mark.WAITS, Mark.IN), "drawn; drawn, but not heard in this verse; not drawn");
        words.put(
                in(marks, Mark.RIGHT, Mark.ONLY_JUST, Mark.WEAK, Mark.STRONG),
                "right for the singers, only just, too weak, too strong");
        words.put(
                in(marks, Mark.PERHAPS_RIGHT, Mark.PERHAPS_ONLY_JUST, Mark.PERHAPS_WEAK, Mark.PERHAPS_STRONG),
                "the same with odds of less than 8 in 10");
        words.put(marks.bar(1) + Mark.EDGE.in(marks) + marks.bar(1), "the share, and from where it is right");
    }

    private static String in(Marks marks, Mark... which) {
        return Stream.of(which).map(mark -> mark.in(marks)).collect(Collectors.joining(" "));
    }

    /** All lines over a screen: its own keys, the marks, the keys of all others. */
    static List<Line> lines(State beneath) {
        List<Line> lines = new ArrayList<>();
        KeyTable.commands(beneath)
                .forEach(command -> lines.add(new Line(
                        command.row().heading(),
                        command.row().keyNames(),
                        command.row().does(),
                        Optional.of(command))));
        lines.addAll(marks(beneath.marks()));
        List<Line> own = List.copyOf(lines);
        keyLines().stream()
                .filter(line -> own.stream()
                        .noneMatch(each ->
                                each.keys().equals(line.keys()) && each.does().equals(line.does())))
                .forEach(lines::add);
        return lines;
    }

    /** The keys of all tables. */
    static List<Line> keyLines() {
        return TABLES.stream()
                .flatMap(table -> table.rows().stream())
                .filter(row -> !row.does().isEmpty())
                .map(row -> new Line(row.heading(), row.keyNames(), row.does(), Optional.empty()))
                .toList();
    }

    private List<Line> fitting(State state) {
        Sought sought = Sought.of(filter.text());
        return lines(state.close()).stream()
                .filter(line -> sought.isIn(line.keys() + " " + line.does()))
                .toList();
    }

    /** The rows as they are shown, long lines broken, each heading after a blank row. */
    List<Row> shown(State state) {
        int columns = state.columns() - keyColumns(state.columns()) - 2;
        List<Line> lines = fitting(state);
        List<Row> shown = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            if (i == 0 || !line.heading().equals(lines.get(i - 1).heading())) {
                shown.add(new Row(i, "", ""));
                shown.add(new Row(i, line.heading(), ""));
            }
            String keys = line.keys();
            for (String part : Text.wrapped(line.does(), columns)) {
                shown.add(new Row(i, keys, part));
                keys = "";
            }
        }
        return shown.isEmpty() ? shown : shown.subList(1, shown.size());
    }

    private static int keyColumns(int columns) {
        return columns < WIDE ? FEWER_KEY_COLUMNS : KEY_COLUMNS;
    }

    /** How many rows are shown at once. */
    private static int room(State state) {
        return Math.max(1, state.rows() - TOP - FOOT);
    }

    private State read(State state, int further) {
        ListBox<Line> list = new ListBox<>(fitting(state), marked);
        return list.end(further, "line")
                .map(state::says)
                .orElseGet(() ->
                        state.show(new HelpScreen(filter, list.move(further).marked())));
    }

    /** A page is counted in rows; it may end with a blank one and a heading. */
    private State page(State state, int way) {
        List<Row> rows = shown(state);
        return new ListBox<>(rows, firstOf(rows, marked))
                .move(way * Math.max(1, room(state) - 3))
                .current()
                .map(row -> state.show(new HelpScreen(filter, row.line())))
                .orElse(state);
    }

    private State chosen(State state) {
        return new ListBox<>(fitting(state), marked)
                .current()
                .flatMap(Line::command)
                .map(command -> command.done(state.close()))
                .orElseGet(() -> state.says("This is for another screen, and only to be read here."));
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
        return state.show(new HelpScreen(line, line.text().equals(filter.text()) ? marked : 0));
    }

    /** The keys of the line and what they do, which may take more than the line of the caret. */
    @Override
    public String spoken(State before, State now) {
        return new ListBox<>(fitting(now), marked)
                .current()
                .map(line -> line.keys() + ": " + line.does() + ".")
                .orElse(NOTHING);
    }

    @Override
    public String name(State state) {
        return "Help";
    }

    @Override
    public void paint(Frame frame, State state) {
        List<Row> rows = shown(state);
        ListBox<Row> list = new ListBox<>(rows, firstOf(rows, marked));
        int count = fitting(state).size();
        String part = (count == 0 ? 0 : marked + 1) + " of " + count;
        frame.write(frame.width() - part.length() - 1, 0, part, Style.FAINT);
        int field = frame.write(1, 0, "Help", Style.HEADING) + 2;
        list.each(TOP, room(state), (row, index, y) -> {
            int end = frame.write(1, y, row.keys(), row.isHeading() ? Style.HEADING : Style.KEY);
            frame.write(Math.max(1 + keyColumns(frame.width()), end + 1), y, row.does(), Style.TEXT);
            if (row.line() == marked && !row.isHeading()) {
                frame.paint(1, y, frame.width() - 2, Style.CURSOR);
            }
        });
        filter.paintFilter(frame, field, 0, frame.width() - part.length() - 3, marked == 0);
        if (count == 0) {
            frame.write(1, TOP, NOTHING, Style.FAINT);
        }
        state.notice().paint(frame, frame.height() - FOOT);
        KEYS.hints(frame, "Enter do it", "Page Down page", "Esc close");
    }

    /** The first row of a line; its heading where the list begins with it. */
    private static int firstOf(List<Row> rows, int line) {
        int at = 0;
        while (at < rows.size() - 1
                && (rows.get(at).line() < line || rows.get(at).isHeading())) {
            at++;
        }
        return at;
    }
}
