package versewind.screen;

import versewind.screen.desk.DeskScreen;
import versewind.screen.library.LibraryScreen;
import versewind.screen.organ.PasteScreen;
import versewind.screen.plan.PlanScreen;
import versewind.screen.state.Doors;
import versewind.screen.state.Effects;
import versewind.screen.state.KeyTable;
import versewind.screen.state.Leaving;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Screen;
import versewind.screen.state.State;

/** Which screens there are behind the doors. */
final class Rooms implements Doors {

    private static final KeyTable<Screen> KEYS = KeyTable.<Screen>under("On every screen")
            .key("?, F1", "help: the keys of this screen first", (screen, state) -> state.open(HelpScreen.START))
            .key(":", "a command by its name: a few letters, then Enter", CommandScreen::open)
            .key("Ctrl-L", "repaint the screen", (screen, state) -> state.wants(Effects::repaint))
            .key(Leaving.INTERRUPT, "leave, from anywhere", (screen, state) -> Leaving.interrupt(state));

    static final Rooms ALL = new Rooms();

    private Rooms() {}

    @Override
    public KeyTable<Screen> keys() {
        return KEYS;
    }

    @Override
    public Screen ground() {
        return new PlanScreen();
    }

    @Override
    public State library(State state) {
        return LibraryScreen.open(state);
    }

    @Override
    public State libraryToBring(State state) {
        return LibraryScreen.openToBring(state);
    }

    @Override
    public State organs(State state, String marked) {
        return LibraryScreen.organs(state, marked);
    }

    @Override
    public State stopList(State state) {
        return state.closed().open(PasteScreen.EMPTY);
    }

    @Override
    public State desk(State state, PlanEdit work) {
        return DeskScreen.open(state, work);
    }
}
