package versewind.screen.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import versewind.organ.Count;
import versewind.plan.Plan;
import versewind.plan.Silenced;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.Advice;
import versewind.rules.Finding;
import versewind.rules.Mend;
import versewind.rules.Touch;
import versewind.screen.state.FormBox;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Listing;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.sheet.Wording;

/**
 * The findings of the plan, over it: a list, the marked one in full with its mend, and how to play its verse.
 *
 * @param list all findings, the weightiest first; mends are looked for when they are to be shown or made
 * @param people before how many, where that is not the service's number
 * @param shown beneath what
 */
public record FindingsScreen(ListBox<Finding> list, OptionalInt people, Shown shown) implements Listing<Finding> {

    /** What findings are shown beneath. */
    public enum Shown {
        /** In a window over the plan. */
        PLAN,
        /** Under the curve of the whole service. */
        CURVE
    }

    public static final KeyTable<FindingsScreen> KEYS = KeyTable.<FindingsScreen>under("Among the findings")
            .list("finding")
            .key("Enter", "go there", marked(FindingsScreen::goThere))
            .key("F", "fix, and go on to the next that has a fix", marked(FindingsScreen::mend))
            .key("x, Delete", "ignore in this verse, or no longer", marked(FindingsScreen::silence))
            .key("T", "describe how its verse is played: touch and breath", FindingsScreen::sayHow)
            .key("u, Ctrl-Z", "undo", again(ArrangeCommands::undo))
            .key("U, Ctrl-Y", "redo", again(ArrangeCommands::redo))
            .key("Esc, q", "close", (screen, state) -> state.close());

    private static final String NOTHING = "No remarks.";
    private static final int WIDTH = 76;
    private static final int NUMBER = 5;
    private static final int LABEL = 8;
    private static final int SEVERITY = 9;

    /** Rows for a finding in full and its mend on a small screen; on others, one for so many rows of the screen. */
    private static final int LEAST_FULL_ROWS = 3;

    private static final int ROWS_A_FULL_ROW = 6;

    /** Rows that a long mend may have where the finding is long, too. */
    static final int MEND_ROWS = 2;

    /** From this height on it is said how to play. */
    private static final int TALL = 22;

    /** The same under a curve. */
    private static final int TALLER = 36;

    private static final int MOST_CURVE_ROWS = 20;

    /** What a key does with the marked finding. */
    @FunctionalInterface
    private interface OnFinding {
        State on(FindingsScreen screen, State state, PlanEdit work, Finding finding);
    }

    private static KeyTable.Action<FindingsScreen> marked(OnFinding action) {
        return (screen, state) -> state.onWork(work -> screen.list
                .current()
                .map(finding -> action.on(screen, state, work, finding))
                .orElseGet(() -> state.says("No remarks.")));
    }

    /** What is done with the plan, and the findings after it. */
    private static KeyTable.Action<FindingsScreen> again(PlanScreen.OnPlan action) {
        return (screen, state) -> state.onWork(work -> {
            State after = action.on(state, work);
            return after.onWork(now -> after.show(of(now, screen.people, screen.shown)));
        });
    }

    /** The findings over the plan; where they are heard, from the first on. */
    static State open(State state, PlanEdit work) {
        FindingsScreen screen = of(work, OptionalInt.empty(), Shown.PLAN);
        return state.open(state.isSpoken() ? screen.marking(0) : screen);
    }

    /** The findings under the curve of the service. */
    static State underCurve(State state, PlanEdit work) {
        return state.open(of(work, OptionalInt.empty(), Shown.CURVE));
    }

    private static final Comparator<Finding> WEIGHTIEST_FIRST =
            Comparator.comparing(Finding::isSilenced).thenComparing(Finding::severity);

    /** The weightiest first, marked at the first one of the current verse, or else of its hymn. */
    static FindingsScreen of(PlanEdit work, OptionalInt people, Shown shown) {
        List<Finding> rows = Advice.on(work.sound()).unmended(attended(work.plan(), people)).stream()
                .sorted(WEIGHTIEST_FIRST)
                .toList();
        VersePlace here = work.place();
        int marked = IntStream.concat(
                        where(rows, finding -> finding.place().equals(here)),
                        where(rows, finding -> finding.place().hymn() == here.hymn()))
                .findFirst()
                .orElse(0);
        return new FindingsScreen(new ListBox<>(rows, marked), people, shown);
    }

    private static IntStream where(List<Finding> rows, Predicate<Finding> which) {
        return IntStream.range(0, rows.size()).filter(i -> which.test(rows.get(i)));
    }

    /**
     * With the next finding marked that has a fix, from a row on and then from the top; the same row where none has.
     */
    private FindingsScreen atNextFix(PlanEdit work, int from) {
        List<Finding> rows = list.rows();
        int next = IntStream.concat(IntStream.range(Math.min(from, rows.size()), rows.size()), IntStream.range(0, from))
                .filter(i -> i < rows.size())
                .filter(i ->
                        !rows.get(i).isSilenced() && mend(work, rows.get(i)).isPresent())
                .findFirst()
                .orElse(from);
        return new FindingsScreen(list.mark(next), people, shown);
    }

