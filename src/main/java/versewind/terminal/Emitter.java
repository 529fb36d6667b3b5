package versewind.terminal;

import static versewind.screen.toolkit.Frame.SECOND_HALF;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import versewind.screen.toolkit.Frame;
import versewind.screen.toolkit.Marks;
import versewind.screen.toolkit.Style;
import versewind.screen.toolkit.Text;

/**
 * Writes the difference between two frames to the terminal, in few bytes and one write.
 *
 * <p>A cell is an int: the code point and, in the low byte, the index of its attributes. The terminal's cells, cursor
 * and attributes are remembered; -1 stands for unknown. Not thread-safe.
 */
final class Emitter {

    private static final int UNKNOWN = -1;
    private static final int BLANK = ' ' << 8;
    /** Bytes of the sequence that erases to the end of the line. */
    private static final int ERASE_BYTES = 3;

    private final OutputStream line;
    private final Charset charset;
    private final CharsetEncoder encoder;
    private final boolean unicode;
    private final TextAttributes[] looks = new TextAttributes[Style.values().length];
    private final int[] lookOfStyle = new int[looks.length];
    private final StringBuilder out = new StringBuilder(4096);

    private int width;
    private int height;
    private int[] shown = {};
    private int[] wanted = {};
    private boolean known;
    private int cursorX;
    private int cursorY;
    private int look;
    private boolean caret;

    Emitter(OutputStream line, Charset charset, Palette palette) {
        this.line = line;
        this.charset = charset;
        this.encoder = charset.newEncoder();
        this.unicode = charset.equals(StandardCharsets.UTF_8);
        for (Style style : Style.values()) {
            int own = style.ordinal();
            looks[own] = palette.look(style);
            lookOfStyle[own] = firstLike(own);
        }
    }

    private int firstLike(int own) {
        int like = 0;
        while (!looks[like].isLike(looks[own])) {
            like++;
        }
        return like;
    }

    /** Makes the next frame clear the screen and be painted whole. */
    void forget() {
        known = false;
    }

    /** Writes control sequences, after which the state of the terminal is unknown. */
    void send(String sequences) throws IOException {
        forget();
        write(sequences);
    }

    /** Makes the terminal show a frame; writes nothing if it does already. */
    void paint(Frame frame) throws IOException {
        out.setLength(0);
        if (!known || frame.width() != width || frame.height() != height) {
            startAfresh(frame.width(), frame.height());
        }
        take(frame);
        for (int y = 0; y < height; y++) {
            if (frame.marks() == Marks.WORDS && y != frame.caretY()) {
                doubtRow(y);
            }
            row(y);
        }
        caret(frame);
        if (out.length() > 0) {
            forget();
            write(out);
        }
        known = true;
    }

    private void write(CharSequence sequences) throws IOException {
        line.write(sequences.toString().getBytes(charset));
        line.flush();
    }

    private void startAfresh(int columns, int rows) {
        width = columns;
        height = rows;
        shown = new int[columns * rows];
        wanted = new int[columns * rows];
        Arrays.fill(shown, BLANK);
        out.append("\033[m\033[?25l\033[H\033[2J");
        cursorX = 0;
        cursorY = 0;
        look = 0;
        caret = false;
    }

