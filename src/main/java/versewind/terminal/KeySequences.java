package versewind.terminal;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import versewind.screen.Key;
import versewind.screen.Key.Named;

/**
 * The control sequences that keys send, in the forms of the VT100 and VT220, of xterm, rxvt, screen and tmux, and of the
 * Linux console.
 *
 * <p>Source: the key capabilities of the terminals' descriptions in ncurses 6.4, and xterm's control sequences, patch
 * 379, PC-style function keys.
 */
final class KeySequences {

    /** Characters of the longest sequence, ESC [ 24 ; 16 ~. */
    static final int LONGEST = 8;

    private static final int SHIFT = 1;
    private static final int CONTROL = 4;

    private static final Map<String, Named> KEYS = keys();

    private KeySequences() {}

    private static Map<String, Named> keys() {
        Map<String, Named> keys = new HashMap<>();
        keys.put("", Named.ESCAPE);
        lettered(keys, "ABCDHF", Named.UP, Named.DOWN, Named.RIGHT, Named.LEFT, Named.HOME, Named.END);
        lettered(keys, "PQRS", Named.F1, Named.F2, Named.F3, Named.F4);
        for (int i = 0; i < 5; i++) {
            keys.put("[[" + "ABCDE".charAt(i), function(i + 1));
        }
        numbered(keys, 1, Named.HOME, Named.INSERT, Named.DELETE, Named.END, Named.PAGE_UP, Named.PAGE_DOWN);
        numbered(keys, 7, Named.HOME, Named.END);
        numbered(keys, 11, Named.F1, Named.F2, Named.F3, Named.F4, Named.F5);
        numbered(keys, 17, Named.F6, Named.F7, Named.F8, Named.F9, Named.F10);
        numbered(keys, 23, Named.F11, Named.F12);
        keys.put("[Z", Named.BACK_TAB);
        keys.put("OM", Named.ENTER);
        return Map.copyOf(keys);
    }

    /** Keys that end in a letter, as ESC [ A and as ESC O A. */
    private static void lettered(Map<String, Named> keys, String letters, Named... named) {
        for (int i = 0; i < named.length; i++) {
            keys.put("[" + letters.charAt(i), named[i]);
            keys.put("O" + letters.charAt(i), named[i]);
        }
    }

    /** Keys that have consecutive numbers, as ESC [ 5 ~. */
    private static void numbered(Map<String, Named> keys, int first, Named... named) {
        for (int i = 0; i < named.length; i++) {
            keys.put("[" + (first + i) + "~", named[i]);
        }
    }

    private static Named function(int number) {
        return Named.values()[Named.F1.ordinal() + number - 1];
    }

    /** The key that sends a whole sequence, ESC included. */
    static Optional<Key> key(String sequence) {
        String plain = sequence.substring(1);
        int semicolon = plain.indexOf(';');
        if (semicolon < 0) {
            return Optional.ofNullable(KEYS.get(plain)).map(Key::of);
        }
        return modified(plain, semicolon);
    }

    /** xterm's form with Shift, Alt and Control: ESC [ 1 ; 5 A, ESC [ 3 ; 2 ~. Alt makes another key of it: none. */
    private static Optional<Key> modified(String plain, int semicolon) {
        int last = plain.length() - 1;
        if (last <= semicolon) {
            return Optional.empty();
        }
        String modifier = plain.substring(semicolon + 1, last);
        if (plain.charAt(0) != '[' || modifier.isEmpty() || modifier.chars().anyMatch(c -> c < '0' || c > '9')) {
            return Optional.empty();
        }
        int held = Integer.parseInt(modifier) - 1;
        if ((held & ~(SHIFT | CONTROL)) != 0) {
            return Optional.empty();
        }
        char end = plain.charAt(last);
        String number = plain.substring(1, semicolon);
        String base = end == '~' ? "[" + number + "~" : number.equals("1") ? "[" + end : "none";
        return Optional.ofNullable(KEYS.get(base)).map(named -> new Key(named, 0, (held & CONTROL) != 0));
    }
}
