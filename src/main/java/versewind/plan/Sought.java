package versewind.plan;

import java.util.List;
import java.util.regex.Pattern;
import versewind.organ.Names;

/**
 * A search: words that must all occur, in any order, ignoring case, accents, the shape of apostrophes, quotation marks
 * and dashes, and what parts the words of a registration.
 *
 * @param words as {@link #plain} writes them, none of them empty
 */
public record Sought(List<String> words) {

    private static final Pattern BLANKS = Pattern.compile("[,;:]*(?:\\s+|$)");

    public Sought {
        words = List.copyOf(words);
    }

    /** The words of a typed text. */
    public static Sought of(String typed) {
        return new Sought(BLANKS.splitAsStream(plain(typed))
                .filter(word -> !word.isEmpty())
                .toList());
    }

    /** A text in lower case without accents. */
    public static String plain(String text) {
        return Names.plain(text);
    }

    /** True if a text contains every word. */
    public boolean isIn(String text) {
        return isInPlain(plain(text));
    }

    /** True if a text already in the form of {@link #plain} contains every word. */
    public boolean isInPlain(String plainText) {
        for (String word : words) {
            if (!plainText.contains(word)) {
                return false;
            }
        }
        return true;
    }

    /** True if every word begins a word of a text. */
    public boolean beginsWordsOf(String text) {
        String plainText = " " + plain(text);
        return words.stream().allMatch(word -> plainText.contains(" " + word));
    }
}
