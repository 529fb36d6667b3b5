package versewind.screen;

import java.time.LocalDate;
import versewind.screen.desk.DeskScreen;
import versewind.screen.library.LibraryScreen;
import versewind.screen.organ.SavingScreen;
import versewind.screen.plan.SearchScreen;
import versewind.screen.state.Event;
import versewind.screen.state.State;
import versewind.screen.state.Transition;
import versewind.screen.toolkit.Marks;

/** What comes of an input: a pure function from a state and an input to a state and effects. */
public final class Update {

    private Update() {}

    /** An editor with nothing open yet. */
    public static State empty(int columns, int rows, Marks marks, LocalDate today) {
        return State.empty(columns, rows, marks, today, Rooms.ALL);
    }

    /** The state after an input, and what is to be done outside. */
    public static Transition step(State state, Event input) {
        State after = input.on(state);
        State settled = after.top().settled(after);
        return transition(settled.isSpoken() ? Spoken.after(state, input, settled) : settled);
    }

    /** Whether something goes on in the background that may end soon. */
    public static boolean isSearching(State state) {
        return state.top() instanceof SearchScreen || state.top() instanceof SavingScreen;
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
        State desk = DeskScreen.alone(state);
        return transition(desk.isSpoken() ? Spoken.opened(state, desk) : desk);
    }
}
