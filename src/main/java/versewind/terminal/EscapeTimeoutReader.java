package versewind.terminal;

import java.io.EOFException;
import java.io.IOException;
import java.io.Reader;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * A reader of characters that does not call itself empty at once while a control sequence is open.
 *
 * <p>An arrow key sends ESC [ A, and the Escape key sends ESC. On a line that delivers one byte at a time the two can be
 * told apart only by waiting a little, and this is where it is waited: {@link #ready()} stays until another character
 * comes or patience ends. After ESC alone that is soon, since someone waits for the Escape key's effect; after ESC [ no
 * key is kept waiting, and the rest is surely on its way. While a paste is open there is no end of patience: if the
 * decoder once gave up on one, it would take the rest of the text for keys.
 */
final class EscapeTimeoutReader extends Reader {

    /** Looks at an empty line before Escape is believed in; one takes a millisecond. */
    static final int LOOKS_AFTER_ESCAPE = 40;

    private static final int LOOKS_WITHIN_SEQUENCE = 400;
    private static final long LOOK_NS = TimeUnit.MILLISECONDS.toNanos(1);

    private final Reader characters;
    private EscapeSequence sequence = EscapeSequence.NONE;
    private boolean pasting;
    private int markMatched;

    EscapeTimeoutReader(Reader characters) {
        this.characters = characters;
    }

    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        int count = characters.read(target, offset, length);
        if (count < 0 && pasting) {
            throw new EOFException("the line ended within a paste");
        }
        for (int i = 0; i < count; i++) {
            follow(target[offset + i]);
        }
        return count;
    }

    private void follow(char c) {
        EscapeSequence next = sequence.after(c);
        sequence = next == EscapeSequence.BROKEN ? EscapeSequence.NONE.after(c) : next;
        String mark = pasting ? KeyPattern.PASTE_ENDS : KeyPattern.PASTE_BEGINS;
        markMatched = c == mark.charAt(markMatched) ? markMatched + 1 : c == mark.charAt(0) ? 1 : 0;
        if (markMatched == mark.length()) {
            pasting = !pasting;
            markMatched = 0;
        }
    }

    @Override
    public boolean ready() throws IOException {
        if (pasting || characters.ready()) {
            return true;
        }
        int looks =
                !sequence.isOpen() ? 0 : sequence == EscapeSequence.ESCAPE ? LOOKS_AFTER_ESCAPE : LOOKS_WITHIN_SEQUENCE;
        for (int i = 0; i < looks; i++) {
            LockSupport.parkNanos(LOOK_NS);
            if (characters.ready()) {
                return true;
            }
        }
        sequence = EscapeSequence.NONE;
        return false;
    }

    @Override
    public void close() throws IOException {
        characters.close();
    }
}
