package versewind.stoplist;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import versewind.organ.Stop;

/** Ranks of a compound stop as people write them: III, III-V, 4f., 4 fach, 3-4 sterk, 3 rgs, 4 ranks, V file. */
final class RankCount {

    private static final String ROMAN = "(?:XII|XI|X|IX|VIII|VII|VI|IV|V|III|II|I)";
    private static final String UNIT =
            "(?:fach|fagot|fold|fag|f|x|rangs?|rgs?|rks?|ranks?|rank|sterk|st|koor|kor|k|hileras?|hil|h|file|filas?|fil|ch(?:\u00f6r|or)ig|ch\u00f6re|chor|chr|r)";

    /** A number with a word for ranks. */
    static final Pattern MARKED = Pattern.compile(
            "(?<![\\d/.,\\p{L}'])(?:(\\d{1,2})(?:\\s?[-/]\\s?(\\d{1,2}))?|(" + ROMAN + ")(?:\\s?[-/]\\s?(" + ROMAN
                    + "))?(?!(?-i:[IVXL])))" + "[\\s.-]{0,2}" + UNIT + "\\b\\.?(?!')",
            Pattern.CASE_INSENSITIVE);

    /** A Roman numeral. */
    static final Pattern NUMERAL =
            Pattern.compile("(?<![\\p{L}\\d'])(" + ROMAN + ")(?:\\s?[-/]\\s?(" + ROMAN + "))?(?![\\p{L}\\d'])\\.?");

    private RankCount() {}

    /** The number that the last part of a match gives: of "III-V" the five. */
    static int of(Matcher match) {
        for (int group = match.groupCount(); group >= 1; group--) {
            if (match.group(group) != null) {
                return number(match.group(group));
            }
        }
        return 0;
    }

    /** A number in Arabic or Roman figures; 0 for what is none. */
    static int number(String figures) {
        return figures.matches("\\d{1,2}")
                ? Integer.parseInt(figures)
                : Stop.NUMERALS.indexOf(figures.toUpperCase(Locale.ROOT)) + 1;
    }
}
