package versewind.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * A stream of bytes that does not call itself empty at once while a control sequence is open.
 *
 * <p>An arrow key sends ESC [ A, and the Escape key sends ESC. On a line that delivers one byte at a time the two can be
 * told apart only by waiting a little, and this is where it is waited: {@link #available()} stays until another byte
 * comes or patience ends. After ESC alone that is soon, since someone waits for the Escape key's effect; after ESC [ no
 * key is kept waiting, and the rest is surely on its way.
 */
final class PatientInput extends InputStream {

    private static final long AFTER_ESCAPE_NS = TimeUnit.MILLISECONDS.toNanos(40);
    private static final long WITHIN_SEQUENCE_NS = TimeUnit.MILLISECONDS.toNanos(400);
    private static final long GLANCE_NS = TimeUnit.MILLISECONDS.toNanos(1);

    private final InputStream bytes;
    private EscapeSequence sequence = EscapeSequence.NONE;

    PatientInput(InputStream bytes) {
        this.bytes = bytes;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
        int count = bytes.read(target, offset, length);
        for (int i = 0; i < count; i++) {
            int c = target[offset + i] & 0xFF;
            EscapeSequence next = sequence.after(c);
            sequence = next == EscapeSequence.BROKEN ? EscapeSequence.NONE.after(c) : next;
        }
        return count;
    }

    @Override
    public int available() throws IOException {
        int available = bytes.available();
        if (available > 0 || !sequence.isOpen()) {
            return available;
        }
        long patienceNs = sequence == EscapeSequence.ESCAPE ? AFTER_ESCAPE_NS : WITHIN_SEQUENCE_NS;
        long start = System.nanoTime();
        while (available == 0 && System.nanoTime() - start < patienceNs) {
            LockSupport.parkNanos(GLANCE_NS);
            available = bytes.available();
        }
        if (available == 0) {
            sequence = EscapeSequence.NONE;
        }
        return available;
    }
}
