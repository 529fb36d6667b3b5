package versewind.screen.desk;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.rules.DynamicSteps;
import versewind.screen.state.Effect;
import versewind.screen.state.Effects;
import versewind.screen.state.Event;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Leaving;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Question;
import versewind.screen.state.State;
import versewind.screen.toolkit.Enlarged;
import versewind.screen.toolkit.Flow;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/** The desk during a service: the current verse fills the screen, to be played from. No key here changes the plan. */
public record DeskScreen(DeskNotes notes) implements AtOrgan {

    private static final String LOUDER = "<";
    private static final String SOFTER = ">";

    public static final KeyTable<DeskScreen> KEYS = KeyTable.<DeskScreen>under("At the desk")
            .key(
                    "Space, Enter, Page Down",
                    "on to the next verse",
                    on((desk, state, work) -> desk.turn(state, work, 1)))
            .key(
                    "Down, Right",
                    "the same, for page-turning pedals",
                    on((desk, state, work) -> desk.turn(state, work, 1)))
            .key(
                    "Backspace, Page Up",
                    "back to the previous verse",
                    on((desk, state, work) -> desk.turn(state, work, -1)))
            .key("Up, Left", "the same", on((desk, state, work) -> desk.turn(state, work, -1)))
            .key(LOUDER, "louder by a step than planned", on((desk, state, work) -> desk.step(state, work, 1)))
            .key(SOFTER, "softer by a step", on((desk, state, work) -> desk.step(state, work, -1)))
            .key("+, =", "more people are present", on((desk, state, work) -> desk.count(state, work, 1)))
            .key("-", "fewer people are present", on((desk, state, work) -> desk.count(state, work, -1)))
            .key("j", "say all that is drawn, and how it is played", on(DeskScreen::tell))
            .key(
                    "y",
                    "feedback: how the organ was in every verse; R in the plan lists what was kept",
                    on((desk, state, work) -> FeedbackScreen.open(state, work, desk.notes)))
            .key("L", "large letters, or the usual ones", on((desk, state, work) -> state.withOtherLetters()))
            .key(
                    "Esc, q",
                    "back to the plan; after versewind desk, press twice to leave",
                    on((desk, state, work) -> desk.leave(state)));

    private static final int GUTTER = 12;
    private static final int NARROW_GUTTER = 6;
    private static final int NARROW = 60;

    /**
     * It was found what makes a verse stronger and softer; it is kept for as long as the desk is open.
     *
     * @param of which verse, and for how many people
     * @param ladder its steps
     */
    public record LadderFound(Effect.LadderOf of, DynamicSteps ladder) implements Event {
        @Override
        public State on(State state) {
            DeskNotes.Found found = new DeskNotes.Found(of, ladder);
            return state.update(DeskScreen.class, desk -> new DeskScreen(desk.notes.with(found)));
        }
    }

    @FunctionalInterface
    private interface OnWork {
        State on(DeskScreen desk, State state, PlanEdit work);
    }

    /** Any key but the one that leaves takes back that it was pressed once. */
    private static KeyTable.Action<DeskScreen> on(OnWork action) {
        return (desk, state) -> {
            DeskScreen staying = new DeskScreen(desk.notes.with(DeskNotes.Leaving.NO));
            return state.onWork(work -> action.on(desk, state.show(staying), work));
        };
    }

    /** The desk over the plan, at the current verse. */
    public static State open(State state, PlanEdit work) {
        return open(
                state, work, work.history().isUnsaved() ? DeskNotes.Opened.FROM_UNSAVED : DeskNotes.Opened.FROM_SAVED);
    }

    /** The desk for a plan that has just been opened for it; a question about the plan lies over it. */
    public static State alone(State state) {
        if (state.work().isEmpty()) {
            return state;
        }
        State desk = open(state, state.work().get(), DeskNotes.Opened.ALONE);
        return state.top() instanceof Question question ? desk.open(question) : desk;
    }

