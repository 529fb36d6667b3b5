package versewind.screen.toolkit;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import versewind.organ.Names;

/** Text from files and keyboards, made harmless and measured in columns. */
public final class Text {

    /** What stands for a character that cannot be shown. */
    private static final int NOT_SHOWN = '?';

    /** Between the figures of a fraction that was one character. */
    private static final char FRACTION = '\u2044';

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern BREAK = Pattern.compile("\\R");

    private Text() {}

    /**
     * The text with composed accents and a visible mark for every character that would move the cursor, reorder the row
     * or show nothing: controls, format characters, line separators, lone surrogates, private and unassigned ones.
     */
    public static String clean(String text) {
        if (isPlain(text)) {
            return text;
        }
        String composed = isComposed(text) ? text : Normalizer.normalize(text, Normalizer.Form.NFC);
        StringBuilder clean = new StringBuilder(text.length());
        for (int i = 0; i < composed.length(); i = composed.offsetByCodePoints(i, 1)) {
            int point = composed.codePointAt(i);
            clean.appendCodePoint(isShown(point) ? point : point == '\t' ? ' ' : NOT_SHOWN);
        }
        return clean.toString();
    }

    /** A character without its accents, its quotes and dashes as a typewriter has them: "e" for "é", "+-" for "±". */
    public static String typewritten(int character) {
        StringBuilder typed = new StringBuilder();
        ACCENTS.matcher(Normalizer.normalize(Character.toString(character), Normalizer.Form.NFKD))
                .replaceAll("")
                .codePoints()
                .forEach(point -> typed.append(typed(point)));
        return typed.toString();
    }

    private static String typed(int point) {
        return switch (point) {
            case 0xB1 -> "+-";
            case FRACTION -> "/";
            case 0x266D -> " flat";
            case 0x266F -> " sharp";
            default ->
                Character.isBmpCodePoint(point)
                        ? String.valueOf(Names.typable((char) point))
                        : Character.toString(point);
        };
    }

    /** The same as the one character of ASCII that it comes to; "?" where it is more, or none. */
    public static int plain(int character) {
        String typed = typewritten(character);
        return typed.length() == 1 && typed.charAt(0) < 0x80 ? typed.charAt(0) : NOT_SHOWN;
    }

    /**
     * True where nothing can be composed: Latin letters, punctuation, signs, and the marks and rules that screens are
     * drawn with. Java's tables need not be read for them.
     */
    private static boolean isComposed(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= 0x300 && (c < 0x2010 || c > 0x2027) && (c < 0x2190 || c > 0x22FF) && (c < 0x2500 || c > 0x26FF)) {
                return false;
            }
        }
        return true;
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
        return WideCharacters.contain(point) ? 2 : 1;
    }

    /** Columns that a text takes when it is shown. */
    public static int columns(String text) {
        if (isPlain(text)) {
            return text.length();
        }
        if (!isComposed(text)) {
            return clean(text).codePoints().map(Text::columns).sum();
        }
        int columns = 0;
        for (int i = 0; i < text.length(); i++) {
            columns += columns(text.charAt(i));
        }
        return columns;
    }

    /** The text cut to a number of columns after a word, if it has several; with a mark where something was cut. */
    public static String fitWords(String text, int columns, String cutMark) {
        String clean = clean(text);
        String begun = fit(clean, columns - columns(cutMark), "");
        int end = clean.startsWith(begun + " ") ? begun.length() : begun.lastIndexOf(' ');
        return columns(clean) <= columns || end < 0
                ? fit(clean, columns, cutMark)
                : begun.substring(0, end).replaceFirst("[,;:]$", "") + cutMark;
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

    /**
     * The text in lines of so many columns, broken where it is broken, between words, and within a word that is longer
     * than a line.
     */
    public static List<String> wrapped(String text, int columns) {
        return BREAK.splitAsStream(text)
                .flatMap(line -> wrappedLine(line, columns).stream())
                .toList();
    }

    private static List<String> wrappedLine(String text, int columns) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : clean(text).split(" ", -1)) {
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
                String part = fit(line, columns, "");
                if (part.isEmpty()) {
                    return lines;
                }
                lines.add(part);
                line = line.substring(part.length());
            }
        }
        lines.add(line);
        return lines;
    }

    /** With a capital letter at its beginning, as a sentence has. */
    public static String capital(String words) {
        return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
