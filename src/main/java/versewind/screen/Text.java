package versewind.screen;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text from files and keyboards, made harmless and measured in columns. */
public final class Text {

    /** What stands for a character that cannot be shown. */
    private static final int NOT_SHOWN = '?';

    private static final Pattern BLANKS = Pattern.compile(" +");

    private Text() {}

    /**
     * The text with composed accents and a visible mark for every character that would move the cursor, reorder the row
     * or show nothing: controls, format characters, line separators, lone surrogates, private and unassigned ones.
     */
    public static String clean(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .forEach(point -> clean.appendCodePoint(isShown(point) ? point : NOT_SHOWN));
        return clean.toString();
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c > '~') {
                return false;
            }
        }
        return true;
    }

    private static boolean isShown(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }

    /** Columns that a code point takes: 0 for an accent that stands over the one before, 2 for wide ones, else 1. */
    public static int columns(int point) {
        if (point < 0x300) {
            return 1;
        }
        int type = Character.getType(point);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        return isWide(point) ? 2 : 1;
    }

    /** East Asian wide and fullwidth characters and pictographs (Unicode UAX #11, the blocks that are wide as a whole). */
    private static boolean isWide(int point) {
        return (point >= 0x1100 && point <= 0x115F)
                || (point >= 0x2E80 && point <= 0x303E)
                || (point >= 0x3041 && point <= 0xA4CF)
                || (point >= 0xA960 && point <= 0xA97C)
                || (point >= 0xAC00 && point <= 0xD7A3)
                || (point >= 0xF900 && point <= 0xFAFF)
                || (point >= 0xFE30 && point <= 0xFE6F)
                || (point >= 0xFF00 && point <= 0xFF60)
                || (point >= 0xFFE0 && point <= 0xFFE6)
                || (point >= 0x1F300 && point <= 0x1F64F)
                || (point >= 0x1F900 && point <= 0x1F9FF)
                || (point >= 0x20000 && point <= 0x3FFFD);
    }

    /** Columns that a text takes when it is shown. */
    public static int columns(String text) {
        return clean(text).codePoints().map(Text::columns).sum();
    }

    /** The text cut to a number of columns, with a mark where something was cut. */
    public static String fit(String text, int columns, String cutMark) {
        String clean = clean(text);
        if (columns(clean) <= columns) {
            return clean;
        }
        int room = columns - columns(cutMark);
        StringBuilder fitting = new StringBuilder();
        int used = 0;
        for (int point : clean.codePoints().toArray()) {
            used += columns(point);
            if (used > room) {
                break;
            }
            fitting.appendCodePoint(point);
        }
        return room < 0 ? "" : fitting + cutMark;
    }

    /** The text in lines of so many columns, broken at blanks; a longer word is broken where it must be. */
    static List<String> wrapped(String text, int columns) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : BLANKS.splitAsStream(clean(text).strip()).toList()) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (columns(longer) <= columns) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (columns(line) > columns) {
                String start = fit(line, columns, "");
                lines.add(start);
                line = line.substring(start.length());
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }
}
