package versewind.terminal;

import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.List;
import java.util.Optional;
import versewind.screen.Event;
import versewind.screen.Key;
import versewind.screen.Key.Named;

/**
 * What the characters that a terminal sends mean, as patterns for Lanterna's decoder.
 *
 * <p>The decoder takes the last pattern that matches whole, so the one that swallows any control sequence stands first:
 * a sequence that no other pattern knows means nothing, and never the letters it is written with. Escape and a letter
 * after it are no such sequence but two keys, however close they come.
 */
enum KeyPattern implements CharacterPattern {
    /** Any control sequence whatever, however far it has come; a paste is not one. */
    ANY_SEQUENCE {
        @Override
        public Matching match(List<Character> characters) {
            EscapeSequence sequence = EscapeSequence.NONE;
            for (int i = 0; i < characters.size(); i++) {
                if (i > 0 && !sequence.isOpen()) {
                    return null;
                }
                sequence = sequence.after(characters.get(i));
            }
            boolean begun = characters.get(0) == ESC && sequence != EscapeSequence.BROKEN;
            if (!begun || startsWith(characters, PASTE_BEGINS)) {
                return null;
            }
            boolean undecided = sequence == EscapeSequence.ANSWER || sequence == EscapeSequence.STRING_END;
            return undecided ? Matching.NOT_YET : new Matching(sequence.isOpen(), MEANINGLESS);
        }
    },

    /** The control sequence of a key. */
    KEY_SEQUENCE {
        @Override
        public Matching match(List<Character> characters) {
            if (characters.get(0) != ESC || characters.size() > KeySequences.LONGEST) {
                return null;
            }
            Optional<Key> key = KeySequences.key(text(characters));
            return key.isPresent() ? new Matching(pressed(key.get())) : null;
        }
    },

    /** One character, or the two that make up one beyond U+FFFF; Enter as CR, LF or both. */
    CHARACTER {
        @Override
        public Matching match(List<Character> characters) {
            char first = characters.get(0);
            if (characters.size() > 2 || first == ESC) {
                return null;
            }
            if (characters.size() == 1) {
                return Character.isHighSurrogate(first) ? Matching.NOT_YET : single(first);
            }
            char second = characters.get(1);
            if (first == '\r' && second == '\n') {
                return new Matching(pressed(Key.of(Named.ENTER)));
            }
            return Character.isSurrogatePair(first, second)
                    ? new Matching(pressed(Key.of(Character.toCodePoint(first, second))))
                    : null;
        }
    },

    /** A text between the two marks of a paste; line ends become LF. */
    PASTE {
        @Override
        public Matching match(List<Character> characters) {
            if (!startsWith(characters, PASTE_BEGINS)) {
                return null;
            }
            int size = characters.size();
            int end = size - PASTE_ENDS.length();
            if (end < PASTE_BEGINS.length() || !startsWith(characters.subList(end, size), PASTE_ENDS)) {
                return Matching.NOT_YET;
            }
            String text = text(characters.subList(PASTE_BEGINS.length(), end));
            return new Matching(
                    new Decoded(new Event.Paste(text.replace("\r\n", "\n").replace('\r', '\n'))));
        }
    };

    /** All patterns, in their order. */
    static final KeyDecodingProfile ALL = new All();

    static final String PASTE_BEGINS = "\033[200~";
    static final String PASTE_ENDS = "\033[201~";

    private static final char ESC = 0x1B;
    private static final KeyStroke MEANINGLESS = new KeyStroke(KeyType.Unknown);

    private static final class All implements KeyDecodingProfile {
        @Override
        public List<CharacterPattern> getPatterns() {
            return List.of(values());
        }
    }

    /** An input as the decoder passes it on; it knows keys only as its own. */
    static final class Decoded extends KeyStroke {

        private final Event input;

        private Decoded(Event input) {
            super(KeyType.Unknown);
            this.input = input;
        }

        Event input() {
            return input;
        }
    }

    private static Matching single(char c) {
        return switch (c) {
            case '\r' -> new Matching(true, pressed(Key.of(Named.ENTER)));
            case '\n' -> new Matching(pressed(Key.of(Named.ENTER)));
            case '\t' -> new Matching(pressed(Key.of(Named.TAB)));
            case '\b', 0x7F -> new Matching(pressed(Key.of(Named.BACKSPACE)));
            case 0 -> new Matching(pressed(Key.control(' ')));
            default -> new Matching(isTyped(c) ? pressed(typed(c)) : MEANINGLESS);
        };
    }

    /** A letter, or what a terminal sends for a letter held with control and for the four signs after Z. */
    private static Key typed(char c) {
        return c < ' ' ? Key.control(Character.toLowerCase((char) (c + '@'))) : Key.of(c);
    }

    /** Half a character, what has no meaning in the character set and the second set of controls type nothing. */
    private static boolean isTyped(char c) {
        return !Character.isSurrogate(c) && c != '\uFFFD' && (c < 0x80 || c > 0x9F);
    }

    private static KeyStroke pressed(Key key) {
        return new Decoded(new Event.Press(key));
    }

    private static boolean startsWith(List<Character> characters, String text) {
        if (characters.size() < text.length()) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            if (characters.get(i) != text.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private static String text(List<Character> characters) {
        StringBuilder text = new StringBuilder(characters.size());
        for (char c : characters) {
            text.append(c);
        }
        return text.toString();
    }
}
