package versewind.screen.toolkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Names of stops and couplers shortened as on a console: "Open Diap. 1", "Swell Sub Oct", "Contra Fag.". Source: common
 * practice, no source.
 */
public final class Abbreviation {

    /** A word is not cut below this many letters. */
    private static final int SHORTEST = 2;

    /** Words with a short form of their own, the first to be shortened first. */
    private static final List<Map.Entry<String, String>> CONSOLE = List.of(
            Map.entry("Diapason", "Diap."),
            Map.entry("Double", "Dbl"),
            Map.entry("Suboctave", "Sub Oct"),
            Map.entry("Octave", "Oct"),
            Map.entry("Lieblich", "Lieb."),
            Map.entry("Gedackt", "Ged."),
            Map.entry("Gedeckt", "Ged."),
            Map.entry("Gedact", "Ged."),
            Map.entry("Harmonic", "Harm."),
            Map.entry("Great", "Gt"),
            Map.entry("Swell", "Sw"),
            Map.entry("Choir", "Ch"),
            Map.entry("Pedal", "Ped"));

    private static final Set<String> NO = Set.of("No.", "No", "Nr.", "Nr", "N°");

    private Abbreviation() {}

    /**
     * The name in so many columns: whole if it fits, else without "No.", then in the short forms of a console, then
     * with its longest words shortened; if even that is too long, cut before its number.
     *
     * @param cutMark what stands where a name was cut after all
     */
    public static String of(String name, int columns, String cutMark) {
        String clean = Text.clean(name);
        if (Text.columns(clean) <= columns) {
            return clean;
        }
        List<String> words = new ArrayList<>(
                List.of(clean.replace("No.", "No. ").replace("  ", " ").split(" ", -1)));
        for (int i = words.size() - 2; i >= 0; i--) {
            if (NO.contains(words.get(i)) && isNumber(words.get(i + 1))) {
                words.remove(i);
            }
        }
        for (Map.Entry<String, String> form : CONSOLE) {
            if (Text.columns(String.join(" ", words)) <= columns) {
                break;
            }
            for (int i = 0; i < words.size(); i++) {
                if (words.get(i).equals(form.getKey())) {
                    words.set(i, form.getValue());
                }
            }
        }
        while (Text.columns(String.join(" ", words)) > columns) {
            int longest = longest(words);
            if (longest < 0) {
                return cut(words, columns, cutMark);
            }
            words.set(longest, shorter(words.get(longest)));
        }
        return String.join(" ", words);
    }

    private static String cut(List<String> words, int columns, String cutMark) {
        String last = words.get(words.size() - 1);
        int room = columns - Text.columns(last);
        if (words.size() > 1 && room > 1 && isNumber(last)) {
            return Text.fit(String.join(" ", words.subList(0, words.size() - 1)), room, cutMark) + last;
        }
        return Text.fit(String.join(" ", words), columns, cutMark);
    }

    /** Whether a word tells a stop from another of its name: "1", "II"; without a pattern, for the first screen. */
    private static boolean isNumber(String word) {
        return !word.isEmpty()
                && (Character.isDigit(word.charAt(0)) || word.chars().allMatch(letter -> "IVX".indexOf(letter) >= 0));
    }

    private static int longest(List<String> words) {
        int longest = -1;
        int most = SHORTEST + 1;
        for (int i = 0; i < words.size(); i++) {
            int letters = words.get(i).codePointCount(0, words.get(i).length());
            if (letters > most && !isNumber(words.get(i))) {
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
