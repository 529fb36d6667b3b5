package versewind.stoplist;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Names without what differs between two ways to write the same one. */
final class Spelling {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern NOT_IN_WORDS = Pattern.compile("[^a-z0-9]+");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}{3}");
    private static final Pattern NUMERAL = Pattern.compile("[ivx]{2,}");
    private static final Pattern DOUBLED = Pattern.compile("([a-z])\\1+");
    private static final Pattern SOFT_C = Pattern.compile("c(?=[eiy])");
    private static final Pattern HARD_C = Pattern.compile("c(?!h)");
    private static final Pattern LAST_E = Pattern.compile("(?<=..)e$");
    private static final List<List<String>> SOUNDS = List.of(
            List.of("oe", "o"),
            List.of("ae", "a"),
            List.of("ue", "u"),
            List.of("ph", "f"),
            List.of("th", "t"),
            List.of("ck", "k"),
            List.of("qu", "kv"),
            List.of("kw", "kv"),
            List.of("tz", "z"),
            List.of("dt", "t"),
            List.of("j", "i"),
            List.of("y", "i"),
            List.of("w", "v"));

    private Spelling() {}

    /** Small letters without accents: "Flûte à bec" becomes "flute a bec". */
    static String plain(String text) {
        String small = text.toLowerCase(Locale.ROOT);
        if (small.chars().allMatch(letter -> letter < '\u0080')) {
            return small.replace("&", " and ");
        }
        String apart = small.replace("\u00df", "ss")
                .replace("\u00e6", "ae")
                .replace("\u0153", "oe")
                .replace("\u00f8", "o")
                .replace("\u0142", "l")
                .replace("&", " and ");
        return MARKS.matcher(Normalizer.normalize(apart, Normalizer.Form.NFD)).replaceAll("");
    }

    /** A name as it is written, without the number or sign before it and the stops behind it. */
    static String unnumbered(String text) {
        return text.replaceAll("^[\\s\\d.)*\u2022-]+|[\\s:.,;]+$", "").replaceAll("\\s+", " ");
    }

    /** Without blanks and these signs at both ends. */
    static String trimmed(String text, String signs) {
        int from = 0;
        int to = text.length();
        while (from < to && isEdge(text.charAt(from), signs)) {
            from++;
        }
        while (to > from && isEdge(text.charAt(to - 1), signs)) {
            to--;
        }
        return text.substring(from, to);
    }

    /** True if a text has three letters in a row. */
    static boolean hasWord(String text) {
        return LETTERS.matcher(text).find();
    }

    private static boolean isEdge(char c, String signs) {
        return Character.isWhitespace(c) || signs.indexOf(c) >= 0;
    }

    /** The words, of letters and digits only. */
    static List<String> words(String text) {
        return Stream.of(NOT_IN_WORDS.split(plain(text), -1))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** Letters and digits alone: two names with the same are spelled the same. */
    static String spelled(String text) {
        String plain = plain(text);
        StringBuilder letters = new StringBuilder(plain.length());
        for (int i = 0; i < plain.length(); i++) {
            char letter = plain.charAt(i);
            if ((letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9')) {
                letters.append(letter);
            }
        }
        return letters.toString();
    }

    /** One spelling for letters that languages write differently: Oktave, Octave, Octav. */
    static String sounded(String text) {
        String sound = spelled(text);
        if (NUMERAL.matcher(sound).matches()) {
            return sound;
        }
        sound = SOFT_C.matcher(sound).replaceAll("z");
        for (List<String> pair : SOUNDS) {
            sound = sound.replace(pair.get(0), pair.get(1));
        }
        sound = HARD_C.matcher(sound).replaceAll("k");
        return LAST_E.matcher(DOUBLED.matcher(sound).replaceAll("$1")).replaceAll("");
    }

    /** The least number of letters put in, taken out, replaced or swapped with the next, up to a limit. */
    static int distance(String one, String other, int limit) {
        if (Math.abs(one.length() - other.length()) > limit) {
            return limit + 1;
        }
        int[][] steps = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            int fewest = limit + 1;
            for (int j = 0; j <= other.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : least(steps, one, other, i, j);
                fewest = Math.min(fewest, steps[i][j]);
            }
            if (fewest > limit) {
                return limit + 1;
            }
        }
        return steps[one.length()][other.length()];
    }

    private static int least(int[][] steps, String one, String other, int i, int j) {
        boolean same = one.charAt(i - 1) == other.charAt(j - 1);
        int least = Math.min(steps[i - 1][j - 1] + (same ? 0 : 1), Math.min(steps[i - 1][j], steps[i][j - 1]) + 1);
        boolean swapped =
                i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
        return swapped ? Math.min(least, steps[i - 2][j - 2] + 1) : least;
    }
}
