package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Tremulants in a line: "Tremulant", "Tremblant doux", "Tremulants to Swell and Choir". */
final class Tremulants {

    private static final Pattern WORD = Pattern.compile("trem(?:ul|ol|bl)\\w*|tremu?");
    private static final int LONGEST = 8;

    private Tremulants() {}

    /** Whether a text names a tremulant. */
    static boolean isOne(String text) {
        List<String> words = Spelling.words(text);
        return words.size() <= LONGEST
                && words.stream().anyMatch(word -> WORD.matcher(word).matches());
    }

    /** The divisions that are named with it; one empty where none is. */
    static List<Optional<DivisionWord>> divisions(String text, String language) {
        String rest = Spelling.plain(text).replaceAll("\\b(?:trem(?:ul|ol|bl)\\w*|tremu?)\\b\\.?", " ");
        CouplerWords words = CouplerWords.of(upperNumerals(rest), language);
        List<Optional<DivisionWord>> named = new ArrayList<>();
        words.divisions().forEach(each -> named.add(Optional.of(each.word())));
        return named.isEmpty() ? List.of(Optional.empty()) : List.copyOf(named);
    }

    private static String upperNumerals(String text) {
        return Pattern.compile("\\b[iv]{1,3}\\b").matcher(text).replaceAll(match -> match.group()
                .toUpperCase(Locale.ROOT));
    }
}
