package versewind.screen.toolkit;

import java.util.ArrayList;
import java.util.List;

/** Names of stops shortened as builders shorten them, word by word with a stop: "Contra Fag.", "Op. Diapason". */
public final class Abbreviation {

    /** A word is not cut below this many letters. */
    private static final int SHORTEST = 2;

    private Abbreviation() {}

    /**
     * The name in so many columns: whole if it fits, else with its longest words shortened; if even that is too long,
     * cut.
     *
     * @param cutMark what stands where a name was cut after all
     */
    public static String of(String name, int columns, String cutMark) {
        String clean = Text.clean(name);
        if (Text.columns(clean) <= columns) {
            return clean;
        }
        List<String> words = new ArrayList<>(List.of(clean.split(" ", -1)));
        while (Text.columns(String.join(" ", words)) > columns) {
            int longest = longest(words);
            if (longest < 0) {
                return Text.fit(String.join(" ", words), columns, cutMark);
            }
            words.set(longest, shorter(words.get(longest)));
        }
        return String.join(" ", words);
    }

    private static int longest(List<String> words) {
        int longest = -1;
        int most = SHORTEST + 1;
        for (int i = 0; i < words.size(); i++) {
            int letters = words.get(i).codePointCount(0, words.get(i).length());
            if (letters > most) {
                longest = i;
                most = letters;
            }
        }
        return longest;
    }

    /** One letter less: "Diapason" becomes "Diapas." and that "Diapa.". */
    private static String shorter(String word) {
        int letters = word.codePointCount(0, word.length());
        return word.substring(0, word.offsetByCodePoints(0, letters - 2)) + ".";
    }
}
