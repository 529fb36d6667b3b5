package versewind.screen;

import java.util.List;
import versewind.proposal.Proposal;

/** What lies over the plan and has the keys, if anything does. */
sealed interface Panel extends Screen {

    @Override
    default KeyTable<?> keys() {
        return KeyTable.NONE;
    }

    @Override
    default Layer layer() {
        return this instanceof None
                ? Layer.GROUND
                : this instanceof Library || this instanceof Help || this instanceof StopText
                        ? Layer.SHEET
                        : Layer.WINDOW;
    }

    @Override
    default State pressed(Key key, State state) {
        return Update.pressed(this, key, state);
    }

    @Override
    default State pasted(String text, State state) {
        return Update.pasted(this, text, state);
    }

    @Override
    default State settled(State state) {
        return this instanceof Library ? LibraryCommands.asking(state) : state;
    }

    @Override
    default void paint(Frame frame, State state) {
        View.paint(this, frame, state);
    }

    /** The plan itself has the keys. */
    record None() implements Panel {}

    /**
     * A stop is being looked for.
     *
     * @param text what was typed of its name
     * @param from the knob to go back to
     * @param side what had the keys before
     */
    record Find(TextLine text, int from, PlanEdit.Side side) implements Panel {}

    /**
     * All keys are being read.
     *
     * @param top the first line shown
     */
    record Help(int top) implements Panel {}

    /**
     * A stop list is pasted or typed.
     *
     * @param text what it holds so far
     */
    record StopText(String text) implements Panel {

        /** The longest list that can be pasted, in UTF-16 units. */
        static final int LONGEST = 100_000;

        /** After a key that types or takes away at the end. */
        StopText after(Key key) {
            if (key.control()) {
                return this;
            }
            return switch (key.named()) {
                case CHARACTER -> typed(Character.toString(key.character()));
                case ENTER -> typed("\n");
                case BACKSPACE ->
                    text.isEmpty() ? this : new StopText(text.substring(0, text.offsetByCodePoints(text.length(), -1)));
                case UP, DOWN, LEFT, RIGHT, HOME, END, PAGE_UP, PAGE_DOWN, ESCAPE, TAB, BACK_TAB, INSERT, DELETE ->
                    this;
                case F1, F2, F3, F4, F5, F6, F7, F8, F9, F10, F11, F12 -> this;
            };
        }

        /** With more text at its end, if there is room for it. */
        StopText typed(String more) {
            return text.length() + more.length() <= LONGEST ? new StopText(text + more) : this;
        }
    }

    /** The library is looked through. */
    record Library(LibraryState shelves) implements Panel {}

    /**
     * What is proposed for the verse where we are.
     *
     * @param rows the best first, one at least
     * @param at the row that is marked
     */
    record Proposals(List<Proposal> rows, int at) implements Panel {

        public Proposals {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Registrations for many verses are searched for.
     *
     * @param verses how many have been searched
     * @param of how many there are
     */
    record Searching(int verses, int of) implements Panel {}
}
