package versewind.screen.library;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import versewind.screen.state.Chooser;
import versewind.screen.state.Covering;
import versewind.screen.state.Effects;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Leaving;
import versewind.screen.state.ServiceForm;
import versewind.screen.state.State;
import versewind.screen.state.TextEntry;
import versewind.screen.toolkit.Box;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.ListBox;
import versewind.screen.toolkit.Mark;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;
import versewind.screen.toolkit.TextLine;

/**
 * The library, over everything: plans with their dates and states, or organs.
 *
 * @param library what is read of it, and what of that is looked at
 */
public record LibraryScreen(LibraryState library) implements TextEntry, Covering {

    public static final KeyTable<LibraryScreen> KEYS = KeyTable.<LibraryScreen>under("The library")
            .key("Down", "the row below", (screen, state) -> screen.move(state, 1))
            .key("Up", "the row above", (screen, state) -> screen.move(state, -1))
            .key("Home", "the first row", (screen, state) -> screen.move(state, -ListBox.MOST))
            .key("End", "the last row", (screen, state) -> screen.move(state, ListBox.MOST))
            .key("Page Down", "a page down", (screen, state) -> screen.move(state, page(state)))
            .key("Page Up", "a page up", (screen, state) -> screen.move(state, -page(state)))
            .key("Enter", "open", LibraryScreen::choose)
            .key("Ctrl-N", "new", LibraryScreen::makeNew)
            .key(
                    "Ctrl-D",
                    "copy",
                    plan((screen, state, plan) -> state.open(ServiceForm.ofPlanFrom(state, plan.id(), plan.title()))))
            .key("Ctrl-R", "rename", plan(LibraryScreen::rename))
            .key("Ctrl-V", "earlier versions: restore one", plan(LibraryScreen::versions))
            .key("Ctrl-T", "transfer the service to another organ", plan(LibraryScreen::transfer))
            .key("Ctrl-X", "delete: move to the bin", plan(LibraryScreen::bin))
            .key(
                    "Ctrl-Z",
                    "undo: restore the last plan from the bin",
                    (screen, state) -> state.wants(Effects::bringBack))
            .key("Tab, Shift-Tab", "switch between plans and organs", LibraryScreen::turn)
            .key("Esc", "clear the filter; back to the plan", LibraryScreen::leave)
            .key("Ctrl-Q", "leave", (screen, state) -> Leaving.afterAsking(state, Leaving.LEAVE, Effects::quit))
            .key("Ctrl-E", "edit the marked organ", LibraryScreen::editOrgan);

    private static final int TOP = 3;
    private static final int FOOT = 3;
    private static final int DATE = 15;
    private static final int STATE = 24;
    private static final int EDITED = 10;
    private static final int GAP = 2;

    /** The width in columns from which the list also shows when a plan was last edited. */
    private static final int WIDE = 92;

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

    /** What a key does with the marked plan. */
    @FunctionalInterface
    private interface OnPlan {
        State on(LibraryScreen screen, State state, LibraryEvent.ListedPlan plan);
    }

    private static KeyTable.Action<LibraryScreen> plan(OnPlan action) {
        return (screen, state) -> screen.library
                .markedPlan()
                .map(plan -> action.on(screen, state, plan))
                .orElseGet(() -> state.says("Mark a plan first."));
    }

    /** The library over the plan, which is marked, or over nothing. */
    public static State open(State state) {
        return over(
                state,
                LibraryState.UNREAD.marking(state.work().map(work -> work.id()).orElse("")));
    }

    /** The library to bring a hymn over from a plan in it. */
    public static State openToBring(State state) {
        return over(state, LibraryState.UNREAD.aimedAt(LibraryState.Aim.BRING)).says("Copy a hymn from which plan?");
    }

    /** The organs of the library, one of them marked. */
    public static State organs(State state, String marked) {
        return over(state, LibraryState.UNREAD.on(LibraryState.Side.ORGANS).marking(marked))
                .wants(Effects::listInstruments);
    }

    private static State over(State state, LibraryState library) {
        return state.closed().open(new LibraryScreen(library)).wants(Effects::listPlans);
    }

    /** With what is seen of the library changed; of no interest any more if it is closed. */
    static State seen(State state, UnaryOperator<LibraryState> change) {
        return state.top() instanceof LibraryScreen screen ? show(state, change.apply(screen.library)) : state;
    }

    private static State show(State state, LibraryState library) {
        return state.show(new LibraryScreen(library));
    }

    private static int room(State state) {
        return Math.max(1, state.rows() - TOP - FOOT);
    }

    private static int page(State state) {
        return Math.max(1, room(state) - 1);
    }

    private State move(State state, int further) {
        return library.list()
                .end(further, library.side() == LibraryState.Side.PLANS ? "plan" : "organ")
                .map(state::says)
                .orElseGet(() -> show(state, library.marking(library.list().move(further))));
    }

