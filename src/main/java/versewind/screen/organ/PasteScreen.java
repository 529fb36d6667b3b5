package versewind.screen.organ;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.Count;
import versewind.screen.state.Chooser;
import versewind.screen.state.Covering;
import versewind.screen.state.FormBox;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Leaving;
import versewind.screen.state.Question;
import versewind.screen.state.State;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.TextBlock;
import versewind.stoplist.Confidence;
import versewind.stoplist.ReadDivision;
import versewind.stoplist.ReadOrgan;
import versewind.stoplist.ReadPistons;
import versewind.stoplist.ReadStop;
import versewind.stoplist.StopList;
import versewind.stoplist.Unread;

/**
 * The text of a stop list that is pasted and edited, over the whole screen; what was understood of it, and the organ
 * made of it.
 *
 * @param text what it holds so far
 */
public record PasteScreen(TextBlock text) implements Covering {

    public static final KeyTable<PasteScreen> KEYS = KeyTable.<PasteScreen>under("Pasting a stop list")
            .key("Ctrl-S", "read the list", PasteScreen::read)
            .key("Ctrl-U", "clear the text", PasteScreen::clear)
            .key("Esc", "close", PasteScreen::close);

    public static final PasteScreen EMPTY = new PasteScreen(TextBlock.EMPTY);

    /** The longest text that can be pasted, in UTF-16 units. */
    private static final int LONGEST = 2_000_000;

    /** How the id of a row begins that stands for a line of the text. */
    private static final String LINE = "line ";

    /** How the id of a row ends that stands for a stop. */
    private static final String STOP = " stop";

    private static final String FAMILIES =
            " To count it otherwise, write behind it (principal), (flute), (string), (chorus reed) or (solo reed).";

    private static final String TITLE = "New organ from a stop list";
    private static final String HINT = "Paste the stop list here as it was published.";

    private static final int TOP = 2;
    private static final int FOOT = 3;

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public boolean takesText() {
        return true;
    }

    @Override
    public State typed(Key key, State state) {
        TextBlock after = text.after(key);
        return after.text().length() > LONGEST ? tooLong(state) : state.show(new PasteScreen(after));
    }

    @Override
    public State pasted(String more, State state) {
        return text.text().length() + more.length() > LONGEST
                ? tooLong(state)
                : state.show(new PasteScreen(text.typed(more)));
    }

    private static State tooLong(State state) {
        return state.says("Too long: the limit is " + LONGEST + " characters.");
    }

    /** Asks before more than a line is lost. */
    private State clear(State state) {
        return Question.before(
                (int) text.text().lines().count(),
                state,
                "Clear the whole text, " + lines() + "?",
                closed -> closed.show(EMPTY).says("The text is cleared."));
    }

    private String lines() {
        return Count.of(text.text().lines().count(), "line");
    }

    /** Closes the box; asks first if a text would be lost. */
    private State close(State state) {
        return text.text().isBlank()
                ? state.doors().organs(state, "")
                : state.open(new Question(
                        "Close without reading the list? Its text will be lost.",
                        List.of(
                                new Question.Answer("d", "discard the text", closed -> closed.doors()
                                        .organs(closed, "")),
                                Question.Answer.STAY)));
    }

    /** Shows what was understood, and what was not and why. */
    private State read(State state) {
        if (text.text().isBlank()) {
            return state.says("Paste or type a stop list first.");
        }
        Optional<String> refusal = StopList.refusal(text.text());
        if (refusal.isPresent()) {
            return state.says(refusal.get());
        }
        ReadOrgan organ = ReadOrgan.of(text.text());
        StopList list = organ.list();
        int doubts = list.doubts().size();
        String checked = list.wantsAttention()
                ? "please check what is marked"
                : organ.assumed().isEmpty() ? "nothing is in doubt" : "please check what was assumed";
        String title = counted(list) + "; " + (doubts == 0 ? checked : Count.of(doubts, "line") + " not understood");
        return state.open(Chooser.of(title, rows(organ), this::chosen)
                .doing(id -> id.startsWith(LINE) ? "correct the line" : "name the organ"));
    }

    /** "21 stops, 4 couplers, 1 tremulant, 6 pistons". */
    private static String counted(StopList list) {
        int divisionals = list.pistons().divisionals().values().stream()
                .mapToInt(Integer::intValue)
                .sum();
        int pistons = list.pistons().generals() + divisionals;
        int tremulants = list.tremulants().size();
        return Count.of(list.stops().count(), "stop") + ", "
                + Count.of(list.couplers().size(), "coupler")
                + (tremulants == 0 ? "" : ", " + Count.of(tremulants, "tremulant"))
                + (pistons == 0 ? "" : ", " + Count.of(pistons, "piston"));
    }

    /** Goes to a line of the text, or on to the name of the organ. */
    private State chosen(String id, State choosing) {
        if (!id.startsWith(LINE)) {
            return named(choosing);
        }
        int line = Integer.parseInt(id.substring(LINE.length(), id.indexOf(',')));
        PasteScreen there = new PasteScreen(text.atLine(line));
        return choosing.close()
                .show(there)
                .says("Correct line " + line + ": " + there.line() + "." + (id.endsWith(STOP) ? FAMILIES : "")
                        + " Ctrl-S reads the list again.");
    }

