package versewind.screen;

/**
 * A screen: its state as a value, its keys, what is done with text, and its picture. Screens lie on each other on a
 * stack in {@link State}; the top one has the keys.
 */
interface Screen {

    /** How much of the frame a screen covers. */
    enum Layer {
        /** All of it; windows lie over it, and it says how large the terminal has to be. */
        GROUND,
        /** All of it, but under a window the ground beneath is seen. */
        SHEET,
        /** A part; the nearest ground beneath is painted first. */
        WINDOW
    }

    /**
     * The least size of a terminal.
     *
     * @param columns in cells
     * @param rows in cells
     */
    record Size(int columns, int rows) {}

    /** The keys that have a meaning here. */
    KeyTable<?> keys();

    /** Draws the screen. */
    void paint(Frame frame, State state);

    default Layer layer() {
        return Layer.WINDOW;
    }

    /** The part of the screen that has the keys; rows of the table may be for one part alone. */
    default Object mode(State state) {
        return "";
    }

    /** Whether a key has its meaning even where the terminal is too small for the screen. */
    default boolean worksWhenSmall(Key key, State state) {
        return false;
    }

    /** What is said besides, where the terminal is too small. */
    default String smallWords(State state) {
        return "";
    }

    /** The least size that a ground can be drawn on. */
    default Size least() {
        return new Size(Layout.LEAST_COLUMNS, Layout.LEAST_ROWS);
    }

    /** Whether characters are typed into it, so that none of them is a command. */
    default boolean takesText() {
        return false;
    }

    /** After a key that the table does not have. */
    default State typed(Key key, State state) {
        return state.says(key.name() + " has no meaning here; ? shows the keys that have.");
    }

    /** After text was pasted as one piece, which is never taken for keys. */
    default State pasted(String text, State state) {
        return state.says("There is no field here to paste text into.");
    }

    /** After every event while the screen is on top, to ask for what it shows and does not know yet. */
    default State settled(State state) {
        return state;
    }
}
