package versewind.organ;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Names in one text, separated by commas, semicolons, colons or line ends. One of these within a name has a backslash
 * before it.
 */
public final class NameList {

    private static final Pattern ESCAPES = Pattern.compile("\\\\([\\\\,;:\\r\\n])|^\\\\(?=\\p{L})");

    private NameList() {}

    /** A name with a backslash before every separator in it. */
    public static String escaped(String name) {
        return name.replaceAll("[\\\\,;:\\r\\n]", "\\\\$0");
    }

    /**
     * A name without these backslashes and without blanks around it. A backslash before its first letter, which keeps
     * it from being read as a word with a meaning of its own, goes too.
     */
    public static String name(String escaped) {
        return ESCAPES.matcher(escaped.strip()).replaceAll("$1");
    }

    /** The parts of a text between any of these separators, still escaped; blank parts are left out. */
    public static List<String> parts(String text, String separators) {
        List<String> parts = new ArrayList<>();
        for (int from = 0; from <= text.length(); ) {
            int to = end(text, from, separators);
            if (!text.substring(from, to).isBlank()) {
                parts.add(text.substring(from, to));
            }
            from = to + 1;
        }
        return parts;
    }

    /** The text before the first separator; all of it if there is none. */
    public static String head(String text, String separators) {
        return text.substring(0, end(text, 0, separators));
    }

    private static int end(String text, int from, String separators) {
        int at = from;
        while (at < text.length() && separators.indexOf(text.charAt(at)) < 0) {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        return Math.min(at, text.length());
    }
}
