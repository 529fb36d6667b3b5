package versewind.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;

/** A line on which bytes come in pieces: between two of them it looks empty a number of times. */
final class SlowLine extends InputStream {

    private final Deque<byte[]> pieces = new ArrayDeque<>();
    private final int glances;
    private final boolean breaks;
    private byte[] piece = {};
    private int at;
    private int empty;

    private SlowLine(int glances, boolean breaks) {
        this.glances = glances;
        this.breaks = breaks;
    }

    /** Bytes, given as characters up to U+00FF, that come all at once. */
    static SlowLine of(String bytes) {
        return pieces(0, bytes);
    }

    /** Pieces with a gap after each that lasts so many looks at it. */
    static SlowLine pieces(int glances, String... pieces) {
        return filled(new SlowLine(glances, false), pieces);
    }

    /** A line that is dropped after these bytes, as a terminal's is: with an error instead of an end. */
    static SlowLine dropped(String bytes) {
        return filled(new SlowLine(0, true), bytes);
    }

    private static SlowLine filled(SlowLine line, String... pieces) {
        for (String piece : pieces) {
            line.pieces.add(piece.getBytes(StandardCharsets.ISO_8859_1));
        }
        return line;
    }

    @Override
    public int read() throws IOException {
        if (!advance()) {
            if (breaks) {
                throw new IOException("Input/output error");
            }
            return -1;
        }
        return piece[at++] & 0xFF;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
        int first = read();
        if (first < 0) {
            return -1;
        }
        target[offset] = (byte) first;
        int count = Math.min(length - 1, piece.length - at);
        System.arraycopy(piece, at, target, offset + 1, count);
        at += count;
        return count + 1;
    }

    @Override
    public int available() {
        if (at == piece.length && empty++ < glances) {
            return 0;
        }
        return advance() ? piece.length - at : 0;
    }

    private boolean advance() {
        while (at == piece.length) {
            if (pieces.isEmpty()) {
                return false;
            }
            piece = pieces.remove();
            at = 0;
            empty = 0;
        }
        return true;
    }
}
