package versewind.screen;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What comes of an input: a pure function from a state and an input to a state and effects. */
public final class Update {

    private static final Map<Command, Handler> HANDLERS = handlers();

    private Update() {}

    private static Map<Command, Handler> handlers() {
        Map<Command, Handler> handlers = new EnumMap<>(Command.class);
        MoveCommands.into(handlers);
        StopCommands.into(handlers);
        PlayingCommands.into(handlers);
        ArrangeCommands.into(handlers);
        FileCommands.into(handlers);
        HelpCommands.into(handlers);
        LibraryCommands.into(handlers);
        ProposalCommands.into(handlers);
        LockCommands.into(handlers);
        VerseFeedbackCommands.into(handlers);
        OrganEditCommands.into(handlers);
        OrganEditSaving.into(handlers);
        PasteCommands.into(handlers);
        handlers.put(Command.AT_DESK, Handler.work(DeskScreen::open));
        return handlers;
    }

    /** The commands that have something to do: all of them. */
    static Map<Command, Handler> table() {
        return HANDLERS;
    }

    /** The state after an input, and what is to be done outside. */
    public static Transition step(State state, Event input) {
        State after = answer(state, input);
        return transition(after.top().settled(after));
    }

    private static Transition transition(State state) {
        return new Transition(state.wantingNothing(), state.wanted());
    }

    /** The state in which the program starts without a plan: the library is looked through. */
    public static Transition start(State state) {
        return transition(LibraryCommands.open(state));
    }

    /** The state in which the program goes on at the desk, when a plan has just been opened for that. */
    public static Transition desk(State state) {
        return transition(DeskScreen.alone(state));
    }

    private static State answer(State state, Event input) {
        if (input instanceof Event.Press press) {
            return press(state.with(Notice.NONE), press.key());
        }
        if (input instanceof Event.Paste paste) {
            return state.top().pasted(paste.text(), state.with(Notice.NONE));
        }
        if (input instanceof Event.Resize resize) {
            return state.sized(resize.columns(), resize.rows());
        }
        if (input instanceof Event.Hangup) {
            return hangup(state);
        }
        if (input instanceof Event.Saved saved) {
            return FileCommands.saved(state, saved);
        }
        if (input instanceof Event.SaveRefused refused) {
            return FileCommands.saveRefused(state, refused);
        }
        if (input instanceof Event.PlansListed listed) {
            return LibraryCommands.listed(state, listed);
        }
        if (input instanceof Event.InstrumentsListed listed) {
            return LibraryCommands.instrumentsListed(state, listed);
        }
        if (input instanceof Event.PlanAssessed assessed) {
            return LibraryCommands.assessed(state, assessed);
        }
        if (input instanceof Event.LibraryChanged changed) {
            return LibraryCommands.changed(state, changed);
        }
        if (input instanceof Event.HymnsRead read) {
            return LibraryCommands.hymnsRead(state, read);
        }
        if (input instanceof Event.HymnBrought brought) {
            return LibraryCommands.brought(state, brought);
        }
        if (input instanceof Event.SavedUnder saved) {
            return FileCommands.savedUnder(state, saved);
        }
        if (input instanceof Event.PlanOpened opened) {
            return FileCommands.planOpened(state, opened);
        }
        if (input instanceof Event.Recalibrated recalibrated) {
            return ReadingsScreen.recalibrated(state, recalibrated);
        }
        if (input instanceof Event.OrganOpened opened) {
            return OrganEditSaving.opened(state, opened);
        }
        if (input instanceof Event.OrganClosed) {
            return OrganEditSaving.closed(state);
        }
        if (input instanceof Event.OrganSaved saved) {
            return OrganEditSaving.saved(state, saved);
        }
        if (input instanceof Event.Searched searched) {
            return ProposalCommands.searched(state, searched);
        }
        if (input instanceof Event.Proposed proposed) {
            return ProposalCommands.proposed(state, proposed);
        }
        if (input instanceof Event.LadderFound found) {
            return DeskScreen.found(state, found);
        }
        if (input instanceof Event.Done done) {
            return state.says(done.sentence());
        }
        return FileCommands.failed(state, ((Event.Failed) input).sentence());
    }

    /** After a key: first what every screen does with it, then what the top one does. */
    private static State press(State state, Key key) {
        Optional<Command> anywhere = KeyMap.meaning(Command.Where.ANYWHERE, key);
        if (anywhere.isPresent() && (anywhere.get() == Command.INTERRUPT || !Layout.isTooSmall(state))) {
            return HANDLERS.get(anywhere.get()).on(state);
        }
        boolean isAnswered = !Layout.isTooSmall(state)
                || (Layout.canOpenDesk(state) && Command.AT_DESK.keys().contains(key));
        return isAnswered ? state.top().pressed(key, state) : state;
    }

    /** After a key on what is not yet a screen of its own. */
    static State pressed(Panel panel, Key key, State state) {
        Optional<Command> command = KeyMap.meaning(where(panel, state), key);
        if (command.isPresent()) {
            return HANDLERS.get(command.get()).on(state);
        }
        if (panel instanceof Panel.Find find) {
            return MoveCommands.typed(state, find, find.text().after(key));
        }
        if (panel instanceof Panel.Library library) {
            return LibraryCommands.typed(
                    state, library.shelves(), library.shelves().filter().after(key));
        }
        if (panel instanceof Panel.StopText box) {
            return state.with(box.after(key));
        }
        return panel.least().columns() < Layout.LEAST_COLUMNS
                ? state
                : state.says(key.name() + " means nothing here; ? shows all keys.");
    }

    static Command.Where where(Panel panel, State state) {
        if (panel instanceof Panel.Find) {
            return Command.Where.FIND;
        }
        if (panel instanceof Panel.Library) {
            return Command.Where.LIBRARY;
        }
        if (panel instanceof Panel.Proposals) {
            return Command.Where.PROPOSALS;
        }
        if (panel instanceof Panel.Searching) {
            return Command.Where.SEARCH;
        }
        if (panel instanceof Panel.Help) {
            return Command.Where.HELP;
        }
        if (panel instanceof Panel.StopText) {
            return Command.Where.STOP_TEXT;
        }
        if (state.bench().isPresent()) {
            return Command.Where.ORGAN;
        }
        boolean stops =
                state.work().map(open -> open.side() == PlanEdit.Side.STOPS).orElse(true);
        return stops ? Command.Where.STOPS : Command.Where.VERSES;
    }

    /** After pasting into what is not yet a screen of its own. */
    static State pasted(Panel panel, String text, State state) {
        if (panel instanceof Panel.Find find) {
            return MoveCommands.typed(state, find, find.text().typed(text));
        }
        if (panel instanceof Panel.Library library) {
            return LibraryCommands.typed(
                    state, library.shelves(), library.shelves().filter().typed(text));
        }
        if (panel instanceof Panel.StopText box) {
            return PasteCommands.pasted(state, box, text);
        }
        return panel.least().columns() < Layout.LEAST_COLUMNS
                ? state
                : state.says("There is no field here to paste text into.");
    }

    private static State hangup(State state) {
        State kept = state.work()
                .filter(work -> work.history().isUnsaved())
                .map(work -> state.wants(new Effect.KeepDraft(work.plan())))
                .orElse(state);
        return kept.wants(new Effect.Quit());
    }
}