    private static State open(State state, PlanEdit work, DeskNotes.Opened opened) {
        Optional<VersePlace> place = work.plan().nearest(work.place());
        if (place.isEmpty() && opened != DeskNotes.Opened.ALONE) {
            return state.says("There is no verse to play yet.");
        }
        DeskScreen desk = new DeskScreen(DeskNotes.of(opened));
        return desk.at(state.closed().open(desk), work.at(place.orElse(VersePlace.START)));
    }

    /** The desk at the current verse; asks for the ladders of this verse and the next, unless they are known. */
    private State at(State state, PlanEdit work) {
        VersePlace here = work.place();
        List<Effect.LadderOf> wanted = work.verse().isEmpty()
                ? List.of()
                : Stream.concat(Stream.of(here), work.plan().further(here, 1).stream())
                        .filter(place -> notes.ladder(work, place).isEmpty())
                        .map(place -> notes.ladderOf(work, place))
                        .toList();
        State next = state.with(work).show(this);
        return wanted.isEmpty() ? next : next.wants(effects -> effects.findLadders(wanted));
    }

    private DeskScreen staying() {
        return new DeskScreen(notes.with(DeskNotes.Leaving.NO));
    }

    private State turn(State state, PlanEdit work, int step) {
        Optional<VersePlace> next = work.plan().further(work.place(), step);
        if (next.isPresent()) {
            return staying().at(state, work.at(next.get()));
        }
        return step > 0 && work.verse().isPresent()
                ? FeedbackScreen.open(state, work, notes)
                : state.says("This is the start of the service.");
    }

    private State tell(State state, PlanEdit work) {
        return work.verse().isEmpty() ? state : state.says(new DeskWords(state.marks(), work, notes).registered());
    }

    private State count(State state, PlanEdit work, int way) {
        int planned = work.plan().heading().people();
        int now = notes.people(work);
        int people = way > 0 ? Present.more(now, planned) : Present.fewer(now, planned);
        return new DeskScreen(staying().notes.counting(people)).at(state, work);
    }

    private State step(State state, PlanEdit work, int step) {
        if (work.verse().isEmpty()) {
            return state;
        }
        Optional<DynamicSteps> ladder = notes.ladder(work, work.place());
        if (ladder.isEmpty()) {
            return staying().at(state, work).says("Still working out what to draw. Press again.");
        }
        int steps = notes.steps(work.place()) + step;
        if (!DeskNotes.reaches(ladder.get(), steps)) {
            return state.says(step > 0 ? "There is no stronger step." : "There is no softer step.");
        }
        return new DeskScreen(staying().notes.stepping(work.place(), steps, ladder.get())).at(state, work);
    }

