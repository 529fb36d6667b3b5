package versewind.screen;

/**
 * A key as it was pressed.
 *
 * @param named which key; {@link Named#CHARACTER} for all that type something
 * @param character the code point typed, in lower case where control was held; 0 for named keys
 * @param control whether the control key was held
 */
public record Key(Named named, int character, boolean control) {

    /** Keys that have a name. */
    public enum Named {
        CHARACTER,
        UP,
        DOWN,
        LEFT,
        RIGHT,
        HOME,
        END,
        PAGE_UP,
        PAGE_DOWN,
        ENTER,
        ESCAPE,
        TAB,
        BACK_TAB,
        BACKSPACE,
        DELETE,
        INSERT,
        F1,
        F2,
        F3,
        F4,
        F5,
        F6,
        F7,
        F8,
        F9,
        F10,
        F11,
        F12
    }

    /** A key that types a character. */
    public static Key of(int character) {
        return new Key(Named.CHARACTER, character, false);
    }

    /** A character held with control: control('s'). */
    public static Key control(char character) {
        return new Key(Named.CHARACTER, character, true);
    }

    /** A key with a name. */
    public static Key of(Named named) {
        return new Key(named, 0, false);
    }

    /** As it is written for people: "Ctrl-S", "Page Down", "Space". */
    public String name() {
        if (control) {
            return "Ctrl-" + Character.toString(Character.toUpperCase(character));
        }
        return switch (named) {
            case CHARACTER -> character == ' ' ? "Space" : Character.toString(character);
            case PAGE_UP -> "Page Up";
            case PAGE_DOWN -> "Page Down";
            case BACK_TAB -> "Shift-Tab";
            case ESCAPE -> "Esc";
            case UP -> "Up";
            case DOWN -> "Down";
            case LEFT -> "Left";
            case RIGHT -> "Right";
            case HOME -> "Home";
            case END -> "End";
            case ENTER -> "Enter";
            case TAB -> "Tab";
            case BACKSPACE -> "Backspace";
            case DELETE -> "Delete";
            case INSERT -> "Insert";
            case F1, F2, F3, F4, F5, F6, F7, F8, F9, F10, F11, F12 -> named.name();
        };
    }
}
