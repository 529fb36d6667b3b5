package versewind.screen;

/** What lies over the plan and has the keys, if anything does. */
sealed interface Panel extends Screen {

    @Override
    default KeyTable<?> keys() {
        return KeyTable.NONE;
    }

    @Override
    default Layer layer() {
        return Layer.SHEET;
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
    default void paint(Frame frame, State state) {
        View.paint(this, frame, state);
    }

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
}
