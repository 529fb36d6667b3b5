package versewind.screen.state;

import versewind.screen.toolkit.Key;
import versewind.screen.toolkit.TextLine;

/** A screen with one line that is typed into: whatever is no command, and what is pasted, goes there. */
public interface TextEntry extends Screen {

    /** What the line holds. */
    TextLine line();

    /** After the line, or the place in it, became another. */
    State typed(TextLine line, State state);

    @Override
    default boolean takesText() {
        return true;
    }

    @Override
    default State typed(Key key, State state) {
        return typed(line().after(key), state);
    }

    @Override
    default State pasted(String text, State state) {
        return typed(line().typed(text), state);
    }
}
