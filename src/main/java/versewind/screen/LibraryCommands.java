package versewind.screen;

import java.util.List;
import java.util.Map;
import versewind.plan.BroughtHymn;
import versewind.plan.Edit;

/** Looking through the library: which row is marked, what is typed to narrow it down, what is done with a plan. */
final class LibraryCommands {

    private LibraryCommands() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.PLANS, LibraryCommands::open);
        handlers.put(Command.BRING_HYMN, Handler.work((state, work) -> bring(state)));
        handlers.put(Command.MARK_BELOW, shelves((state, shelves) -> marked(state, shelves, 1)));
        handlers.put(Command.MARK_ABOVE, shelves((state, shelves) -> marked(state, shelves, -1)));
        handlers.put(Command.MARK_PAGE_BELOW, shelves((state, shelves) -> marked(state, shelves, page(state))));
        handlers.put(Command.MARK_PAGE_ABOVE, shelves((state, shelves) -> marked(state, shelves, -page(state))));
        handlers.put(Command.OPEN_MARKED, shelves(LibraryCommands::choose));
        handlers.put(Command.OTHER_SHELF, shelves(LibraryCommands::otherSide));
        handlers.put(
                Command.NEW_PLAN,
                shelves((state, shelves) -> shelves.side() == LibraryState.Side.ORGANS
                        ? PasteCommands.open(state)
                        : state.with(new Panel.Library(shelves.on(LibraryState.Side.PLANS)))
                                .wants(new Effect.ListInstruments())));
        handlers.put(Command.EDIT_ORGAN, shelves(LibraryCommands::editOrgan));
        handlers.put(
                Command.NEW_FROM_OLD, plan((state, shelves, plan) -> state.open(ServiceForm.ofPlanFrom(state, plan))));
        handlers.put(Command.RENAME_PLAN, plan(LibraryCommands::rename));
        handlers.put(Command.BIN_PLAN, plan(LibraryCommands::bin));
        handlers.put(Command.BRING_BACK, shelves((state, shelves) -> state.wants(new Effect.BringBack())));
        handlers.put(Command.CLOSE_LIBRARY, shelves(LibraryCommands::close));
        handlers.put(
                Command.LEAVE_LIBRARY, shelves((state, shelves) -> FileCommands.afterAsking(state, new Effect.Quit())));
    }

    @FunctionalInterface
    private interface OnShelves {
        State on(State state, LibraryState shelves);
    }

    @FunctionalInterface
    private interface OnPlan {
        State on(State state, LibraryState shelves, Event.ListedPlan plan);
    }

    private static Handler shelves(OnShelves handler) {
        return state -> state.panel() instanceof Panel.Library library ? handler.on(state, library.shelves()) : state;
    }

    /** A command that needs a plan to be marked. */
    private static Handler plan(OnPlan handler) {
        return shelves((state, shelves) -> {
            List<Event.ListedPlan> fitting = shelves.fittingPlans();
            if (shelves.side() != LibraryState.Side.PLANS || fitting.isEmpty()) {
                return state.says("Mark a plan first.");
            }
            int at = shelves.at(fitting.stream().map(Event.ListedPlan::id).toList());
            return handler.on(state, shelves, fitting.get(at));
        });
    }

    /** Opens the library, over the plan or over nothing. */
    static State open(State state) {
        return state.with(new Panel.Library(LibraryState.UNREAD)).wants(new Effect.ListPlans());
    }

    /** Opens the library to bring a hymn over from a plan in it. */
    private static State bring(State state) {
        LibraryState shelves = LibraryState.UNREAD.aimedAt(LibraryState.Aim.BRING);
        return state.with(new Panel.Library(shelves))
                .with(Notice.says("From which plan is a hymn to be brought over?"))
                .wants(new Effect.ListPlans());
    }

    /** The hymns of the plan that was chosen. */
    static State hymnsRead(State state, Event.HymnsRead read) {
        return state.open(Chooser.of(
                "Which hymn of \"" + read.title() + "\"?",
                rows(read.hymns()),
                (id, choosing) -> choosing.wants(new Effect.BringHymn(read.plan(), Integer.parseInt(id))),
                LibraryCommands::left));
    }

    /** The hymn comes after the one where we are, and what of it is drawn otherwise on this organ is told. */
    static State brought(State state, Event.HymnBrought brought) {
        if (state.work().isEmpty()) {
            return state;
        }
        PlanEdit work = state.work().get();
        BroughtHymn here = BroughtHymn.of(brought.hymn(), brought.instrument(), work.instrument());
        int at = work.hymn().isPresent() ? work.place().hymn() + 1 : 0;
        State closed = state.closed().with(Notice.says("Brought over; u takes it out again."));
        State step = Handler.edit(
                closed,
                work,
                new Edit.InsertHymn(at, here.hymn().locking(work.plan().locks())));
        return here.replacements().isEmpty() ? step : step.open(replaced(here));
    }

    private static Chooser replaced(BroughtHymn brought) {
        List<Chooser.Row> rows = brought.replacements().stream()
                .map(each ->
                        new Chooser.Row(each.was(), each.was(), each.becomes().orElse("nothing here is like it")))
                .toList();
        return Chooser.read("Replaced on this organ", rows);
    }

    /** Rows for files. */
    static List<Chooser.Row> rows(List<Event.Listed> listed) {
        return listed.stream()
                .map(each -> new Chooser.Row(each.id(), each.title(), each.detail()))
                .toList();
    }

    /** Back to the plan from something that was opened in the library; where none is open, to the library. */
    static State left(State state) {
        return state.work().isPresent() || state.bench().isPresent() ? state.closed() : open(state);
    }

    private static int page(State state) {
        return Math.max(1, LibraryView.room(state) - 1);
    }

    private static State marked(State state, LibraryState shelves, int further) {
        List<String> ids = shelves.fitting();
        if (ids.isEmpty()) {
            return state;
        }
        int at = Math.max(0, Math.min(shelves.at(ids) + further, ids.size() - 1));
        return state.with(new Panel.Library(shelves.marking(ids.get(at))));
    }

    /** After a key or a paste that narrows the list down. */
    static State typed(State state, LibraryState shelves, TextLine line) {
        return state.with(new Panel.Library(shelves.filtered(line)));
    }

    private static State choose(State state, LibraryState shelves) {
        List<String> ids = shelves.fitting();
        if (ids.isEmpty()) {
            return state.says("Nothing in the list fits what was typed.");
        }
        String id = ids.get(shelves.at(ids));
        return switch (shelves.side()) {
            case PLANS ->
                switch (shelves.aim()) {
                    case OPEN -> FileCommands.afterAsking(state, new Effect.OpenPlan(id));
                    case BRING -> state.wants(new Effect.ReadHymns(id));
                };
            case ORGANS -> state.open(ServiceForm.ofNewPlan(state, id));
        };
    }

    private static State otherSide(State state, LibraryState shelves) {
        return switch (shelves.side()) {
            case PLANS ->
                state.with(new Panel.Library(shelves.on(LibraryState.Side.ORGANS)))
                        .wants(new Effect.ListInstruments());
            case ORGANS -> state.with(new Panel.Library(shelves.on(LibraryState.Side.PLANS)));
        };
    }

    private static State editOrgan(State state, LibraryState shelves) {
        List<String> ids = shelves.fitting();
        if (shelves.side() != LibraryState.Side.ORGANS || ids.isEmpty()) {
            return state.says("Mark an organ first: Tab leads to them.");
        }
        return FileCommands.afterAsking(state, new Effect.OpenOrgan(ids.get(shelves.at(ids))));
    }

    /** The organs of the library. */
    static State organs(State state) {
        LibraryState shelves = LibraryState.UNREAD.on(LibraryState.Side.ORGANS);
        return state.with(new Panel.Library(shelves))
                .wants(new Effect.ListPlans())
                .wants(new Effect.ListInstruments());
    }

    private static boolean isOpen(State state, Event.ListedPlan plan) {
        return state.work().filter(work -> work.id().equals(plan.id())).isPresent();
    }

    private static State rename(State state, LibraryState shelves, Event.ListedPlan plan) {
        if (isOpen(state, plan)) {
            return state.says("This plan is being worked on. Its title is changed there, with S.");
        }
        return state.open(ServiceForm.ofRename(plan));
    }

    private static State bin(State state, LibraryState shelves, Event.ListedPlan plan) {
        if (isOpen(state, plan)) {
            return state.says("This plan is being worked on. Open another one first.");
        }
        List<String> ids = shelves.fitting();
        int at = shelves.at(ids);
        String next = ids.get(at + 1 < ids.size() ? at + 1 : Math.max(0, at - 1));
        return state.with(new Panel.Library(shelves.marking(next))).wants(new Effect.BinPlan(plan.id()));
    }

    /** Takes away what was typed, then goes back to the plan; where none is open there is nothing to go back to. */
    private static State close(State state, LibraryState shelves) {
        if (!shelves.filter().text().isEmpty()) {
            return state.with(new Panel.Library(shelves.filtered(TextLine.EMPTY)));
        }
        return state.work().isPresent() ? state.closed() : state.says("Choose a plan, or leave with Ctrl-Q.");
    }

    /** Some more plans have been read; of no interest any more if the library is closed. */
    static State listed(State state, Event.PlansListed listed) {
        return state.panel() instanceof Panel.Library library
                ? state.with(new Panel.Library(library.shelves().with(listed)))
                : state;
    }

    static State assessed(State state, Event.PlanAssessed assessed) {
        return state.panel() instanceof Panel.Library library
                ? state.with(new Panel.Library(library.shelves().with(assessed)))
                : state;
    }

    /** The organs are shown where they are looked at, or else to choose one for a new plan. */
    static State instrumentsListed(State state, Event.InstrumentsListed listed) {
        if (state.panel() instanceof Panel.Library library && library.shelves().side() == LibraryState.Side.ORGANS) {
            List<Chooser.Row> rows = rows(listed.instruments());
            return state.with(new Panel.Library(library.shelves().withOrgans(rows)));
        }
        return FileCommands.instrumentsListed(state, listed);
    }

    /** Something in the library is no longer as it was read. */
    static State changed(State state, Event.LibraryChanged changed) {
        LibraryState shelves = state.panel() instanceof Panel.Library library ? library.shelves() : LibraryState.UNREAD;
        LibraryState marked = changed.marked().map(shelves::marking).orElse(shelves);
        return state.with(new Panel.Library(marked))
                .with(Notice.says(changed.sentence()))
                .wants(new Effect.ListPlans());
    }

    /** A step, after which it is asked about the plans that are seen and of which nothing is known yet. */
    static State asking(State state) {
        if (!(state.panel() instanceof Panel.Library library)) {
            return state;
        }
        List<String> ids = library.shelves().toBeAsked(LibraryView.room(state));
        return ids.isEmpty()
                ? state
                : state.show(new Panel.Library(library.shelves().asking(ids))).wants(new Effect.AssessPlans(ids));
    }
}
