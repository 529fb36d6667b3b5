package versewind.terminal;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.util.Arrays;
import versewind.screen.toolkit.Text;

/**
 * A terminal of our own for tests, which obeys the bytes that it is sent and stumbles over any that it does not know.
 * It also minds what real ones do to a wide character of which one half is overwritten.
 */
final class VirtualScreen extends ByteArrayOutputStream {

    /** A cell with nothing in it but the half of a wide character to its left. */
    static final int SECOND_HALF = 0;

    private final Charset charset;
    private final int width;
    private final int height;
    private final int[][] characters;
    private final TextAttributes[][] looks;
    private int writes;
    private int x;
    private int y;
    private TextAttributes look = TextAttributes.PLAIN;
    private boolean caret = true;
    private String text = "";
    private int at;

    VirtualScreen(int width, int height, Charset charset) {
        this.charset = charset;
        this.width = width;
        this.height = height;
        characters = new int[height][width];
        looks = new TextAttributes[height][width];
        erase(0, 0, width * height);
    }

    @Override
    public synchronized void write(byte[] bytes, int offset, int length) {
        super.write(bytes, offset, length);
        writes++;
    }

    /** Obeys what was written since the last time and returns how many bytes that were. */
    int obey() {
        int bytes = size();
        text = toString(charset);
        at = 0;
        while (at < text.length()) {
            step();
        }
        reset();
        return bytes;
    }

    /** How often was written since the last time that this was asked. */
    int writes() {
        int count = writes;
        writes = 0;
        return count;
    }

    int character(int column, int row) {
        return characters[row][column];
    }

    TextAttributes look(int column, int row) {
        return looks[row][column];
    }

    boolean showsCaret() {
        return caret;
    }

    int caretX() {
        return x;
    }

    int caretY() {
        return y;
    }

    private void step() {
        int point = text.codePointAt(at);
        at += Character.charCount(point);
        switch (point) {
            case '\r' -> x = 0;
            case '\b' -> x = Math.max(0, x - 1);
            case 0x1B -> sequence();
            default -> put(point);
        }
    }

    private void sequence() {
        if (text.charAt(at) != '[') {
            throw new IllegalStateException("not a control sequence: " + text.substring(at));
        }
        int end = at + 1;
        while (text.charAt(end) < 0x40) {
            end++;
        }
        String parameters = text.substring(at + 1, end);
        char command = text.charAt(end);
        at = end + 1;
        switch (command) {
            case 'A' -> y = Math.max(0, y - number(parameters, 0, 1));
            case 'B' -> y = Math.min(height - 1, y + number(parameters, 0, 1));
            case 'C' -> x = Math.min(width - 1, x + number(parameters, 0, 1));
            case 'D' -> x = Math.max(0, x - number(parameters, 0, 1));
            case 'H' -> {
                y = Math.min(height, number(parameters, 0, 1)) - 1;
                x = Math.min(width, number(parameters, 1, 1)) - 1;
            }
            case 'J' -> erase(0, 0, requireTwo(parameters) * width * height / 2);
            case 'K' -> erase(x, y, width - x);
            case 'm' -> attributes(parameters);
            case 'h', 'l' -> mode(parameters, command == 'h');
            default -> throw new IllegalStateException("unknown: " + parameters + command);
        }
    }

    private static int requireTwo(String parameters) {
        if (!parameters.equals("2")) {
            throw new IllegalStateException("erases only a part: " + parameters);
        }
        return 2;
    }

    private static int number(String parameters, int index, int otherwise) {
        String[] words = parameters.split(";", -1);
        return index >= words.length || words[index].isEmpty() ? otherwise : Integer.parseInt(words[index]);
    }

    private void mode(String parameters, boolean on) {
        if (parameters.equals("?25")) {
            caret = on;
        } else if (!parameters.matches("\\?(7|1049|2004)")) {
            throw new IllegalStateException("unknown mode " + parameters);
        }
    }

    private void attributes(String parameters) {
        for (String word : parameters.replaceAll("38;5;(\\d+)", "1000$1").split(";", -1)) {
            int code = word.isEmpty() ? 0 : Integer.parseInt(word);
            look = switch (code) {
                case 0 -> TextAttributes.PLAIN;
                case 1 -> with(TextAttributes.BOLD);
                case 2 -> with(TextAttributes.DIM);
                case 4 -> with(TextAttributes.UNDERLINE);
                case 7 -> with(TextAttributes.REVERSE);
                case 30, 31, 32, 33, 34, 35, 36, 37 ->
                    new TextAttributes(look.attributes(), code - 30, look.background());
                case 40, 41, 42, 43, 44, 45, 46, 47 ->
                    new TextAttributes(look.attributes(), look.foreground(), code - 40);
                default -> indexed(word);
            };
        }
    }

    /** One of the 256 colours. */
    private TextAttributes indexed(String word) {
        if (!word.startsWith("1000")) {
            throw new IllegalStateException("unknown attribute " + word);
        }
        return new TextAttributes(look.attributes(), Integer.parseInt(word.substring(4)), look.background());
    }

    private TextAttributes with(int attribute) {
        return new TextAttributes(look.attributes() | attribute, look.foreground(), look.background());
    }

    private void put(int point) {
        if (Character.isISOControl(point)) {
            throw new IllegalStateException("a control character on the screen: " + point);
        }
        int columns = Text.columns(point);
        breakPairs(columns);
        characters[y][x] = point;
        looks[y][x] = look;
        if (columns == 2) {
            characters[y][x + 1] = SECOND_HALF;
            looks[y][x + 1] = look;
        }
        x = Math.min(width - 1, x + columns);
    }

    /** What is left of a wide character becomes a blank. */
    private void breakPairs(int columns) {
        if (characters[y][x] == SECOND_HALF) {
            characters[y][x - 1] = ' ';
        }
        int after = x + columns;
        if (after < width && characters[y][after] == SECOND_HALF) {
            characters[y][after] = ' ';
        }
    }

    private void erase(int column, int row, int cells) {
        int remaining = cells;
        if (column > 0 && characters[row][column] == SECOND_HALF) {
            characters[row][column - 1] = ' ';
        }
        for (int r = row, c = column; remaining > 0; r++, c = 0) {
            int count = Math.min(remaining, width - c);
            Arrays.fill(characters[r], c, c + count, ' ');
            Arrays.fill(looks[r], c, c + count, look);
            remaining -= count;
        }
    }
}
