package versewind.terminal;

import com.googlecode.lanterna.input.BasicCharacterPattern;
import com.googlecode.lanterna.input.CharacterPattern;
import com.googlecode.lanterna.input.CtrlAndCharacterPattern;
import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyDecodingProfile;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
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

    /**
     * Delays {@code ready()} = false while an escape sequence is incomplete.
     *
     * <p>An arrow key sends ESC [ A, and the Escape key sends ESC. On a line that delivers one byte at a time the two
     * can be told apart only by waiting a little for the next byte. A paste is waited for without end: a decoder that
     * once gave up on one would take the rest of its text for keys.
     */
    private static final class EscapeTimeoutReader extends Reader {

        /** A Ctrl-C that is pasted is followed by more; one that is pressed since a paste never ends is not. */
        private static final int PASTE_MS = 400;

        private static final long LOOK_NS = TimeUnit.MILLISECONDS.toNanos(1);

        private final Reader characters;
        private final EscapeSequence sequence;

        EscapeTimeoutReader(Reader characters, EscapeSequence sequence) {
            this.characters = characters;
            this.sequence = sequence;
        }

        @Override
        public int read(char[] target, int offset, int length) throws IOException {
            int count = characters.read(target, offset, length);
            if (count < 0 && sequence.isPaste()) {
                throw new EOFException("the line ended within a paste");
            }
            if (count > 0
                    && sequence.isPaste()
                    && target[offset + count - 1] == EscapeSequence.INTERRUPT
                    && !isFollowedWithin(PASTE_MS)) {
                sequence.interrupt();
            }
            return count;
        }

        private boolean isFollowedWithin(int patienceMs) throws IOException {
            boolean ready = characters.ready();
            for (int looks = patienceMs; looks > 0 && !ready; looks--) {
                LockSupport.parkNanos(LOOK_NS);
                ready = characters.ready();
            }
            return ready;
        }

        @Override
        public boolean ready() throws IOException {
            boolean ready = sequence.isPaste() || isFollowedWithin(sequence.patienceMs());
            if (!ready) {
                sequence.giveUp();
            }
            return ready;
        }

        @Override
        public void close() throws IOException {
            characters.close();
        }
    }
}
