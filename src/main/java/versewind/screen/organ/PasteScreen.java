package versewind.screen.organ;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import versewind.screen.state.Chooser;
import versewind.screen.state.FormBox;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Leaving;
import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.stoplist.ReadDivision;
import versewind.stoplist.ReadOrgan;
import versewind.stoplist.ReadStop;
import versewind.stoplist.StopList;
import versewind.stoplist.Unread;

/**
 * The box into which a stop list is pasted, over the whole screen; what was understood of it, and the organ made of it.
 *
 * @param text what it holds so far
 */
public record PasteScreen(String text) implements Screen {

    public static final KeyTable<PasteScreen> KEYS = KeyTable.<PasteScreen>under("Pasting a stop list")
            .key("Ctrl-S", "read the list", PasteScreen::read)
            .key("Ctrl-U", "clear the text", (screen, state) -> state.show(new PasteScreen("")))
            .key("Esc", "close", (screen, state) -> state.doors().organs(state));

    public static final PasteScreen EMPTY = new PasteScreen("");

    /** The longest list that can be pasted, in UTF-16 units. */
    private static final int LONGEST = 100_000;

    private static final int TOP = 2;
    private static final int FOOT = 3;

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public Layer layer() {
        return Layer.SHEET;
    }

    @Override
    public boolean takesText() {
        return true;
    }

    /** A key that types or takes away at the end. */
    @Override
    public State typed(Key key, State state) {
        if (key.control()) {
            return state;
        }
        return switch (key.named()) {
            case CHARACTER -> with(Character.toString(key.character()), state);
            case ENTER -> with("\n", state);
            case BACKSPACE ->
                text.isEmpty()
                        ? state
                        : state.show(new PasteScreen(text.substring(0, text.offsetByCodePoints(text.length(), -1))));
            case UP, DOWN, LEFT, RIGHT, HOME, END, PAGE_UP, PAGE_DOWN, ESCAPE, TAB, BACK_TAB, INSERT, DELETE -> state;
            case F1, F2, F3, F4, F5, F6, F7, F8, F9, F10, F11, F12 -> state;
        };
    }

    /** With more text at the end, if there is room for it. */
    private State with(String more, State state) {
        return text.length() + more.length() <= LONGEST ? state.show(new PasteScreen(text + more)) : state;
    }

    /** Pasted text keeps its lines. */
    @Override
    public State pasted(String more, State state) {
        return text.length() + more.length() <= LONGEST
                ? with(more, state)
                : state.says("Too long: the limit is " + LONGEST + " characters.");
    }

    /** Shows what was understood, and what was not and why. */
    private State read(State state) {
        if (text.isBlank()) {
            return state.says("Paste or type a stop list first.");
        }
        StopList list = ReadOrgan.of(text).list();
        int doubts = list.doubts().size();
        String title = counted(list.stops().count(), "stop") + ", "
                + counted(list.couplers().size(), "coupler") + "; "
                + (doubts == 0 ? "every line understood" : counted(doubts, "line") + " not understood");
        return state.open(Chooser.of(title, rows(list), (id, choosing) -> named(choosing), UnaryOperator.identity()));
    }

    private static String counted(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static List<Chooser.Row> rows(StopList list) {
        List<Chooser.Row> rows = new ArrayList<>();
        list.doubts().forEach(unread -> addUnread(rows, unread, "not understood"));
        for (ReadDivision division : list.divisions()) {
            String manual =
                    division.isPedal() ? "pedal" : "manual " + division.manual().getAsInt();
            add(rows, division.name(), manual + (division.enclosed() ? ", in a swell box" : ""));
            division.stops()
                    .forEach(stop -> add(
                            rows,
                            "  " + stop.name() + " " + pitch(stop),
                            stop.family().word() + ", " + stop.how().word()));
        }
        list.couplers().forEach(coupler -> {
            String joins = coupler.source() + " on " + coupler.keyboard();
            add(rows, coupler.name(), coupler.isWhole() ? joins : "divisions not found");
        });
        list.tremulants().forEach(tremulant -> add(rows, tremulant.name(), tremulant.division()));
        list.notUnderstood().stream()
                .filter(unread -> unread.weight() == Unread.Weight.NOTE)
                .forEach(unread -> addUnread(rows, unread, "note"));
        return rows;
    }

    private static String pitch(ReadStop stop) {
        String ranks = stop.family().isCompound() ? stop.ranks() + " ranks" : "";
        return (stop.feet() + (stop.supposed() ? "? " : " ") + ranks).strip();
    }

    private static void addUnread(List<Chooser.Row> rows, Unread unread, String what) {
        add(rows, "Line " + unread.line() + ": " + unread.text(), what);
        add(rows, "    " + unread.why(), "");
    }

    private static void add(List<Chooser.Row> rows, String first, String second) {
        rows.add(new Chooser.Row(Integer.toString(rows.size()), first, second));
    }

    /** Asks what the organ is called, in the place of what was understood. */
    private State named(State state) {
        ReadOrgan read = ReadOrgan.of(text);
        if (read.made("New organ").isEmpty()) {
            return state.close()
                    .warns(read.objections().stream()
                            .findFirst()
                            .orElse("The list has no manual with a stop, so it cannot become an organ."));
        }
        String hint = "name of the organ, also used for its file; needed";
        return state.show(FormBox.of(
                "New organ",
                List.of(FormBox.Field.of("Name", read.heading(), hint)),
                (form, closed) -> made(form, closed, read)));
    }

    private static State made(FormBox form, State closed, ReadOrgan read) {
        if (form.isBlank(0)) {
            throw new FormBox.Wrong(0, "Enter a name.");
        }
        return read.made(form.text(0))
                .map(organ -> Leaving.afterAsking(closed.open(form), effects -> effects.makeOrgan(organ.instrument())))
                .orElse(closed);
    }

    @Override
    public void paint(Frame frame, State state) {
        frame.clear(0, 0, frame.width(), frame.height());
        List<String> lines = new ArrayList<>(text.lines().toList());
        String count = lines.size() + (lines.size() == 1 ? " line" : " lines");
        frame.write(1, 0, "New organ from a stop list", Style.HEADING);
        frame.write(frame.width() - count.length() - 1, 0, count, Style.FAINT);
        if (text.isEmpty() || text.endsWith("\n")) {
            lines.add("");
        }
        ListBox<String> list = new ListBox<>(lines, lines.size() - 1);
        int room = Math.max(1, frame.height() - TOP - FOOT);
        list.each(TOP, room, (line, index, y) -> frame.write(1, y, frame.fit(line, frame.width() - 2), Style.TEXT));
        int x = 1 + Text.columns(list.current().orElseThrow());
        frame.caret(Math.min(frame.width() - 1, x), TOP + Math.min(lines.size(), room) - 1);
        if (text.isEmpty()) {
            String hint = "Paste the stop list here as it was published.";
            frame.write(3, TOP, frame.fit(hint, frame.width() - 4), Style.FAINT);
        }
        state.notice().paint(frame, frame.height() - 2);
        KEYS.hints(frame, 1, frame.height() - 1, frame.width() - 1, Style.FAINT, "Ctrl-S", "Esc", "Ctrl-U");
    }
}