    /** Back to the plan; where the desk was opened alone, leaves the program when the key is pressed twice. */
    private State leave(State state) {
        if (notes.opened() != DeskNotes.Opened.ALONE) {
            return state.closed();
        }
        if (state.isUnsaved() || notes.leaving() == DeskNotes.Leaving.ASKED) {
            State left = Leaving.afterAsking(state, Leaving.LEAVE, Effects::quit);
            return left.wanted().isEmpty() ? left : state.wants(Effects::quit);
        }
        return state.show(new DeskScreen(notes.with(DeskNotes.Leaving.ASKED)))
                .says("Press Esc or q again to leave; any other key stays.");
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public String name(State state) {
        return "At the desk";
    }

    @Override
    public void paint(Frame frame, State state) {
        if (!state.isLarge()) {
            paintUsual(frame, state);
            return;
        }
        Frame small = new Frame(frame.width() / Enlarged.COLUMNS, frame.height() / Enlarged.ROWS, frame.marks());
        paintUsual(small, state);
        Enlarged.paint(small, frame, 0, 0);
    }

    private void paintUsual(Frame frame, State state) {
        PlanEdit work = state.work().orElseThrow();
        if (work.verse().isPresent()) {
            paint(frame, state, work);
        } else {
            frame.write(1, 0, work.plan().heading().title(), Style.HEADING);
            frame.write(1, 2, SpokenDesk.NO_VERSE, Style.TEXT);
        }
        if (!state.notice().text().isBlank()) {
            state.notice().paint(frame);
        } else if (state.top() == this) {
            KEYS.hints(
                    frame,
                    1,
                    frame.height() - 1,
                    frame.width() - 1,
                    Style.TEXT,
                    "Space on",
                    "Backspace previous",
                    "< > louder, softer",
                    "+ - present",
                    "y feedback",
                    notes.opened() == DeskNotes.Opened.ALONE ? "Esc leave" : "Esc back",
                    "? help");
        }
    }

    @Override
    public String spoken(State before, State now) {
        return now.work()
                .map(work -> new SpokenDesk(work, notes, new DeskWords(now.marks(), work, notes)).after(before))
                .orElse("");
    }

    private void paint(Frame frame, State state, PlanEdit work) {
        Marks marks = state.marks();
        DeskWords words = new DeskWords(marks, work, notes);
        DeskLayout layout = layout(frame, state, work, words);
        int whole = frame.width() - 2;
        paintHeader(frame, work);
        int who = paintLetters(frame, marks, work, words.piston(), layout)
                ? whole
                : paintPistonInWords(frame, words.piston(), layout) - 2;
        words.who(who).paint(frame, marks, 1, layout.who(), who, 1);
        words.level(whole).paint(frame, marks, 1, layout.level(), whole, 1);
        if (layout.note() >= 0) {
            frame.write(1, layout.note(), frame.fit(note(work), whole), Style.MESSAGE);
        }
        block(frame, marks, "Now", words.now(), layout.now(), layout.nowRows());
        // what is said begins on the line of the caret where it is read aloud
        frame.caret(1, state.isSpoken() ? frame.height() - noticeRows(frame, state) : layout.now());
        Flow drawn = words.drawn().fitting(blockColumns(frame), layout.drawnRows());
        block(frame, marks, "Drawn", drawn, layout.drawn(), layout.drawnRows());
        block(frame, marks, "Next", words.next(), layout.next(), layout.nextRows());
        paintLadder(frame, marks, words, layout);
    }

    /** The same in every verse of the service, unless names would be cut while rows are blank. */
    private DeskLayout layout(Frame frame, State state, PlanEdit work, DeskWords words) {
        int columns = blockColumns(frame);
        if (state.isSpoken()) {
            return DeskLayout.spoken(
                    frame.height() + 1 - noticeRows(frame, state),
                    words.now().rows(columns),
                    words.drawn().whole().rows(columns),
                    words.drawn().byTheRest().rows(columns),
                    words.next().rows(columns),
                    Math.max(
                            words.steps(1, columns, frame.height()).rows(columns),
                            words.steps(-1, columns, frame.height()).rows(columns)));
        }
        DeskLayout layout = DeskLayout.of(frame.height(), DeskWords.needs(state.marks(), work, notes, columns));
        return layout.louderRows() == 0
                ? layout
                : layout.lending(new DeskLayout.Wanted(
                        words.now().rows(columns),
                        words.drawn().whole().rows(columns),
                        words.steps(1, columns, layout.louderRows()).rows(columns),
                        words.steps(-1, columns, layout.softerRows()).rows(columns),
                        words.next().rows(columns),
                        !note(work).isBlank()));
    }

    private static int noticeRows(Frame frame, State state) {
        return Text.wrapped(state.notice().text(), frame.width() - 2).size();
    }

    private static void block(Frame frame, Marks marks, String name, Flow flow, int y, int rows) {
        if (rows > 0) {
            frame.write(1, y, name, Style.HEADING);
            flow.paint(frame, marks, gutter(frame), y, blockColumns(frame), rows);
        }
    }

    private static int gutter(Frame frame) {
        return frame.width() < NARROW ? NARROW_GUTTER : GUTTER;
    }

    private static int blockColumns(Frame frame) {
        return frame.width() - 1 - gutter(frame);
    }

    /** Stronger over softer or, where rows are few, beside each other with their keys alone. */
    private static void paintLadder(Frame frame, Marks marks, DeskWords words, DeskLayout layout) {
        int y = layout.ladder();
        int louder = layout.louderRows();
        int softer = layout.softerRows();
        if (louder > 0) {
            int columns = blockColumns(frame);
            block(frame, marks, LOUDER + " louder", words.steps(1, columns, louder), y, louder);
            block(frame, marks, SOFTER + " softer", words.steps(-1, columns, softer), y + louder, softer);
            frame.write(1, y, LOUDER, Style.KEY);
            frame.write(1, y + louder, SOFTER, Style.KEY);
            return;
        }
        int half = frame.width() / 2;
        int rest = frame.width() - half - 3;
        frame.write(1, y, LOUDER, Style.KEY);
        words.steps(1, half - 4, 1).paint(frame, marks, 3, y, half - 4, 1);
        frame.write(half, y, SOFTER, Style.KEY);
        words.steps(-1, rest, 1).paint(frame, marks, half + 2, y, rest, 1);
    }

    /** The hymn, how many are present, and how far the service is. */
    private void paintHeader(Frame frame, PlanEdit work) {
        Hymn hymn = work.hymn().orElseThrow();
        int people = notes.people(work);
        int planned = work.plan().heading().people();
        List<VersePlace> places = work.plan().places();
        String present =
                people + " present" + (people == planned || frame.width() < NARROW ? "" : " (" + planned + " planned)");
        String page = (places.indexOf(work.place()) + 1) + " of " + places.size();
        int pageX = frame.width() - 1 - Text.columns(page);
        int presentX = pageX - 2 - Text.columns(present);
        String title = (hymn.number() + " " + hymn.title()).strip();
        frame.write(1, 0, frame.fit(title, presentX - 3), Style.HEADING);
        frame.write(presentX, 0, present, people == planned ? Style.TEXT : Style.NEAR);
        frame.write(pageX, 0, page, Style.TEXT);
    }

    /**
     * The hymn's number and the verse, then the piston at the right in letters as large; without the number where that
     * is too long. Returns whether there was room for the piston, or there is none.
     */
    private static boolean paintLetters(Frame frame, Marks marks, PlanEdit work, String pistonName, DeskLayout layout) {
        String label = work.verse().orElseThrow().label();
        String number = work.hymn().map(Hymn::number).orElse("");
        Optional<BigLetters> piston = BigLetters.of(pistonName);
        int whole = frame.width() - 2;
        for (String text : List.of(number + " " + label, label)) {
            Optional<BigLetters> letters = BigLetters.of(text);
            Optional<BigLetters.Dot> dot = letters.flatMap(each -> layout.dots().stream()
                    .filter(size -> size.columns() > 1 || text.equals(label))
                    .filter(size -> each.columns(size) + pistonColumns(piston, size) <= whole)
                    .findFirst());
            if (dot.isPresent()) {
                letters.get().paint(frame, 1, 1, dot.get(), marks, style(marks, Style.STRONG));
                piston.ifPresent(each -> each.paint(
                        frame,
                        frame.width() - 1 - each.columns(dot.get()),
                        1,
                        dot.get(),
                        marks,
                        style(marks, Style.HEADING)));
                return piston.isPresent() || pistonName.isEmpty();
            }
        }
        return pistonName.isEmpty();
    }

    /** Columns of the piston and of what parts it from the verse. */
    private static int pistonColumns(Optional<BigLetters> piston, BigLetters.Dot size) {
        return piston.map(letters -> letters.columns(size) + 3 * size.columns()).orElse(0);
    }

    /** The piston at the right of those who sing, where it has no big letters; returns the column where it begins. */
    private static int paintPistonInWords(Frame frame, String name, DeskLayout layout) {
        String piston = " piston " + name + " ";
        int x = Math.max(1, frame.width() - 1 - Text.columns(piston));
        frame.write(x, layout.who(), piston, Style.DRAWN);
        return x;
    }

    /** A character of ASCII does not fill its cell, so the ground of the cell does. */
    private static Style style(Marks marks, Style style) {
        return switch (marks) {
            case UNICODE, WORDS -> style;
            case ASCII -> Style.CURSOR;
        };
    }

    private static String note(PlanEdit work) {
        String note = work.verse().map(Verse::note).orElse("");
        return note.isBlank() && work.place().verse() == 0
                ? work.hymn().map(Hymn::notes).orElse("")
                : note;
    }
}
