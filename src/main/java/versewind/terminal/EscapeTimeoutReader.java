package versewind.terminal;

import java.io.EOFException;
import java.io.IOException;
import java.io.Reader;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Delays {@code ready()} = false while an escape sequence is incomplete.
 *
 * <p>An arrow key sends ESC [ A, and the Escape key sends ESC. On a line that delivers one byte at a time the two can
 * be told apart only by waiting a little for the next byte. A paste is waited for without end: a decoder that once gave
 * up on one would take the rest of its text for keys.
 */
final class EscapeTimeoutReader extends Reader {

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
        return count;
    }

    @Override
    public boolean ready() throws IOException {
        boolean ready = sequence.isPaste() || characters.ready();
        for (int looks = sequence.patienceMs(); looks > 0 && !ready; looks--) {
            LockSupport.parkNanos(LOOK_NS);
            ready = characters.ready();
        }
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
