package versewind.terminal;

import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.CtrlAndCharacterPattern;
import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import versewind.screen.Event;
import versewind.screen.Key;
import versewind.screen.Key.Named;

/** Reads keys and pastes from the bytes that a terminal sends; Lanterna decodes them. */
final class KeyReader {

    /** Enter in both its forms; Alt only tells one from the other. */
    private static final KeyStroke CARRIAGE_RETURN = new KeyStroke(KeyType.Enter, false, false);

    private static final KeyStroke LINE_FEED = new KeyStroke(KeyType.Enter, false, true);

    private final InputDecoder decoder;
    private KeyStroke last = LINE_FEED;

    KeyReader(InputStream bytes, Charset charset) {
        EscapeSequence sequences = new EscapeSequence();
        decoder = new InputDecoder(new EscapeTimeoutReader(new InputStreamReader(bytes, charset), sequences));
        decoder.addProfile(new Patterns(List.of(
                sequences,
                new BasicCharacterPattern(CARRIAGE_RETURN, '\r'),
                new BasicCharacterPattern(LINE_FEED, '\n'),
                new BasicCharacterPattern(new KeyStroke(KeyType.Tab), '\t'),
                new BasicCharacterPattern(new KeyStroke(KeyType.Backspace), '\b'),
                new BasicCharacterPattern(new KeyStroke(KeyType.Backspace), '\177'),
                new CtrlAndCharacterPattern(),
                new PrintableCharacter())));
    }

    private record Patterns(List<CharacterPattern> getPatterns) implements KeyDecodingProfile {}

    /** A character that stands for itself. Lanterna's own pattern loads the blocks of Unicode for it, some 2 ms. */
    private static final class PrintableCharacter implements CharacterPattern {
        @Override
        public Matching match(List<Character> typed) {
            char c = typed.get(0);
            boolean printable = !Character.isISOControl(c) && c != '\uFFFD';
            return typed.size() == 1 && printable ? new Matching(new KeyStroke(c, false, false)) : null;
        }
    }

    /** Blocks until the next input. When the bytes end, or the line breaks, that is a hangup. */
    Event next() {
        try {
            Optional<Event> event = Optional.empty();
            while (event.isEmpty()) {
                KeyStroke stroke = decoder.getNextCharacter(true);
                if (stroke != null) {
                    event = event(stroke);
                    last = stroke;
                }
            }
            return event.get();
        } catch (IOException lineBroken) {
            return new Event.Hangup();
        }
    }

    /** The event of a stroke, if it is one: the first half of a character or the second of CR LF is none. */
    private Optional<Event> event(KeyStroke stroke) {
        if (stroke instanceof EscapeSequence.Pasted pasted) {
            return Optional.of(new Event.Paste(pasted.text()));
        }
        if (stroke.equals(LINE_FEED) && last.equals(CARRIAGE_RETURN)) {
            return Optional.empty();
        }
        return switch (stroke.getKeyType()) {
            case EOF -> Optional.of(new Event.Hangup());
            case Character -> character(stroke);
            default -> named(stroke.getKeyType()).map(named -> press(new Key(named, 0, stroke.isCtrlDown())));
        };
    }

    private Optional<Event> character(KeyStroke stroke) {
        char c = stroke.getCharacter();
        if (!Character.isSurrogate(c)) {
            return Optional.of(press(new Key(Named.CHARACTER, c, stroke.isCtrlDown())));
        }
        boolean pair = last.getKeyType() == KeyType.Character && Character.isSurrogatePair(last.getCharacter(), c);
        return pair ? Optional.of(press(Key.of(Character.toCodePoint(last.getCharacter(), c)))) : Optional.empty();
    }

    private static Event press(Key key) {
        return new Event.Press(key);
    }

    private static Optional<Named> named(KeyType type) {
        return switch (type) {
            case Escape -> Optional.of(Named.ESCAPE);
            case Backspace -> Optional.of(Named.BACKSPACE);
            case ArrowLeft -> Optional.of(Named.LEFT);
            case ArrowRight -> Optional.of(Named.RIGHT);
            case ArrowUp -> Optional.of(Named.UP);
            case ArrowDown -> Optional.of(Named.DOWN);
            case Insert -> Optional.of(Named.INSERT);
            case Delete -> Optional.of(Named.DELETE);
            case Home -> Optional.of(Named.HOME);
            case End -> Optional.of(Named.END);
            case PageUp -> Optional.of(Named.PAGE_UP);
            case PageDown -> Optional.of(Named.PAGE_DOWN);
            case Tab -> Optional.of(Named.TAB);
            case ReverseTab -> Optional.of(Named.BACK_TAB);
            case Enter -> Optional.of(Named.ENTER);
            case F1, F2, F3, F4, F5, F6, F7, F8, F9, F10, F11, F12 -> Optional.of(Named.valueOf(type.name()));
            case F13, F14, F15, F16, F17, F18, F19, Unknown, Character, CursorLocation, MouseEvent, EOF ->
                Optional.empty();
        };
    }
}