    private void take(Frame frame) {
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int character = shown(frame, x, y);
                int own = lookOfStyle[frame.style(x, y).ordinal()];
                boolean plain = character == ' ' && looks[own].isPlainWhenBlank();
                wanted[y * width + x] = plain ? BLANK : character << 8 | own;
            }
        }
    }

    /** The character of a cell, or in each of its columns its plain form if the charset cannot encode it. */
    private int shown(Frame frame, int x, int y) {
        int character = frame.character(x, y);
        int lead = character == SECOND_HALF ? frame.character(x - 1, y) : character;
        return isEncodable(lead) ? character : Text.plain(lead);
    }

    private boolean isEncodable(int character) {
        boolean always = character < 0x80 || (unicode && (character < 0xD800 || character > 0xDFFF));
        return always || encoder.canEncode(Character.toString(character));
    }

    private static boolean isWide(int cell) {
        return cell != UNKNOWN && Text.columns(cell >>> 8) == 2;
    }

    private void row(int y) {
        int start = y * width;
        if (Arrays.equals(shown, start, start + width, wanted, start, start + width)) {
            return;
        }
        doubtHalves(start);
        int tail = tail(start);
        int end = tail == width ? lastChange(start) + 1 : tail;
        for (int x = 0; x < end; x++) {
            if (shown[start + x] != wanted[start + x]) {
                put(x, y);
            }
        }
        if (tail < width) {
            moveTo(tail, y);
            changeLook(0);
            out.append("\033[K");
            Arrays.fill(shown, start + tail, start + width, BLANK);
        }
    }

    /** Marks a changed row as unknown, so that it is written, and read aloud, whole. */
    private void doubtRow(int y) {
        int start = y * width;
        if (Arrays.equals(shown, start, start + width, wanted, start, start + width)) {
            return;
        }
        int first = start;
        int end = start + width;
        while (first < end && wanted[first] == BLANK) {
            first++;
        }
        while (end > first && wanted[end - 1] == BLANK) {
            end--;
        }
        Arrays.fill(shown, first, end, UNKNOWN);
    }

    /** Marks both halves of changed wide characters as unknown, so that they are written whole. */
    private void doubtHalves(int start) {
        for (int i = start; i + 1 < start + width; i++) {
            boolean pair = isWide(shown[i]) || isWide(wanted[i]);
            if (pair && (shown[i] != wanted[i] || shown[i + 1] != wanted[i + 1])) {
                shown[i] = UNKNOWN;
                shown[i + 1] = UNKNOWN;
            }
        }
    }

    /** The column from which erasing to the end of the line is cheaper than writing blanks, else the width. */
    private int tail(int start) {
        int blank = width;
        while (blank > 0 && wanted[start + blank - 1] == BLANK) {
            blank--;
        }
        int first = blank;
        while (first < width && shown[start + first] == BLANK) {
            first++;
        }
        return lastChange(start) - first + 1 > ERASE_BYTES ? first : width;
    }

    private int lastChange(int start) {
        int x = width - 1;
        while (x >= 0 && shown[start + x] == wanted[start + x]) {
            x--;
        }
        return x;
    }

    private void put(int x, int y) {
        int i = y * width + x;
        int cell = wanted[i];
        if (cell >>> 8 == SECOND_HALF) {
            shown[i] = cell;
            return;
        }
        moveTo(x, y);
        if (!isBlankAsItIs(cell)) {
            changeLook(cell & 0xFF);
        }
        out.appendCodePoint(cell >>> 8);
        shown[i] = cell;
        // At the margin, and after a character that the terminal may take for narrow, the column is unknown.
        boolean certain = x + 1 < width && !isWide(cell);
        cursorX = certain ? x + 1 : UNKNOWN;
    }

    private void moveTo(int x, int y) {
        if (cursorX == x && cursorY == y) {
            return;
        }
        String motion = cursorX == UNKNOWN ? Motion.absolute(x, y) : Motion.cheapest(cursorX, cursorY, x, y);
        if (isCheaperToRewrite(x, y, motion.length())) {
            for (int i = y * width + cursorX; i < y * width + x; i++) {
                out.append((char) (shown[i] >>> 8));
            }
        } else {
            out.append(motion);
        }
        cursorX = x;
        cursorY = y;
    }

    private boolean isCheaperToRewrite(int x, int y, int bytes) {
        if (cursorX == UNKNOWN || cursorY != y || x < cursorX || x - cursorX > bytes) {
            return false;
        }
        for (int i = y * width + cursorX; i < y * width + x; i++) {
            int character = shown[i] >>> 8;
            boolean sameLook = (shown[i] & 0xFF) == look || isBlankAsItIs(shown[i]);
            if (!sameLook || character < ' ' || character > '~') {
                return false;
            }
        }
        return true;
    }

    /** True for a blank that looks plain in the attributes that are set already, whatever they do to letters. */
    private boolean isBlankAsItIs(int cell) {
        return cell == BLANK && looks[look].isPlainWhenBlank();
    }

    private void changeLook(int next) {
        out.append(TextAttributes.change(looks[look], looks[next]));
        look = next;
    }

    private void caret(Frame frame) {
        boolean shows = frame.caretX() >= 0;
        if (shows) {
            moveTo(frame.caretX(), frame.caretY());
        }
        if (shows != caret) {
            out.append(shows ? "\033[?25h" : "\033[?25l");
            caret = shows;
        }
    }

    /**
     * Control sequences that move the cursor. Columns and rows count from 0.
     *
     * <p>Source: ECMA-48, 5th edition, 8.3.18 to 8.3.22 (CUB, CUD, CUF, CUP, CUU), as far as the VT100 has them.
     */
    static final class Motion {

        private Motion() {}

        /** Moves to a cell from anywhere. */
        static String absolute(int x, int y) {
            if (x == 0) {
                return y == 0 ? "\033[H" : "\033[" + (y + 1) + "H";
            }
            return "\033[" + (y == 0 ? "" : y + 1) + ";" + (x + 1) + "H";
        }

        /** The shorter of a relative and an absolute move between two cells. */
        static String cheapest(int fromX, int fromY, int x, int y) {
            String absolute = absolute(x, y);
            String relative = vertical(y - fromY) + horizontal(fromX, x);
            return relative.length() < absolute.length() ? relative : absolute;
        }

        private static String vertical(int rows) {
            return rows == 0 ? "" : step(Math.abs(rows), rows < 0 ? 'A' : 'B');
        }

        private static String horizontal(int fromX, int x) {
            int columns = x - fromX;
            if (columns == 0) {
                return "";
            }
            if (columns > 0) {
                return step(columns, 'C');
            }
            String fromMargin = x == 0 ? "\r" : "\r" + step(x, 'C');
            String back = -columns <= 3 ? "\b".repeat(-columns) : step(-columns, 'D');
            return back.length() <= fromMargin.length() ? back : fromMargin;
        }

        private static String step(int count, char direction) {
            return "\033[" + (count == 1 ? "" : count) + direction;
        }
    }
}
