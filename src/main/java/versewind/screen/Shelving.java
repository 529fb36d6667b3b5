package versewind.screen;

import java.util.List;
import java.util.Map;
import versewind.plan.BroughtHymn;
import versewind.plan.Edit;

/** Looking through the library: which row is marked, what is typed to narrow it down, what is done with a plan. */
final class Shelving {

    private Shelving() {}

    static void into(Map<Command, Handler> handlers) {
        handlers.put(Command.PLANS, Shelving::open);
        handlers.put(Command.BRING_HYMN, Handler.work((state, work) -> bring(state)));
        handlers.put(Command.MARK_BELOW, shelves((state, shelves) -> marked(state, shelves, 1)));
        handlers.put(Command.MARK_ABOVE, shelves((state, shelves) -> marked(state, shelves, -1)));
        handlers.put(Command.MARK_PAGE_BELOW, shelves((state, shelves) -> marked(state, shelves, page(state))));
        handlers.put(Command.MARK_PAGE_ABOVE, shelves((state, shelves) -> marked(state, shelves, -page(state))));
        handlers.put(Command.OPEN_MARKED, shelves(Shelving::choose));
        handlers.put(Command.OTHER_SHELF, shelves(Shelving::otherSide));
        handlers.put(
                Command.NEW_PLAN,
                shelves((state, shelves) -> shelves.side() == Shelves.Side.ORGANS
                        ? Pasting.open(state)
                        : Step.to(
                                state.with(new Panel.Library(shelves.on(Shelves.Side.PLANS))),
                                new Effect.ListInstruments())));
        handlers.put(Command.EDIT_ORGAN, shelves(Shelving::editOrgan));
        handlers.put(
                Command.NEW_FROM_OLD,
                plan((state, shelves, plan) -> Step.to(state.with(ServiceForm.ofPlanFrom(state, plan)))));
        handlers.put(Command.RENAME_PLAN, plan(Shelving::rename));
        handlers.put(Command.BIN_PLAN, plan(Shelving::bin));
        handlers.put(Command.BRING_BACK, shelves((state, shelves) -> Step.to(state, new Effect.BringBack())));
        handlers.put(Command.CLOSE_LIBRARY, shelves(Shelving::close));
        handlers.put(Command.LEAVE_LIBRARY, shelves((state, shelves) -> Filing.afterAsking(state, new Effect.Quit())));
    }

    @FunctionalInterface
    private interface OnShelves {
        Step on(State state, Shelves shelves);
    }

    @FunctionalInterface
    private interface OnPlan {
        Step on(State state, Shelves shelves, Input.ListedPlan plan);
    }

    private static Handler shelves(OnShelves handler) {
        return state ->
                state.panel() instanceof Panel.Library library ? handler.on(state, library.shelves()) : Step.to(state);
    }

    /** A command that needs a plan to be marked. */
    private static Handler plan(OnPlan handler) {
        return shelves((state, shelves) -> {
            List<Input.ListedPlan> fitting = shelves.fittingPlans();
            if (shelves.side() != Shelves.Side.PLANS || fitting.isEmpty()) {
                return Step.says(state, "Mark a plan first.");
            }
            int at = shelves.at(fitting.stream().map(Input.ListedPlan::id).toList());
            return handler.on(state, shelves, fitting.get(at));
        });
    }

    /** Opens the library, over the plan or over nothing. */
    static Step open(State state) {
        return Step.to(state.with(new Panel.Library(Shelves.UNREAD)), new Effect.ListPlans());
    }

    /** Opens the library to bring a hymn over from a plan in it. */
    private static Step bring(State state) {
        Shelves shelves = Shelves.UNREAD.aimedAt(Shelves.Aim.BRING);
        return Step.to(
                state.with(new Panel.Library(shelves))
                        .with(Notice.says("From which plan is a hymn to be brought over?")),
                new Effect.ListPlans());
    }

    /** The hymns of the plan that was chosen. */
    static Step hymnsRead(State state, Input.HymnsRead read) {
        return Step.to(state.with(new Panel.Chooser(
                "Which hymn of \"" + read.title() + "\"?",
                Panel.rows(read.hymns()),
                TextLine.EMPTY,
                0,
                new Panel.Choice.HymnOf(read.plan()))));
    }

    /** The hymn comes after the one where we are, and what of it is drawn otherwise on this organ is told. */
    static Step brought(State state, Input.HymnBrought brought) {
        if (state.work().isEmpty()) {
            return Step.to(state);
        }
        Work work = state.work().get();
        BroughtHymn here = BroughtHymn.of(brought.hymn(), brought.instrument(), work.instrument());
        int at = work.hymn().isPresent() ? work.place().hymn() + 1 : 0;
        State closed = state.closed().with(Notice.says("Brought over; u takes it out again."));
        Step step = Handler.edit(
                closed,
                work,
                new Edit.InsertHymn(at, here.hymn().locking(work.plan().locks())));
        return here.replacements().isEmpty() ? step : new Step(step.state().with(replaced(here)), step.effects());
    }

    private static Panel.Chooser replaced(BroughtHymn brought) {
        List<Panel.Row> rows = brought.replacements().stream()
                .map(each ->
                        new Panel.Row(each.was(), each.was(), each.becomes().orElse("nothing here is like it")))
                .toList();
        return new Panel.Chooser("Replaced on this organ", rows, TextLine.EMPTY, 0, new Panel.Choice.Nothing());
    }

    private static int page(State state) {
        return Math.max(1, ShelfView.room(state) - 1);
    }

