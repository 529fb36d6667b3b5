package versewind.screen.state;

import java.util.Optional;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Key;

/**
 * A screen: its state as a value, its keys, what is done with text, and its picture. Screens lie on each other on a
 * stack in {@link State}; the top one has the keys.
 */
public interface Screen {

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
    record Size(int columns, int rows) {

        /** The smallest screen on which a plan can be worked on. */
        static final Size OF_PLAN = new Size(60, 18);

        /** The smallest terminal that can be played from. */
        public static final Size OF_DESK = new Size(40, 10);

        /** Whether it has room on the terminal. */
        public boolean fits(State state) {
            return state.columns() >= columns && state.rows() >= rows;
        }
    }

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
        return Size.OF_PLAN;
    }

    /** Whether it holds work of its own that would be lost. */
    default boolean isUnsaved() {
        return false;
    }

    /** Asks what is to become of that work, before something that closes the screen. */
    default State asked(State state, String doing, Effect then) {
        return state.closed().wants(then);
    }

    /** After something else was written into the file that is changed here; empty where no file is. */
    default Optional<Screen> withFileWritten() {
        return Optional.empty();
    }

    /** Whether its keys save at once, so that nobody has to hear each time that it is saved. */
    default boolean savesUnheard() {
        return false;
    }

    /** Whether what could not be done is said on it where no plan is open. */
    default boolean saysFailures() {
        return false;
    }

    /** Whether characters are typed into it, so that none of them is a command. */
    default boolean takesText() {
        return false;
    }

    /** After a key that the table does not have. */
    default State typed(Key key, State state) {
        State beneath = state.close();
        Optional<String> then = beneath.top() == this ? Optional.empty() : KeyTable.does(beneath, key);
        return state.says(key.name() + " does nothing here; "
                + then.map(words -> "Esc, then " + key.name() + ": " + words + ".")
                        .orElse("? lists the keys that do."));
    }

    /** After text was pasted as one piece, which is never taken for keys. */
    default State pasted(String text, State state) {
        return state.says("There is no field here to paste text into.");
    }

    /** What it is called when it comes up where everything is spoken: "Findings."; blank where it says so itself. */
    default String name(State state) {
        return "";
    }

    /** What is said after a key where everything is spoken and nothing else was said; blank for nothing. */
    default String spoken(State before, State now) {
        return "";
    }

    /** After every event while the screen is on top, to ask for what it shows and does not know yet. */
    default State settled(State state) {
        return state;
    }
}