    /** The plan before a number of people, if one is given. */
    private static Plan attended(Plan plan, OptionalInt people) {
        return people.isPresent() ? plan.withPeople(people.getAsInt()) : plan;
    }

    /** Asks before how many people the plan is to be looked at. */
    static FormBox attendedForm(PlanEdit work) {
        String hint = "how many, 1 to " + Verse.MOST_PEOPLE + "; "
                + work.plan().heading().people() + " are expected";
        return FormBox.of(
                "If this many people come",
                List.of(FormBox.Field.of("People", "", hint)),
                (form, closed) ->
                        closed.open(of(work, OptionalInt.of(form.number(0, 1, Verse.MOST_PEOPLE)), Shown.PLAN)));
    }

    /** What mends a finding of the list. */
    private Optional<Mend> mend(PlanEdit work, Finding finding) {
        return Advice.on(work.sound())
                .mended(attended(work.plan(), people), finding)
                .mend();
    }

    private boolean hasFix(State state) {
        return state.work()
                .flatMap(work -> list.current().flatMap(finding -> mend(work, finding)))
                .isPresent();
    }

    private State goThere(State state, PlanEdit work, Finding finding) {
        return state.close().with(work.at(finding.place()));
    }

    private State mend(State state, PlanEdit work, Finding finding) {
        Optional<Mend> found = mend(work, finding);
        if (found.isEmpty()) {
            return state.show(atNextFix(work, list.marked())).says("There is no single change that fixes it.");
        }
        Mend mend = found.get();
        State after = PlanChanges.edit(state, work, mend.on(work.plan()), finding.place());
        return after.onWork(fixed -> after.show(of(fixed, people, shown).atNextFix(fixed, list.marked()))
                .with(fixed.at(work.place()))
                .says("Done: " + mend.words() + " u to undo."));
    }

    private State silence(State state, PlanEdit work, Finding finding) {
        VersePlace place = finding.place();
        if (finding.isSilenced()) {
            return change(
                    state,
                    work,
                    place,
                    work.plan().verse(place).hearing(finding.rule().word()),
                    "No longer ignored.");
        }
        return state.open(FormBox.of(
                        "Ignore: " + finding.rule().word(),
                        List.of(FormBox.Field.of("Note", "", "the reason, kept in the plan; may be blank")),
                        (form, closed) -> change(
                                closed,
                                work,
                                place,
                                work.plan()
                                        .verse(place)
                                        .silencing(new Silenced(finding.rule().word(), form.text(0))),
                                "Ignored in this verse. Press x on it to see it again."))
                .leaving((form, closed) -> closed.show(of(work, people, shown))));
    }

    private State change(State state, PlanEdit work, VersePlace place, Verse verse, String sentence) {
        return edited(state, work, work.plan().withVerse(place, verse), place, sentence);
    }