    /** The line of the caret, without blanks around it. */
    private String line() {
        return text.line().strip();
    }

    private static List<Chooser.Row> rows(ReadOrgan organ) {
        StopList list = organ.list();
        List<Chooser.Row> rows = new ArrayList<>();
        List<String> assumed = organ.assumed();
        boolean isClear = !list.wantsAttention() && list.doubts().isEmpty() && assumed.isEmpty();
        add(rows, isClear ? "Go on" : "Go on as it is", "");
        list.doubts().forEach(unread -> addUnread(rows, unread, "not understood"));
        assumed.forEach(remark -> add(rows, remark, ""));
        for (ReadDivision division : list.divisions()) {
            String manual =
                    division.isPedal() ? "pedal" : "manual " + division.manual().getAsInt();
            add(rows, division.name(), manual + (division.enclosed() ? ", in a swell box" : ""));
            for (ReadStop stop : division.stops()) {
                rows.add(new Chooser.Row(
                        LINE + stop.line() + ", " + rows.size() + STOP,
                        "  " + stop.name() + " " + pitch(stop),
                        stop.family().word()
                                + (stop.how() == Confidence.NAME
                                        ? ""
                                        : ", " + stop.how().word())
                                + (stop.supposed() ? "; pitch assumed" : "")
                                + stop.isBoxed()
                                        .map(boxed -> boxed ? "; in the box" : "; outside the box")
                                        .orElse("")));
            }
        }
        if (list.pistons().any()) {
            add(rows, "Pistons", pistons(list.pistons()));
        }
        list.couplers().forEach(coupler -> {
            String joins = coupler.source() + " on " + coupler.keyboard();
            boolean isSaid = coupler.name().equals(coupler.source() + " to " + coupler.keyboard());
            add(rows, coupler.name(), !coupler.isWhole() ? "divisions not found" : isSaid ? "" : joins);
        });
        list.tremulants().forEach(tremulant -> add(rows, tremulant.name(), tremulant.division()));
        list.notUnderstood().stream()
                .filter(unread -> unread.weight() == Unread.Weight.NOTE)
                .forEach(unread -> addUnread(rows, unread, "note"));
        return rows;
    }

    private static String pistons(ReadPistons pistons) {
        List<String> counts = new ArrayList<>();
        if (pistons.generals() > 0) {
            counts.add(Count.of(pistons.generals(), "general"));
        }
        pistons.divisionals().forEach((division, count) -> counts.add(division + " " + count));
        return String.join(", ", counts);
    }

    private static String pitch(ReadStop stop) {
        String ranks = stop.family().isCompound() ? stop.ranks() + " ranks" : "";
        return (stop.feet() + (stop.supposed() ? "? " : " ") + ranks).strip();
    }

    private static void addUnread(List<Chooser.Row> rows, Unread unread, String what) {
        String id = LINE + unread.line() + ", " + rows.size();
        rows.add(new Chooser.Row(id, "Line " + unread.line() + ": " + unread.text(), what + ": " + unread.why()));
    }

    private static void add(List<Chooser.Row> rows, String first, String second) {
        rows.add(new Chooser.Row(Integer.toString(rows.size()), first, second));
    }

    /** Asks what the organ is called, in the place of what was understood. */
    private State named(State state) {
        ReadOrgan read = ReadOrgan.of(text.text());
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
                .map(organ -> Leaving.afterAsking(
                        closed.open(form), "make the organ", effects -> effects.makeOrgan(organ.instrument())))
                .orElse(closed);
    }

    /** What is to be done when it comes up; how long it is after text was pasted; else the line gone to. */
    @Override
    public String spoken(State before, State now) {
        boolean isKnown = before.top() instanceof PasteScreen;
        if (!now.notice().text().isBlank() && !isKnown) {
            return "";
        }
        String read = lines() + "; Ctrl-S reads " + (text.text().lines().count() == 1 ? "it." : "them.");
        if (!isKnown) {
            return TITLE + ". " + (text.text().isBlank() ? HINT + " Ctrl-S reads it, Esc closes." : read);
        }
        TextBlock was = ((PasteScreen) before.top()).text;
        boolean isPasted = text.text().length() > was.text().length() + 1;
        boolean isOtherLine = text.row() != was.row() && text.text().equals(was.text());
        return isPasted ? read : !isOtherLine ? "" : line().isEmpty() ? "Blank line." : line();
    }

    @Override
    public void paint(Frame frame, State state) {
        frame.clear(0, 0, frame.width(), frame.height());
        String count = lines();
        frame.write(1, 0, TITLE, Style.HEADING);
        frame.write(frame.width() - count.length() - 1, 0, count, Style.FAINT);
        text.paint(frame, 1, TOP, frame.width() - 2, Math.max(1, frame.height() - TOP - FOOT));
        if (text.text().isEmpty()) {
            frame.write(3, TOP, frame.fit(HINT, frame.width() - 4), Style.FAINT);
        }
        state.notice().paint(frame, frame.height() - 2);
        KEYS.hints(frame, "Ctrl-S", "Esc", "Ctrl-U");
    }
}
