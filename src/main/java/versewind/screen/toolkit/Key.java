package versewind.screen.toolkit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A key as it was pressed.
 *
 * @param named which key; {@link Named#CHARACTER} for all that type something
 * @param character the code point typed, in lower case where control was held; 0 for named keys
 * @param control whether the control key was held
 */
public record Key(Named named, int character, boolean control) {

    private static final String CONTROL = "Ctrl-";
    private static final String SPACE = "Space";

    /** Keys that have a name. */
    public enum Named {
        CHARACTER(""),
        UP("Up"),
        DOWN("Down"),
        LEFT("Left"),
        RIGHT("Right"),
        HOME("Home"),
        END("End"),
        PAGE_UP("Page Up"),
        PAGE_DOWN("Page Down"),
        ENTER("Enter"),
        ESCAPE("Esc"),
        TAB("Tab"),
        BACK_TAB("Shift-Tab"),
        BACKSPACE("Backspace"),
        DELETE("Delete"),
        INSERT("Insert"),
        F1("F1"),
        F2("F2"),
        F3("F3"),
        F4("F4"),
        F5("F5"),
        F6("F6"),
        F7("F7"),
        F8("F8"),
        F9("F9"),
        F10("F10"),
        F11("F11"),
        F12("F12");

        private static final Map<String, Key> BY_WORD = new HashMap<>();

        static {
            for (Named named : values()) {
                BY_WORD.put(named.word, of(named));
            }
        }

        private final String word;

        Named(String word) {
            this.word = word;
        }
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

    /** The keys of some names with commas between them, as {@link #name} writes them: "u, Ctrl-Z". */
    public static List<Key> all(String names) {
        return names.equals(",")
                ? List.of(of(','))
                : Stream.of(names.split(", ")).map(Key::parse).toList();
    }

    private static Key parse(String name) {
        if (name.startsWith(CONTROL)) {
            return control(Character.toLowerCase(name.charAt(CONTROL.length())));
        }
        if (name.length() == 1) {
            return of(name.charAt(0));
        }
        return name.equals(SPACE) ? of(' ') : Named.BY_WORD.get(name);
    }

    /** Whether it types a character. */
    public boolean isCharacter() {
        return named == Named.CHARACTER && !control;
    }

    /** As it is written for people: "Ctrl-S", "Page Down", "Space". */
    public String name() {
        if (control) {
            return CONTROL + Character.toString(Character.toUpperCase(character));
        }
        if (named != Named.CHARACTER) {
            return named.word;
        }
        return character == ' ' ? SPACE : Character.toString(character);
    }
}
