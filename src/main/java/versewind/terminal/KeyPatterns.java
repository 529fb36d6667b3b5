package versewind.terminal;

import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern.Matching;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.Collection;
import java.util.List;
import versewind.screen.Input;
import versewind.screen.Key;
import versewind.screen.Key.Named;

/**
 * What the characters that a terminal sends mean, as patterns for Lanterna's decoder.
 *
 * <p>The decoder takes the last pattern that matches whole, so the one that swallows any control sequence stands first:
 * a sequence that no other pattern knows means nothing, and never the letters it is written with.
 */
final class KeyPatterns implements KeyDecodingProfile {

    private static final char ESC = 0x1B;
    private static final String PASTE_BEGINS = "\033[200~";
    private static final String PASTE_ENDS = "\033[201~";

    /** An input as the decoder passes it on; it knows keys only as its own. */
    static final class Decoded extends KeyStroke {

        private final Input input;

        Decoded(Input input) {
            super(KeyType.Unknown);
            this.input = input;
        }

        Input input() {
            return input;
        }
    }

    @Override
    public Collection<CharacterPattern> getPatterns() {
        return List.of(KeyPatterns::anySequence, KeyPatterns::keySequence, KeyPatterns::character, KeyPatterns::paste);
    }

    /** Any control sequence whatever, however far it has come; a paste is not one. */
    private static Matching anySequence(List<Character> characters) {
        EscapeSequence sequence = EscapeSequence.NONE;
        for (int i = 0; i < characters.size(); i++) {
            if (i > 0 && !sequence.isOpen()) {
                return null;
            }
            sequence = sequence.after(characters.get(i));
        }
        if (!sequence.isOpen() && (characters.get(0) != ESC || sequence == EscapeSequence.BROKEN)) {
            return null;
        }
        if (startsWith(characters, PASTE_BEGINS)) {
            return null;
        }
        if (sequence == EscapeSequence.ANSWER || sequence == EscapeSequence.STRING_END) {
            return Matching.NOT_YET;
        }
        return new Matching(sequence.isOpen(), meaningless());
    }

    private static Matching keySequence(List<Character> characters) {
        if (characters.get(0) != ESC || characters.size() > KeySequences.LONGEST) {
            return null;
        }
        StringBuilder text = new StringBuilder(characters.size());
        characters.forEach(text::append);
        return KeySequences.key(text.toString())
                .map(key -> new Matching(pressed(key)))
                .orElse(null);
    }

    /** One character, or the two that make up one beyond U+FFFF; Enter as CR, LF or both. */
    private static Matching character(List<Character> characters) {
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

    private static Matching single(char c) {
        return switch (c) {
            case '\r' -> new Matching(true, pressed(Key.of(Named.ENTER)));
            case '\n' -> new Matching(pressed(Key.of(Named.ENTER)));
            case '\t' -> new Matching(pressed(Key.of(Named.TAB)));
            case '\b', 0x7F -> new Matching(pressed(Key.of(Named.BACKSPACE)));
            case 0 -> new Matching(pressed(Key.control(' ')));
            default -> new Matching(isTyped(c) ? pressed(typed(c)) : meaningless());
        };
    }

    /** Letters, and what a terminal sends for letters and the five signs after Z held with control. */
    private static Key typed(char c) {
        return c < ' ' ? Key.control((char) Character.toLowerCase(c + '@')) : Key.of(c);
    }

    /** A half character, what the character set has no meaning for and the second set of controls type nothing. */
    private static boolean isTyped(char c) {
        return !Character.isSurrogate(c) && c != '\uFFFD' && (c < 0x80 || c > 0x9F);
    }

    /** A text between the two marks; line ends become LF. */
    private static Matching paste(List<Character> characters) {
        if (characters.get(0) != ESC || !startsWith(characters, PASTE_BEGINS)) {
            return null;
        }
        int end = characters.size() - PASTE_ENDS.length();
        boolean ended =
                end >= PASTE_BEGINS.length() && startsWith(characters.subList(end, characters.size()), PASTE_ENDS);
        if (!ended) {
            return Matching.NOT_YET;
        }
        StringBuilder text = new StringBuilder(end);
        characters.subList(PASTE_BEGINS.length(), end).forEach(text::append);
        return new Matching(new Decoded(
                new Input.Paste(text.toString().replace("\r\n", "\n").replace('\r', '\n'))));
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

    private static KeyStroke pressed(Key key) {
        return new Decoded(new Input.Press(key));
    }

    private static KeyStroke meaningless() {
        return new KeyStroke(KeyType.Unknown);
    }
}
