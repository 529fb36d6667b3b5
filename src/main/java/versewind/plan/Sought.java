package versewind.plan;

import java.util.List;
import java.util.regex.Pattern;
import versewind.organ.Names;

/**
 * What somebody looks for: words that all have to be there, in any order. Capitals and accents make no difference.
 *
 * @param words as {@link #plain} writes them, none of them empty
 */
public record Sought(List<String> words) {

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
        return Names.plain(text);
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
