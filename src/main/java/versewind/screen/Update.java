package versewind.screen;

import java.util.List;
import java.util.Optional;

/** What comes of an input: a pure function from a state and an input to a state and effects. */
public final class Update {

    private static final String INTERRUPT = "Ctrl-C";

    /** The keys of every screen; those that are characters only where no text is typed. */
    static final KeyTable<Screen> KEYS = KeyTable.<Screen>under("On every screen")
            .key("?, F1", "help: the keys of this screen first", (screen, state) -> state.open(HelpScreen.START))
            .key(":", "a command by its name: a few letters, then Enter", CommandScreen::open)
            .key("Ctrl-L", "repaint the screen", (screen, state) -> state.wants(Effects::repaint))
            .key(INTERRUPT, "leave, from anywhere", (screen, state) -> interrupt(state));

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
        Screen top = state.top();
        boolean isTyped = top.takesText() && key.isCharacter();
        return KeyTable.pressed(top.keys(), top, key, state)
                .or(() -> isTyped ? Optional.empty() : KeyTable.pressed(KEYS, top, key, state))
                .orElseGet(() -> top.typed(key, state));
    }

    /** Leaves from anywhere, after asking what is to become of unsaved work and of what was typed into a form. */
    static State interrupt(State state) {
        if (!state.isUnsaved() && state.top() instanceof FormBox form && form.isTyped()) {
            Question.Answer leave =
                    new Question.Answer("x", "discard it and leave", closed -> closed.wants(Effects::quit));
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
