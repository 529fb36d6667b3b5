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
