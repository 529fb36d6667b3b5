package versewind.screen;

import java.util.List;

/** What comes of an input: a pure function from a state and an input to a state and effects. */
public final class Update {

    /** Keys that mean the same on every screen. */
    static final String REPAINT = "Ctrl-L";

    static final String INTERRUPT = "Ctrl-C";

    private Update() {}

    /** The state after an input, and what is to be done outside. */
    public static Transition step(State state, Event input) {
        State after = input.on(state);
        return transition(after.top().settled(after));
    }

    /** Whether a search goes on that may end soon. */
    public static boolean isSearching(State state) {
        return state.top() instanceof SearchScreen;
    }

    private static Transition transition(State state) {
        return new Transition(state.wantingNothing(), state.wanted());
    }

    /** The state in which the program starts without a plan: the library is looked through. */
    public static Transition start(State state) {
        return transition(LibraryScreen.open(state));
    }

    /** The state in which the program goes on at the desk, when a plan has just been opened for that. */
    public static Transition desk(State state) {
        return transition(DeskScreen.alone(state));
    }

    /** After a key: first what every screen does with it, then what the top one does. */
    static State press(State state, Key key) {
        if (Key.all(INTERRUPT).contains(key)) {
            return interrupt(state);
        }
        if (Layout.isTooSmall(state) && !state.top().worksWhenSmall(key, state)) {
            return state;
        }
        return Key.all(REPAINT).contains(key) ? repaint(state) : state.top().pressed(key, state);
    }

    static State repaint(State state) {
        return state.wants(Effects::repaint);
    }

    /** Leaves from anywhere, after asking what is to become of unsaved work and of what was typed into a form. */
    static State interrupt(State state) {
        if (!state.isUnsaved() && state.top() instanceof FormBox form && form.isTyped()) {
            Question.Answer leave = new Question.Answer("d", "leave without it", closed -> closed.wants(Effects::quit));
            return state.open(new Question("What you typed is not saved yet.", List.of(leave, Question.Answer.STAY)));
        }
        return FileCommands.afterAsking(state, Effects::quit);
    }

    static State hangup(State state) {
        State kept = state.work()
                .filter(work -> work.history().isUnsaved())
                .map(work -> state.wants(effects -> effects.keepDraft(work.plan())))
                .orElse(state);
        return kept.wants(Effects::quit);
    }
}