    private State choose(State state) {
        if (library.current().isEmpty()) {
            return state.says("Nothing in the list matches the filter.");
        }
        String id = library.current().get();
        return switch (library.side()) {
            case PLANS ->
                switch (library.aim()) {
                    case OPEN -> Leaving.afterAsking(state, "open the other plan", effects -> effects.openPlan(id));
                    case MOVE -> show(state, library.aimedAt(LibraryState.Aim.OPEN));
                    case BRING -> state.wants(effects -> effects.readHymns(id));
                };
            case ORGANS -> state.wants(effects -> effects.beginPlan(id));
        };
    }

    private State makeNew(State state) {
        return switch (library.side()) {
            case PLANS -> show(state, library.on(LibraryState.Side.PLANS)).wants(Effects::listInstruments);
            case ORGANS -> state.doors().stopList(state);
        };
    }

    private State turn(State state) {
        return switch (library.side()) {
            case PLANS -> show(state, library.on(LibraryState.Side.ORGANS)).wants(Effects::listInstruments);
            case ORGANS -> show(state, library.on(LibraryState.Side.PLANS));
        };
    }

    private State editOrgan(State state) {
        if (library.side() != LibraryState.Side.ORGANS || library.current().isEmpty()) {
            return state.says("Mark an organ first. Tab shows the organs.");
        }
        String id = library.current().get();
        return Leaving.afterAsking(state, "edit the organ", effects -> effects.openOrgan(id));
    }

    private static boolean isOpen(State state, LibraryEvent.ListedPlan plan) {
        return state.work().filter(work -> work.id().equals(plan.id())).isPresent();
    }

    private State rename(State state, LibraryEvent.ListedPlan plan) {
        return isOpen(state, plan)
                ? state.says("This plan is open. Change its title there, with S.")
                : state.open(ServiceForm.ofRename(plan.id(), plan.title()));
    }

    private State versions(State state, LibraryEvent.ListedPlan plan) {
        return state.wants(effects -> effects.listVersions(plan.id()));
    }

    private State transfer(State state, LibraryEvent.ListedPlan plan) {
        return show(state, library.aimedAt(LibraryState.Aim.MOVE)).wants(Effects::listInstruments);
    }

    private State bin(State state, LibraryEvent.ListedPlan plan) {
        if (isOpen(state, plan)) {
            return state.says("This plan is open. Open another one first.");
        }
        ListBox<String> list = library.list();
        ListBox<String> next = list.move(list.marked() + 1 < list.size() ? 1 : -1);
        return show(state, library.marking(next)).wants(effects -> effects.binPlan(plan.id()));
    }

    /** Takes away what was typed, then goes back to the plan; where none is open there is nothing to go back to. */
    private State leave(State state) {
        if (!library.filter().text().isEmpty()) {
            return show(state, library.filtered(TextLine.EMPTY));
        }
        return state.work().isPresent() ? state.closed() : state.says("Choose a plan, or leave with Ctrl-Q.");
    }

    @Override
    public KeyTable<?> keys() {
        return KEYS;
    }

    @Override
    public boolean saysFailures() {
        return true;
    }

    /** Asks about the plans that are seen and of which nothing is known yet. */
    @Override
    public State settled(State state) {
        if (library.isToBeSought()) {
            String typed = library.filter().text();
            return show(state, library.with(new LibraryState.Found(typed, Map.of())))
                    .wants(effects -> effects.searchPlans(typed));
        }
        int seen = state.isSpoken() ? 2 * room(state) : room(state); // of a page the marked row may be at either end
        List<String> ids = library.toBeAsked(seen);
        return ids.isEmpty() ? state : show(state, library.asking(ids)).wants(effects -> effects.assessPlans(ids));
    }

    @Override
    public TextLine line() {
        return library.filter();
    }

    @Override
    public State typed(TextLine line, State state) {
        return show(state, library.filtered(line));
    }

    @Override
    public String name(State state) {
        return library.side() == LibraryState.Side.PLANS ? "Library, plans" : "Library, organs";
    }

    @Override
    public void paint(Frame frame, State state) {
        boolean plans = library.side() == LibraryState.Side.PLANS;
        int rows = plans ? paintPlans(frame, state) : paintOrgans(frame, state);
        if (rows == 0) {
            frame.write(1, TOP, library.none(), Style.FAINT);
        }
        state.notice().paint(frame, frame.height() - FOOT + 1);
        String[] keys = plans
                ? new String[] {"Enter", "Ctrl-N", "Ctrl-D", "Ctrl-R", "Ctrl-X delete", "F1 help", "Ctrl-Q"}
                : new String[] {"Enter new plan", "Ctrl-E", "Ctrl-N", "F1 help", "Ctrl-Q"};
        KEYS.hints(frame, keys);
    }

    /** Draws the plans and returns how many there are. */
    private int paintPlans(Frame frame, State state) {
        ListBox<LibraryEvent.ListedPlan> list = library.planList();
        String count = library.count(list.size());
        frame.write(frame.width() - Text.columns(count) - 1, 0, count, Style.FAINT);
        list.paint(frame, window(frame, state), words()::words, (plan, index, y) -> paintPlan(frame, state, plan, y));
        paintHead(frame, true, list.marked() == 0);
        list.current().ifPresent(plan -> {
            String about = words().trouble(plan).orElseGet(() -> plan.title() + ": " + words().file(plan));
            List<String> lines = state.isSpoken() ? List.of() : Text.wrapped(about, frame.width() - 2);
            int rows = Math.min(lines.size(), 1 + Math.max(0, room(state) - list.size()));
            Box.write(frame, 1, frame.height() - FOOT - rows + 1, lines, rows, Style.FAINT);
        });
        return list.size();
    }

