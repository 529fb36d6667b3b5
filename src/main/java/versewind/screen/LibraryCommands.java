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
                        : Transition.to(
                                state.with(new Panel.Library(shelves.on(LibraryState.Side.PLANS))),
                                new Effect.ListInstruments())));
        handlers.put(Command.EDIT_ORGAN, shelves(LibraryCommands::editOrgan));
        handlers.put(
                Command.NEW_FROM_OLD,
                plan((state, shelves, plan) -> Transition.to(state.with(ServiceForm.ofPlanFrom(state, plan)))));
        handlers.put(Command.RENAME_PLAN, plan(LibraryCommands::rename));
        handlers.put(Command.BIN_PLAN, plan(LibraryCommands::bin));
        handlers.put(Command.BRING_BACK, shelves((state, shelves) -> Transition.to(state, new Effect.BringBack())));
        handlers.put(Command.CLOSE_LIBRARY, shelves(LibraryCommands::close));
        handlers.put(
                Command.LEAVE_LIBRARY, shelves((state, shelves) -> FileCommands.afterAsking(state, new Effect.Quit())));
    }

    @FunctionalInterface
    private interface OnShelves {
        Transition on(State state, LibraryState shelves);
    }

    @FunctionalInterface
    private interface OnPlan {
        Transition on(State state, LibraryState shelves, Event.ListedPlan plan);
    }

    private static Handler shelves(OnShelves handler) {
        return state -> state.panel() instanceof Panel.Library library
                ? handler.on(state, library.shelves())
                : Transition.to(state);
    }

    /** A command that needs a plan to be marked. */
    private static Handler plan(OnPlan handler) {
        return shelves((state, shelves) -> {
            List<Event.ListedPlan> fitting = shelves.fittingPlans();
            if (shelves.side() != LibraryState.Side.PLANS || fitting.isEmpty()) {
                return Transition.says(state, "Mark a plan first.");
            }
            int at = shelves.at(fitting.stream().map(Event.ListedPlan::id).toList());
            return handler.on(state, shelves, fitting.get(at));
        });
    }

    /** Opens the library, over the plan or over nothing. */
    static Transition open(State state) {
        return Transition.to(state.with(new Panel.Library(LibraryState.UNREAD)), new Effect.ListPlans());
    }

    /** Opens the library to bring a hymn over from a plan in it. */
    private static Transition bring(State state) {
        LibraryState shelves = LibraryState.UNREAD.aimedAt(LibraryState.Aim.BRING);
        return Transition.to(
                state.with(new Panel.Library(shelves))
                        .with(Notice.says("From which plan is a hymn to be brought over?")),
                new Effect.ListPlans());
    }

    /** The hymns of the plan that was chosen. */
    static Transition hymnsRead(State state, Event.HymnsRead read) {
        return Transition.to(state.with(new Panel.Chooser(
                "Which hymn of \"" + read.title() + "\"?",
                Panel.rows(read.hymns()),
                TextLine.EMPTY,
                0,
                new Panel.Choice.HymnOf(read.plan()))));
    }

    /** The hymn comes after the one where we are, and what of it is drawn otherwise on this organ is told. */
    static Transition brought(State state, Event.HymnBrought brought) {
        if (state.work().isEmpty()) {
            return Transition.to(state);
        }
        PlanEdit work = state.work().get();
        BroughtHymn here = BroughtHymn.of(brought.hymn(), brought.instrument(), work.instrument());
        int at = work.hymn().isPresent() ? work.place().hymn() + 1 : 0;
        State closed = state.closed().with(Notice.says("Brought over; u takes it out again."));
        Transition step = Handler.edit(
                closed,
                work,
                new Edit.InsertHymn(at, here.hymn().locking(work.plan().locks())));
        return here.replacements().isEmpty()
                ? step
                : new Transition(step.state().with(replaced(here)), step.effects());
    }

    private static Panel.Chooser replaced(BroughtHymn brought) {
        List<Panel.Row> rows = brought.replacements().stream()
                .map(each ->
                        new Panel.Row(each.was(), each.was(), each.becomes().orElse("nothing here is like it")))
                .toList();
        return new Panel.Chooser("Replaced on this organ", rows, TextLine.EMPTY, 0, new Panel.Choice.Nothing());
    }

    private static int page(State state) {
        return Math.max(1, LibraryView.room(state) - 1);
    }

    private static Transition marked(State state, LibraryState shelves, int further) {
        List<String> ids = shelves.fitting();
        if (ids.isEmpty()) {
            return Transition.to(state);
        }
        int at = Math.max(0, Math.min(shelves.at(ids) + further, ids.size() - 1));
        return Transition.to(state.with(new Panel.Library(shelves.marking(ids.get(at)))));
    }

    /** After a key or a paste that narrows the list down. */
    static Transition typed(State state, LibraryState shelves, TextLine line) {
        return Transition.to(state.with(new Panel.Library(shelves.filtered(line))));
    }

    private static Transition choose(State state, LibraryState shelves) {
        List<String> ids = shelves.fitting();
        if (ids.isEmpty()) {
            return Transition.says(state, "Nothing in the list fits what was typed.");
        }
        String id = ids.get(shelves.at(ids));
        return switch (shelves.side()) {
            case PLANS ->
                switch (shelves.aim()) {
                    case OPEN -> FileCommands.afterAsking(state, new Effect.OpenPlan(id));
                    case BRING -> Transition.to(state, new Effect.ReadHymns(id));
                };
            case ORGANS -> Transition.to(state.with(ServiceForm.ofNewPlan(state, id)));
        };
    }

    private static Transition otherSide(State state, LibraryState shelves) {
        return switch (shelves.side()) {
            case PLANS ->
                Transition.to(
                        state.with(new Panel.Library(shelves.on(LibraryState.Side.ORGANS))),
                        new Effect.ListInstruments());
            case ORGANS -> Transition.to(state.with(new Panel.Library(shelves.on(LibraryState.Side.PLANS))));
        };
    }

    private static Transition editOrgan(State state, LibraryState shelves) {
        List<String> ids = shelves.fitting();
        if (shelves.side() != LibraryState.Side.ORGANS || ids.isEmpty()) {
            return Transition.says(state, "Mark an organ first: Tab leads to them.");
        }
        return FileCommands.afterAsking(state, new Effect.OpenOrgan(ids.get(shelves.at(ids))));
    }

    /** The organs of the library. */
    static Transition organs(State state) {
        LibraryState shelves = LibraryState.UNREAD.on(LibraryState.Side.ORGANS);
        return Transition.to(state.with(new Panel.Library(shelves)), new Effect.ListPlans())
                .and(new Effect.ListInstruments());
    }

    private static boolean isOpen(State state, Event.ListedPlan plan) {
        return state.work().filter(work -> work.id().equals(plan.id())).isPresent();
    }

    private static Transition rename(State state, LibraryState shelves, Event.ListedPlan plan) {
        if (isOpen(state, plan)) {
            return Transition.says(state, "This plan is being worked on. Its title is changed there, with S.");
        }
        return Transition.to(state.with(ServiceForm.ofRename(plan, new Panel.Library(shelves))));
    }

    private static Transition bin(State state, LibraryState shelves, Event.ListedPlan plan) {
        if (isOpen(state, plan)) {
            return Transition.says(state, "This plan is being worked on. Open another one first.");
        }
        List<String> ids = shelves.fitting();
        int at = shelves.at(ids);
        String next = ids.get(at + 1 < ids.size() ? at + 1 : Math.max(0, at - 1));
        return Transition.to(state.with(new Panel.Library(shelves.marking(next))), new Effect.BinPlan(plan.id()));
    }

    /** Takes away what was typed, then goes back to the plan; where none is open there is nothing to go back to. */
    private static Transition close(State state, LibraryState shelves) {
        if (!shelves.filter().text().isEmpty()) {
            return Transition.to(state.with(new Panel.Library(shelves.filtered(TextLine.EMPTY))));
        }
        return state.work().isPresent()
                ? Transition.to(state.closed())
                : Transition.says(state, "Choose a plan, or leave with Ctrl-Q.");
    }

    /** Some more plans have been read; of no interest any more if the library is closed. */
    static Transition listed(State state, Event.PlansListed listed) {
        return state.panel() instanceof Panel.Library library
                ? Transition.to(state.with(new Panel.Library(library.shelves().with(listed))))
                : Transition.to(state);
    }

    static Transition assessed(State state, Event.PlanAssessed assessed) {
        return state.panel() instanceof Panel.Library library
                ? Transition.to(state.with(new Panel.Library(library.shelves().with(assessed))))
                : Transition.to(state);
    }

    /** The organs are shown where they are looked at, or else to choose one for a new plan. */
    static Transition instrumentsListed(State state, Event.InstrumentsListed listed) {
        if (state.panel() instanceof Panel.Library library && library.shelves().side() == LibraryState.Side.ORGANS) {
            List<Panel.Row> rows = Panel.rows(listed.instruments());
            return Transition.to(state.with(new Panel.Library(library.shelves().withOrgans(rows))));
        }
        return FileCommands.instrumentsListed(state, listed);
    }

    /** Something in the library is no longer as it was read. */
    static Transition changed(State state, Event.LibraryChanged changed) {
        LibraryState shelves = state.panel() instanceof Panel.Library library ? library.shelves() : LibraryState.UNREAD;
        LibraryState marked = changed.marked().map(shelves::marking).orElse(shelves);
        return Transition.to(
                state.with(new Panel.Library(marked)).with(Notice.says(changed.sentence())), new Effect.ListPlans());
    }

    /** A step, after which it is asked about the plans that are seen and of which nothing is known yet. */
    static Transition asking(Transition step) {
        State state = step.state();
        if (!(state.panel() instanceof Panel.Library library)) {
            return step;
        }
        List<String> ids = library.shelves().toBeAsked(LibraryView.room(state));
        return ids.isEmpty()
                ? step
                : new Transition(state.with(new Panel.Library(library.shelves().asking(ids))), step.effects())
                        .and(new Effect.AssessPlans(ids));
    }
}
