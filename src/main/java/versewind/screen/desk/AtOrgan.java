package versewind.screen.desk;

import versewind.screen.state.Screen;
import versewind.screen.state.State;
import versewind.screen.toolkit.Key;

/** A screen to be used while playing: it fits a small terminal, and a key that has no meaning says nothing. */
interface AtOrgan extends Screen {

    @Override
    default Layer layer() {
        return Layer.GROUND;
    }

    @Override
    default Size least() {
        return Size.OF_DESK;
    }

    @Override
    default State typed(Key key, State state) {
        return state;
    }

    @Override
    default State pasted(String text, State state) {
        return state;
    }
}