    /** Draws the organs and returns how many there are. */
    private int paintOrgans(Frame frame, State state) {
        ListBox<Chooser.Row> list =
                new ListBox<>(library.fittingOrgans(), library.list().marked());
        String count = list.position("organ");
        frame.write(frame.width() - Text.columns(count) - 1, 0, count, Style.FAINT);
        Box window = window(frame, state);
        list.paint(frame, window, Chooser.Row::words, (organ, index, y) -> organ.paint(frame, window, y));
        paintHead(frame, false, list.marked() == 0);
        if (!list.isEmpty()) {
            String hint = "Enter: new plan for it. Ctrl-E: edit it. Ctrl-N: new organ.";
            frame.write(1, frame.height() - FOOT, hint, Style.FAINT);
        }
        return list.size();
    }

    private static Box window(Frame frame, State state) {
        return new Box(1, TOP, frame.width() - 2, room(state));
    }

    private void paintHead(Frame frame, boolean plans, boolean isFirstMarked) {
        library.filter().paintFilter(frame, 1, 1, frame.width() - 1, isFirstMarked);
        if (frame.marks() == Marks.WORDS) {
            frame.write(1, 0, plans ? "Plans; Tab for organs" : "Organs; Tab for plans", Style.HEADING);
            return;
        }
        String here = frame.mark(Mark.HERE);
        int x = frame.write(1, 0, plans ? here + "Plans" : " Plans", plans ? Style.HEADING : Style.FAINT);
        int end = frame.write(x + GAP, 0, plans ? " Organs" : here + "Organs", plans ? Style.FAINT : Style.HEADING);
        frame.write(end + GAP, 0, "Tab", Style.KEY);
        if (plans) {
            frame.write(1, 2, "date", Style.FAINT);
            frame.write(1 + DATE + GAP, 2, "service", Style.FAINT);
            frame.write(stateX(frame), 2, "state", Style.FAINT);
            if (isWide(frame)) {
                frame.write(frame.width() - 1 - EDITED, 2, "    edited", Style.FAINT);
            }
        }
    }

    private void paintPlan(Frame frame, State state, LibraryEvent.ListedPlan plan, int y) {
        frame.write(1, y, PlanWords.date(plan), Style.TEXT);
        int title = 1 + DATE + GAP;
        int end = stateX(frame) - GAP;
        String organ = words().organ(plan).map(id -> ", " + id).orElse("");
        int x = frame.write(title, y, frame.fit(plan.title(), end - title - Text.columns(organ)), Style.TEXT);
        frame.write(x, y, organ, Style.FAINT);
        PlanWords.Known known = words().known(plan);
        frame.write(stateX(frame), y, known.words(), known.style());
        if (isWide(frame)) {
            String edited = edited(state, plan.edited());
            frame.write(frame.width() - 1 - edited.length(), y, edited, Style.FAINT);
        }
    }

    /** What the filter holds if that changed, the marked row in full, and the keys where it is heard first. */
    @Override
    public String spoken(State before, State now) {
        LibraryState was = before.top() instanceof LibraryScreen screen ? screen.library : library;
        String typed = library.filter().after(was.filter());
        boolean isFirst = was.side() != library.side()
                || (was.list().isEmpty() && was.filter().text().isBlank());
        String keys = isFirst && library.aim() == LibraryState.Aim.OPEN ? " " + keysInWords() : "";
        Optional<String> words = library.side() == LibraryState.Side.PLANS
                ? library.markedPlan()
                        .map(plan -> words().words(plan) + "; "
                                + words().trouble(plan).orElseGet(() -> words().file(plan)))
                : library.markedOrgan().map(Chooser.Row::words);
        boolean isSilent = library.filter().text().isBlank() && !library.isEmpty();
        return typed
                + words.map(all -> all + ", " + library.list().place() + "." + keys)
                        .orElse(isSilent ? "" : library.none());
    }

    private String keysInWords() {
        return library.side() == LibraryState.Side.PLANS
                ? "Enter opens it, Ctrl-N makes a new one, Tab shows the organs, F1 lists the keys."
                : "Enter plans a service for it, Ctrl-E edits it, Ctrl-N makes a new organ, F1 lists the keys.";
    }

    private PlanWords words() {
        return new PlanWords(library);
    }

    private static boolean isWide(Frame frame) {
        return frame.width() >= WIDE;
    }

    private static int stateX(Frame frame) {
        return frame.width() - 1 - STATE - (isWide(frame) ? EDITED + GAP : 0);
    }

    /** The time of today, else the date. */
    private static String edited(State state, LocalDateTime edited) {
        boolean isToday = edited.toLocalDate().equals(state.today());
        return isToday ? TIME.format(edited) : edited.toLocalDate().toString();
    }
}
