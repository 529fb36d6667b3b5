package versewind.organ;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.BiPredicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds a typed name in a list of names. Capitals, accents, hyphens and the shape of apostrophes make no difference,
 * nor does "8 ft" or "8'" for "8".
 *
 * <p>Matches, in this order: the exact name; the same words; names whose leading words start with the typed words;
 * names that contain words starting with them, in sequence; names whose words are abbreviated to two or three letters,
 * as "Gt" for "Great". Numbers must be typed whole. Where several names match equally well, none is chosen.
 */
public final class Names {
    /** Letters of an abbreviated word at most: of a longer one, more than its beginning would pass for it by chance. */
    private static final int MOST_ABBREVIATED = 3;

    private static final Pattern FEET = Pattern.compile("(?<=\\d) ?(?:ft\\b\\.?|['\u2019\u2032])");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern NUMBER = Pattern.compile("[\\d/]+|[ivx]+");
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

    private final String none;
    private final String someAre;
    private final List<String> names;

    /**
     * A list of names.
     *
     * @param none beginning of the sentence for a name that is not there: "The organ has no coupler"
     * @param someAre beginning of the sentence that lists the names: "The couplers are"
     * @param names the names
     */
    public Names(String none, String someAre, List<String> names) {
        this.none = none;
        this.someAre = someAre;
        this.names = List.copyOf(names);
    }

    /** Index of the name that matches; the exception says which names there are, or which one is near. */
    public int find(String typed) throws NotationException {
        if (names.contains(typed)) {
            return names.indexOf(typed);
        }
        List<String> words = words(typed);
        for (Likeness likeness : Likeness.values()) {
            List<Integer> fitting = IntStream.range(0, names.size())
                    .filter(i -> !words.isEmpty() && likeness.holds(words, words(names.get(i))))
                    .boxed()
                    .toList();
            if (fitting.size() == 1) {
                return fitting.get(0);
            }
            if (fitting.size() > 1) {
                throw ambiguous(typed, fitting);
            }
        }
        throw new NotationException(none + " " + Quoted.text(typed) + ". " + Nearest.sentence(typed, names, someAre));
    }

    /** Index of the only name with the same words, if there is one. */
    OptionalInt whole(String typed) {
        List<String> words = words(typed);
        int[] same = IntStream.range(0, names.size())
                .filter(i -> words(names.get(i)).equals(words))
                .toArray();
        return same.length == 1 ? OptionalInt.of(same[0]) : OptionalInt.empty();
    }

    /** Whether a typed name may mean any of these. */
    boolean has(String typed) {
        List<String> words = words(typed);
        return names.stream().map(Names::words).anyMatch(name -> Stream.of(Likeness.values())
                .anyMatch(likeness -> likeness.holds(words, name)));
    }

    /** How a typed name may match, the closest first. */
    private enum Likeness {
        WHOLE,
        BEGUN,
        SHORTENED,
        ABBREVIATED;

        boolean holds(List<String> typed, List<String> name) {
            return switch (this) {
                case WHOLE -> typed.equals(name);
                case BEGUN ->
                    typed.size() <= name.size() && shortens(typed, name.subList(0, typed.size()), Names::isShort);
                case SHORTENED -> shortens(typed, name, Names::isShort);
                case ABBREVIATED -> shortens(typed, name, Names::isAbbreviated);
            };
        }
    }

    private NotationException ambiguous(String typed, List<Integer> fitting) {
        String these = fitting.stream().map(i -> Quoted.text(names.get(i))).collect(Collectors.joining(" or "));
        return new NotationException(Quoted.text(typed) + " may mean " + these + ". Write more of the name.");
    }

    /** The words of a name, without capitals, accents, hyphens and signs for feet. */
    public static List<String> words(String name) {
        String plain = FEET.matcher(plain(name)).replaceAll("").replace('-', ' ');
        return BLANKS.splitAsStream(plain).filter(word -> !word.isEmpty()).toList();
    }

    /** A text without accents and capitals, with the apostrophes, quotation marks and hyphens of a keyboard. */
    public static String plain(String text) {
        boolean isAscii = text.chars().allMatch(c -> c <= 0x7E);
        return (isAscii ? text : typable(text)).toLowerCase(Locale.ROOT);
    }

    private static String typable(String text) {
        String bare =
                ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
        StringBuilder typable = new StringBuilder(bare.length());
        for (int i = 0; i < bare.length(); i++) {
            typable.append(typable(bare.charAt(i)));
        }
        return typable.toString();
    }

    /** A sign as a keyboard has it: apostrophes, quotation marks, hyphens, blanks; any other as it is. */
    public static char typable(char sign) {
        return switch (sign) {
            case '\u2018', '\u2019', '\u201A', '\u201B', '\u02BC', '\u2032' -> '\'';
            case '\u201C', '\u201D', '\u201E', '\u00AB', '\u00BB', '\u2033' -> '"';
            case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> '-';
            case '\u00A0', '\u202F' -> ' ';
            default -> sign;
        };
    }

    private static boolean isAbbreviated(String typed, String word) {
        boolean isWord = !NUMBER.matcher(word).matches();
        return isShort(typed, word) || (isWord && typed.length() <= MOST_ABBREVIATED && abbreviates(typed, word));
    }

    /** True if the letters of an abbreviation stand in a name in this order, the first at its beginning. */
    static boolean abbreviates(String abbreviation, String name) {
        if (abbreviation.isEmpty() || name.charAt(0) != abbreviation.charAt(0)) {
            return false;
        }
        int at = 0;
        for (int i = 0; i < name.length() && at < abbreviation.length(); i++) {
            at += name.charAt(i) == abbreviation.charAt(at) ? 1 : 0;
        }
        return at == abbreviation.length();
    }

    private static boolean shortens(List<String> typed, List<String> name, BiPredicate<String, String> isShort) {
        int at = 0;
        for (String word : name) {
            if (at < typed.size() && isShort.test(typed.get(at), word)) {
                at++;
            }
        }
        return at == typed.size();
    }

    private static boolean isShort(String typed, String word) {
        return word.startsWith(typed)
                && (word.equals(typed) || !NUMBER.matcher(word).matches());
    }
}