    private static Step marked(State state, Shelves shelves, int further) {
        List<String> ids = shelves.fitting();
        if (ids.isEmpty()) {
            return Step.to(state);
        }
        int at = Math.max(0, Math.min(shelves.at(ids) + further, ids.size() - 1));
        return Step.to(state.with(new Panel.Library(shelves.marking(ids.get(at)))));
    }

    /** After a key or a paste that narrows the list down. */
    static Step typed(State state, Shelves shelves, TextLine line) {
        return Step.to(state.with(new Panel.Library(shelves.filtered(line))));
    }

    private static Step choose(State state, Shelves shelves) {
        List<String> ids = shelves.fitting();
        if (ids.isEmpty()) {
            return Step.says(state, "Nothing in the list fits what was typed.");
        }
        String id = ids.get(shelves.at(ids));
        return switch (shelves.side()) {
            case PLANS ->
                switch (shelves.aim()) {
                    case OPEN -> Filing.afterAsking(state, new Effect.OpenPlan(id));
                    case BRING -> Step.to(state, new Effect.ReadHymns(id));
                };
            case ORGANS -> Step.to(state.with(ServiceForm.ofNewPlan(state, id)));
        };
    }

    private static Step otherSide(State state, Shelves shelves) {
        return switch (shelves.side()) {
            case PLANS ->
                Step.to(state.with(new Panel.Library(shelves.on(Shelves.Side.ORGANS))), new Effect.ListInstruments());
            case ORGANS -> Step.to(state.with(new Panel.Library(shelves.on(Shelves.Side.PLANS))));
        };
    }

    private static Step editOrgan(State state, Shelves shelves) {
        List<String> ids = shelves.fitting();
        if (shelves.side() != Shelves.Side.ORGANS || ids.isEmpty()) {
            return Step.says(state, "Mark an organ first: Tab leads to them.");
        }
        return Filing.afterAsking(state, new Effect.OpenOrgan(ids.get(shelves.at(ids))));
    }

    /** The organs of the library. */
    static Step organs(State state) {
        Shelves shelves = Shelves.UNREAD.on(Shelves.Side.ORGANS);
        return Step.to(state.with(new Panel.Library(shelves)), new Effect.ListPlans())
                .and(new Effect.ListInstruments());
    }

    private static boolean isOpen(State state, Input.ListedPlan plan) {
        return state.work().filter(work -> work.id().equals(plan.id())).isPresent();
    }

    private static Step rename(State state, Shelves shelves, Input.ListedPlan plan) {
        if (isOpen(state, plan)) {
            return Step.says(state, "This plan is being worked on. Its title is changed there, with S.");
        }
        return Step.to(state.with(ServiceForm.ofRename(plan, new Panel.Library(shelves))));
    }

    private static Step bin(State state, Shelves shelves, Input.ListedPlan plan) {
        if (isOpen(state, plan)) {
            return Step.says(state, "This plan is being worked on. Open another one first.");
        }
        List<String> ids = shelves.fitting();
        int at = shelves.at(ids);
        String next = ids.get(at + 1 < ids.size() ? at + 1 : Math.max(0, at - 1));
        return Step.to(state.with(new Panel.Library(shelves.marking(next))), new Effect.BinPlan(plan.id()));
    }

    /** Takes away what was typed, then goes back to the plan; where none is open there is nothing to go back to. */
    private static Step close(State state, Shelves shelves) {
        if (!shelves.filter().text().isEmpty()) {
            return Step.to(state.with(new Panel.Library(shelves.filtered(TextLine.EMPTY))));
        }
        return state.work().isPresent()
                ? Step.to(state.closed())
                : Step.says(state, "Choose a plan, or leave with Ctrl-Q.");
    }

    /** Some more plans have been read; of no interest any more if the library is closed. */
    static Step listed(State state, Input.PlansListed listed) {
        return state.panel() instanceof Panel.Library library
                ? Step.to(state.with(new Panel.Library(library.shelves().with(listed))))
                : Step.to(state);
    }

    static Step assessed(State state, Input.PlanAssessed assessed) {
        return state.panel() instanceof Panel.Library library
                ? Step.to(state.with(new Panel.Library(library.shelves().with(assessed))))
                : Step.to(state);
    }

    /** The organs are shown where they are looked at, or else to choose one for a new plan. */
    static Step instrumentsListed(State state, Input.InstrumentsListed listed) {
        if (state.panel() instanceof Panel.Library library && library.shelves().side() == Shelves.Side.ORGANS) {
            List<Panel.Row> rows = Panel.rows(listed.instruments());
            return Step.to(state.with(new Panel.Library(library.shelves().withOrgans(rows))));
        }
        return Filing.instrumentsListed(state, listed);
    }

    /** Something in the library is no longer as it was read. */
    static Step changed(State state, Input.LibraryChanged changed) {
        Shelves shelves = state.panel() instanceof Panel.Library library ? library.shelves() : Shelves.UNREAD;
        Shelves marked = changed.marked().map(shelves::marking).orElse(shelves);
        return Step.to(
                state.with(new Panel.Library(marked)).with(Notice.says(changed.sentence())), new Effect.ListPlans());
    }

    /** A step, after which it is asked about the plans that are seen and of which nothing is known yet. */
    static Step asking(Step step) {
        State state = step.state();
        if (!(state.panel() instanceof Panel.Library library)) {
            return step;
        }
        List<String> ids = library.shelves().toBeAsked(ShelfView.room(state));
        return ids.isEmpty()
                ? step
                : new Step(state.with(new Panel.Library(library.shelves().asking(ids))), step.effects())
                        .and(new Effect.AssessPlans(ids));
    }
}