    /** The list as it is after a change, marked near where it was. */
    private State edited(State state, PlanEdit work, Plan plan, VersePlace place, String sentence) {
        State after = PlanChanges.edit(state, work, plan, place);
        return after.onWork(edited -> after.show(of(edited, people, shown)).says(sentence));
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public FindingsScreen marking(int row) {
        return new FindingsScreen(list.mark(row), people, shown);
    }

    /** With what fixes it. */
    @Override
    public String words(Finding finding, State state) {
        return state.work()
                .map(work -> FindingWords.words(finding, work)
                        + mend(work, finding)
                                .map(mend -> " Fix: " + mend.words())
                                .orElse(""))
                .orElse("");
    }

    @Override
    public Layer layer() {
        return shown == Shown.PLAN ? Layer.WINDOW : Layer.SHEET;
    }

    /** How the service stands, when its curve comes up; else the finding, and at first the keys that help it. */
    @Override
    public String spoken(State before, State now) {
        boolean isNew = !(before.top() instanceof FindingsScreen);
        if (shown == Shown.CURVE && isNew) {
            return (before.top() instanceof SearchScreen ? "" : "Curve of the service. ")
                    + now.work().map(SpokenView::summary).orElse("") + " "
                    + (list.isEmpty() ? "Esc closes." : "Esc closes; then f lists " + findings() + ".");
        }
        if (list.isEmpty()) {
            return NOTHING;
        }
        String keys = (hasFix(now) ? " F fixes it," : "") + " Enter goes there, x ignores it, T says how to play it.";
        return Listing.super.spoken(before, now) + (isNew ? keys : "");
    }

    private String findings() {
        return Count.of(list.size(), "finding");
    }

    @Override
    public String name(State state) {
        return shown == Shown.CURVE ? "" : title();
    }

    @Override
    public void paint(Frame frame, State state) {
        state.work().ifPresent(work -> paint(frame, work, state.isSpoken()));
        if (shown == Shown.CURVE) {
            state.notice().paint(frame);
        }
    }

    /** The curve, and under it a box for the rest. */
    private Box underCurve(Frame frame, PlanEdit work, boolean isSpoken) {
        int rows = Math.max(CurveView.LEAST_ROWS, Math.min(frame.height() * 2 / 5, MOST_CURVE_ROWS));
        frame.write(1, 0, frame.fit(work.plan().heading().title(), frame.width() - 2), Style.HEADING);
        PlanEdit marked =
                list.current().map(finding -> work.at(finding.place())).orElse(work);
        Box curve = new Box(1, 1, frame.width() - 2, rows);
        if (isSpoken) {
            Box.write(frame, 1, 1, Text.wrapped(SpokenView.curve(work), curve.width()), rows, Style.TEXT);
        } else {
            CurveView.paint(frame, curve, marked, work.plan().places());
        }
        int y = rows + 1;
        frame.write(0, y, frame.mark(Mark.RULE).repeat(frame.width()), Style.FAINT);
        frame.write(2, y, " " + title() + " ", Style.HEADING);
        return new Box(1, y + 1, frame.width() - 2, frame.height() - y - 2);
    }

    private void paint(Frame frame, PlanEdit work, boolean isSpoken) {
        VersePlace place = list.current().map(Finding::place).orElse(work.place());
        int columns = shown == Shown.CURVE ? frame.width() - 2 : Math.min(WIDTH, frame.width() - 4);
        List<String> playing =
                frame.height() < (shown == Shown.CURVE ? TALLER : TALL) ? List.of() : playing(work, place, columns);
        int fullRows = isSpoken ? MEND_ROWS : Math.max(LEAST_FULL_ROWS, frame.height() / ROWS_A_FULL_ROW);
        int under = 1 + (list.isEmpty() ? 0 : 1 + fullRows) + (playing.isEmpty() ? 0 : playing.size() + 1);
        Box box = shown == Shown.CURVE
                ? underCurve(frame, work, isSpoken)
                : Box.open(frame, title(), WIDTH, Math.max(1, list.size()) + under + 1);
        Box window = box.rows(0, Math.max(1, box.height() - under - 1));
        list.paint(
                frame,
                window,
                row -> FindingWords.words(row, work),
                (row, index, y) -> paintRow(frame, work, row, box, y));
        list.paintPosition(frame, box, window.height(), "finding");
        int y = box.y() + box.height() - 2 - playing.size();
        if (!playing.isEmpty()) {
            Verse verse = work.at(place).verse().orElseThrow();
            frame.write(box.x(), y, "How to play " + Wording.called(verse), Style.HEADING);
            box.write(frame, y + 1, playing, Style.TEXT);
        }
        if (list.isEmpty()) {
            frame.write(box.x(), box.y(), NOTHING, Style.GOOD);
            KEYS.hints(frame, box, "Esc");
            return;
        }
        Finding marked = list.current().orElseThrow();
        List<String> full = FindingWords.full(frame, marked, mend(work, marked), box.width(), fullRows);
        box.write(frame, box.y() + window.height() + 1, full, Style.TEXT);
        KEYS.hints(frame, box, "F fix", "Enter", "x ignore", "Esc");
    }

    private String title() {
        return people.isPresent()
                ? "Findings, if " + people.getAsInt() + (people.getAsInt() == 1 ? " comes" : " come")
                : "Findings";
    }

    /** Touch, breath and lag of a verse, with their reasons. */
    private List<String> playing(PlanEdit work, VersePlace place, int columns) {
        if (work.at(place).verse().isEmpty()) {
            return List.of();
        }
        Touch touch = Advice.on(work.sound()).touch(attended(work.plan(), people), place);
        List<String> lines = new ArrayList<>(Text.wrapped(touch.sentence(), columns));
        lines.addAll(Text.wrapped(touch.breath(), columns));
        touch.lag().ifPresent(lag -> lines.addAll(Text.wrapped(lag, columns)));
        return lines;
    }

    private State sayHow(State state) {
        return state.onWork(work -> {
            VersePlace place = list.current().map(Finding::place).orElse(work.place());
            String label = work.at(place).verse().map(Verse::label).orElse("no verse");
            return state.says(label + ": " + String.join(" ", playing(work, place, Integer.MAX_VALUE)));
        });
    }

    private static void paintRow(Frame frame, PlanEdit work, Finding finding, Box box, int y) {
        Style style = finding.isSilenced() ? Style.FAINT : Style.TEXT;
        frame.write(box.x(), y, frame.fit(FindingWords.hymn(finding, work), NUMBER - 1), style);
        frame.write(box.x() + NUMBER, y, frame.fit(FindingWords.label(finding, work), LABEL - 1), style);
        int x = box.x() + NUMBER + LABEL;
        frame.write(x, y, FindingWords.word(finding), FindingWords.style(finding));
        x += SEVERITY;
        frame.write(x, y, frame.fit(finding.sentence(), box.end() - x), style);
    }
}
