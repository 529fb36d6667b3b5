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
import versewind.screen.state.Event;

/** Reads keys and pastes from the bytes that a terminal sends; Lanterna decodes them. */
final class KeyReader {

    private final InputDecoder decoder;
    private final KeyStrokes strokes = new KeyStrokes();

    KeyReader(InputStream bytes, Charset charset) {
        EscapeSequence sequences = new EscapeSequence();
        decoder = new InputDecoder(new EscapeTimeoutReader(new InputStreamReader(bytes, charset), sequences));
        decoder.addProfile(new Patterns(List.of(
                sequences,
                new BasicCharacterPattern(KeyStrokes.CARRIAGE_RETURN, '\r'),
                new BasicCharacterPattern(KeyStrokes.LINE_FEED, '\n'),
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
                    event = strokes.event(stroke);
                }
            }
            return event.get();
        } catch (IOException lineBroken) {
            return new Event.Hangup();
        }
    }
}
