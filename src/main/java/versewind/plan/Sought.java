package versewind.plan;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What somebody looks for: words that all have to be there, in any order. Capitals and accents make no difference.
 *
 * @param words as {@link #plain} writes them, none of them empty
 */
public record Sought(List<String> words) {

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    public Sought {
        words = List.copyOf(words);
    }

    /** The words of what was typed. */
    public static Sought of(String typed) {
        return new Sought(BLANKS.splitAsStream(plain(typed))
                .filter(word -> !word.isEmpty())
                .toList());
    }

    /** A text without accents and capitals. */
    public static String plain(String text) {
        return isAscii(text)
                ? text.toLowerCase(Locale.ROOT)
                : ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
                        .replaceAll("")
                        .toLowerCase(Locale.ROOT);
    }

    private static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > 0x7E) {
                return false;
            }
        }
        return true;
    }

    /** Whether a text holds every word. */
    public boolean isIn(String text) {
        return isInPlain(plain(text));
    }

    /** Whether a text that {@link #plain} has written holds every word. */
    public boolean isInPlain(String plainText) {
        for (String word : words) {
            if (!plainText.contains(word)) {
                return false;
            }
        }
        return true;
    }
}
