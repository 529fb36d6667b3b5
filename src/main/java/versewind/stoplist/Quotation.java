package versewind.stoplist;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts that are printed as they are where nothing can be mistaken, and in quotation marks where it could. */
final class Quotation {

    /** A text in quotation marks; what is inside is the first group. */
    static final Pattern QUOTED = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}](?:[^\\p{C}\\p{Z}\"\\\\]| (?! ))*(?<! )");
    private static final Pattern ESCAPE = Pattern.compile("\\\\(?:u([0-9a-f]{4})|(.))", Pattern.DOTALL);

    private Quotation() {}

    /** As it is, or quoted. */
    static String ifNeeded(String text) {
        return PLAIN.matcher(text).matches() ? text : of(text);
    }

    /** In quotation marks; controls, unusual blanks and what belongs to no script written by their number. */
    static String of(String text) {
        StringBuilder out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (isPrinted(c)) {
                out.append(c);
            } else {
                out.append(String.format("\\u%04x", (int) c));
            }
        }
        return out.append('"').toString();
    }

    private static boolean isPrinted(char c) {
        return c < '\u007f' ? c >= ' ' : Character.isLetterOrDigit(c) || Character.isSurrogate(c);
    }

    /** What was printed, quoted or not. */
    static String read(String printed) {
        Matcher quoted = QUOTED.matcher(printed);
        return quoted.matches() ? inside(quoted.group(1)) : printed;
    }

    /** What stands in quotation marks. */
    static String inside(String escaped) {
        return ESCAPE.matcher(escaped)
                .replaceAll(match -> Matcher.quoteReplacement(
                        match.group(1) != null
                                ? Character.toString((char) Integer.parseInt(match.group(1), 16))
                                : match.group(2)));
    }
}
