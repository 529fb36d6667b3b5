package versewind.screen;

import java.util.EnumMap;
import java.util.List;
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
        ChooserCommands.into(handlers);
        LibraryCommands.into(handlers);
        MeterCommands.into(handlers);
        FindingsCommands.into(handlers);
        ProposalCommands.into(handlers);
        LockCommands.into(handlers);
        VerseFeedbackCommands.into(handlers);
        OrganEditCommands.into(handlers);
        OrganEditSaving.into(handlers);
        PasteCommands.into(handlers);
        DeskCommands.into(handlers);
        FeedbackCommands.into(handlers);
        return handlers;
    }

    /** The commands that have something to do: all of them. */
    static Map<Command, Handler> table() {
        return HANDLERS;
    }

    /** The state after an input, and what is to be done outside. */
    public static Transition step(State state, Event input) {
        return LibraryCommands.asking(answer(state, input));
    }

    /** The state in which the program starts without a plan: the library is looked through. */
    public static Transition start(State state) {
        return LibraryCommands.open(state);
    }

    /** The state in which the program goes on at the desk, when a plan has just been opened for that. */
    public static Transition desk(State state) {
        return DeskCommands.alone(state);
    }

    private static Transition answer(State state, Event input) {
        if (input instanceof Event.Press press) {
            return press(state.with(Notice.NONE), press.key());
        }
        if (input instanceof Event.Paste paste) {
            return paste(state.with(Notice.NONE), paste.text());
        }
        if (input instanceof Event.Resize resize) {
            return Transition.to(state.sized(resize.columns(), resize.rows()));
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
            return MeterCommands.recalibrated(state, recalibrated);
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
            return DeskCommands.found(state, found);
        }
        if (input instanceof Event.Done done) {
            return Transition.says(state, done.sentence());
        }
        return FileCommands.failed(state, ((Event.Failed) input).sentence());
    }

    private static Transition press(State state, Key key) {
        Optional<Command> command = KeyMap.meaning(state.where(), key);
        if (Layout.isTooSmall(state)
                && command.filter(each -> worksInSmallWindow(each, state)).isEmpty()) {
            return Transition.to(state);
        }
        if (command.isPresent()) {
            return HANDLERS.get(command.get()).on(state);
        }
        Panel panel = state.panel();
        if (panel instanceof Panel.Find find) {
            return MoveCommands.typed(state, find, find.text().after(key));
        }
        if (panel instanceof Panel.Form form) {
            return Transition.to(state.with(OrganEditCommands.checked(
                    form.with(form.fields().get(form.at()).line().after(key)))));
        }
        if (panel instanceof Panel.Chooser chooser) {
            return ChooserCommands.typed(state, chooser, chooser.filter().after(key));
        }
        if (panel instanceof Panel.Library library) {
            return LibraryCommands.typed(
                    state, library.shelves(), library.shelves().filter().after(key));
        }
        if (panel instanceof Panel.Question question) {
            return FileCommands.answered(state, question, key);
        }
        if (panel instanceof Panel.StopText box) {
            return Transition.to(state.with(box.after(key)));
        }
        if (Layout.isDesk(state)) {
            return Transition.to(state);
        }
        return Transition.says(state, key.name() + " means nothing here; ? shows all keys.");
    }

    /** What is too small for the plan may be large enough for the desk. */
    private static boolean worksInSmallWindow(Command command, State state) {
        return command == Command.INTERRUPT || (command == Command.AT_DESK && Layout.hasRoomForDesk(state));
    }

    /** Pasted text goes where text is typed, and is never taken for keys. */
    private static Transition paste(State state, String text) {
        Panel panel = state.panel();
        if (panel instanceof Panel.Find find) {
            return MoveCommands.typed(state, find, find.text().typed(text));
        }
        if (panel instanceof Panel.Form form) {
            TextLine line = form.fields().get(form.at()).line();
            return line.hasRoomFor(text)
                    ? Transition.to(state.with(OrganEditCommands.checked(form.with(line.typed(text)))))
                    : Transition.says(state, "That is too long: a field takes " + TextLine.LONGEST + " characters.");
        }
        if (panel instanceof Panel.Chooser chooser) {
            return ChooserCommands.typed(state, chooser, chooser.filter().typed(text));
        }
        if (panel instanceof Panel.Library library) {
            return LibraryCommands.typed(
                    state, library.shelves(), library.shelves().filter().typed(text));
        }
        if (panel instanceof Panel.StopText box) {
            return PasteCommands.pasted(state, box, text);
        }
        return Layout.isDesk(state)
                ? Transition.to(state)
                : Transition.says(state, "There is no field here to paste text into.");
    }

    private static Transition hangup(State state) {
        if (state.work().filter(work -> work.history().isUnsaved()).isPresent()) {
            return new Transition(
                    state, List.of(new Effect.KeepDraft(state.work().get().plan()), new Effect.Quit()));
        }
        return Transition.to(state, new Effect.Quit());
    }
}
