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
        Moving.into(handlers);
        Registering.into(handlers);
        Playing.into(handlers);
        Arranging.into(handlers);
        Filing.into(handlers);
        Choosing.into(handlers);
        Shelving.into(handlers);
        Metering.into(handlers);
        Heeding.into(handlers);
        Proposing.into(handlers);
        Locking.into(handlers);
        Answering.into(handlers);
        Benching.into(handlers);
        BenchFiling.into(handlers);
        Pasting.into(handlers);
        Desking.into(handlers);
        Afterwards.into(handlers);
        return handlers;
    }

    /** The commands that have something to do: all of them. */
    static Map<Command, Handler> table() {
        return HANDLERS;
    }

    /** The state after an input, and what is to be done outside. */
    public static Step step(State state, Input input) {
        return Shelving.asking(answer(state, input));
    }

    /** The state in which the program starts without a plan: the library is looked through. */
    public static Step start(State state) {
        return Shelving.open(state);
    }

    /** The state in which the program goes on at the desk, when a plan has just been opened for that. */
    public static Step desk(State state) {
        return Desking.alone(state);
    }

    private static Step answer(State state, Input input) {
        if (input instanceof Input.Press press) {
            return press(state.with(Notice.NONE), press.key());
        }
        if (input instanceof Input.Paste paste) {
            return paste(state.with(Notice.NONE), paste.text());
        }
        if (input instanceof Input.Resize resize) {
            return Step.to(state.sized(resize.columns(), resize.rows()));
        }
        if (input instanceof Input.Hangup) {
            return hangup(state);
        }
        if (input instanceof Input.Saved saved) {
            return Filing.saved(state, saved);
        }
        if (input instanceof Input.SaveRefused refused) {
            return Filing.saveRefused(state, refused);
        }
        if (input instanceof Input.PlansListed listed) {
            return Shelving.listed(state, listed);
        }
        if (input instanceof Input.InstrumentsListed listed) {
            return Shelving.instrumentsListed(state, listed);
        }
        if (input instanceof Input.PlanAssessed assessed) {
            return Shelving.assessed(state, assessed);
        }
        if (input instanceof Input.LibraryChanged changed) {
            return Shelving.changed(state, changed);
        }
        if (input instanceof Input.HymnsRead read) {
            return Shelving.hymnsRead(state, read);
        }
        if (input instanceof Input.HymnBrought brought) {
            return Shelving.brought(state, brought);
        }
        if (input instanceof Input.SavedUnder saved) {
            return Filing.savedUnder(state, saved);
        }
        if (input instanceof Input.PlanOpened opened) {
            return Filing.planOpened(state, opened);
        }
        if (input instanceof Input.Recalibrated recalibrated) {
            return Metering.recalibrated(state, recalibrated);
        }
        if (input instanceof Input.OrganOpened opened) {
            return BenchFiling.opened(state, opened);
        }
        if (input instanceof Input.OrganClosed) {
            return BenchFiling.closed(state);
        }
        if (input instanceof Input.OrganSaved saved) {
            return BenchFiling.saved(state, saved);
        }
        if (input instanceof Input.Searched searched) {
            return Proposing.searched(state, searched);
        }
        if (input instanceof Input.Proposed proposed) {
            return Proposing.proposed(state, proposed);
        }
        if (input instanceof Input.LadderFound found) {
            return Desking.found(state, found);
        }
        if (input instanceof Input.Done done) {
            return Step.says(state, done.sentence());
        }
        return Filing.failed(state, ((Input.Failed) input).sentence());
    }

    private static Step press(State state, Key key) {
        Optional<Command> command = KeyMap.meaning(state.where(), key);
        if (Layout.isTooSmall(state)
                && command.filter(each -> worksInSmallWindow(each, state)).isEmpty()) {
            return Step.to(state);
        }
        if (command.isPresent()) {
            return HANDLERS.get(command.get()).on(state);
        }
        Panel panel = state.panel();
        if (panel instanceof Panel.Find find) {
            return Moving.typed(state, find, find.text().after(key));
        }
        if (panel instanceof Panel.Form form) {
            return Step.to(state.with(Benching.checked(
                    form.with(form.fields().get(form.at()).line().after(key)))));
        }
        if (panel instanceof Panel.Chooser chooser) {
            return Choosing.typed(state, chooser, chooser.filter().after(key));
        }
        if (panel instanceof Panel.Library library) {
            return Shelving.typed(
                    state, library.shelves(), library.shelves().filter().after(key));
        }
        if (panel instanceof Panel.Question question) {
            return Filing.answered(state, question, key);
        }
        if (panel instanceof Panel.StopText box) {
            return Step.to(state.with(box.after(key)));
        }
        if (Layout.isDesk(state)) {
            return Step.to(state);
        }
        return Step.says(state, key.name() + " means nothing here; ? shows all keys.");
    }

    /** What is too small for the plan may be large enough for the desk. */
    private static boolean worksInSmallWindow(Command command, State state) {
        return command == Command.INTERRUPT || (command == Command.AT_DESK && Layout.hasRoomForDesk(state));
    }

    /** Pasted text goes where text is typed, and is never taken for keys. */
    private static Step paste(State state, String text) {
        Panel panel = state.panel();
        if (panel instanceof Panel.Find find) {
            return Moving.typed(state, find, find.text().typed(text));
        }
        if (panel instanceof Panel.Form form) {
            TextLine line = form.fields().get(form.at()).line();
            return line.hasRoomFor(text)
                    ? Step.to(state.with(Benching.checked(form.with(line.typed(text)))))
                    : Step.says(state, "That is too long: a field takes " + TextLine.LONGEST + " characters.");
        }
        if (panel instanceof Panel.Chooser chooser) {
            return Choosing.typed(state, chooser, chooser.filter().typed(text));
        }
        if (panel instanceof Panel.Library library) {
            return Shelving.typed(
                    state, library.shelves(), library.shelves().filter().typed(text));
        }
        if (panel instanceof Panel.StopText box) {
            return Pasting.pasted(state, box, text);
        }
        return Layout.isDesk(state) ? Step.to(state) : Step.says(state, "There is no field here to paste text into.");
    }

    private static Step hangup(State state) {
        if (state.work().filter(work -> work.history().isUnsaved()).isPresent()) {
            return new Step(
                    state, List.of(new Effect.KeepDraft(state.work().get().plan()), new Effect.Quit()));
        }
        return Step.to(state, new Effect.Quit());
    }
}
