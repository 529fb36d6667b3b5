package versewind.stoplist;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Names without what differs between two ways to write the same one. */
final class Spelling {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern AROUND_NAME = Pattern.compile("^[\\s\\d.)*\u2022-]+|[\\s:.,;]+$");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}{3}");
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

    private static final int LATIN_LETTERS = 0x250;
    private static final String[] LATIN = latin();

    private Spelling() {}

    /** Small letters without accents: "Flûte à bec" becomes "flute a bec". */
    static String plain(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder small = new StringBuilder(text.length() + 2);
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter >= LATIN.length) {
                return folded(text);
            }
            small.append(LATIN[letter]);
        }
        return small.toString();
    }

    /** The letters of Latin alphabets, each as it is plain. */
    private static String[] latin() {
        String[] plain = new String[LATIN_LETTERS];
        for (char letter = 0; letter < plain.length; letter++) {
            plain[letter] = folded(Character.toString(letter));
        }
        return plain;
    }

    private static String folded(String text) {
        String apart = text.toLowerCase(Locale.ROOT)
                .replace("\u00df", "ss")
                .replace("\u00e6", "ae")
                .replace("\u0153", "oe")
                .replace("\u00f8", "o")
                .replace("\u0142", "l")
                .replace("&", " and ");
        return MARKS.matcher(Normalizer.normalize(apart, Normalizer.Form.NFD)).replaceAll("");
    }

    /** A name as it is written, without the number or sign before it and the stops behind it. */
    static String unnumbered(String text) {
        return BLANKS.matcher(AROUND_NAME.matcher(text).replaceAll("")).replaceAll(" ");
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

    /** True if a text has neither letters nor figures. */
    static boolean isSigns(String text) {
        return text.chars().noneMatch(Character::isLetterOrDigit);
    }

    private static boolean isEdge(char c, String signs) {
        return Character.isWhitespace(c) || signs.indexOf(c) >= 0;
    }

    /** The words, of letters and digits only. */
    static List<String> words(String text) {
        String plain = plain(text);
        List<String> words = new ArrayList<>();
        int from = -1;
        for (int i = 0; i <= plain.length(); i++) {
            boolean within = i < plain.length() && isPlain(plain.charAt(i));
            if (within && from < 0) {
                from = i;
            } else if (!within && from >= 0) {
                words.add(plain.substring(from, i));
                from = -1;
            }
        }
        return Collections.unmodifiableList(words);
    }

    /** Letters and digits alone: two names with the same are spelled the same. */
    static String spelled(String text) {
        String plain = plain(text);
        if (isPlain(plain)) {
            return plain;
        }
        StringBuilder letters = new StringBuilder(plain.length());
        for (int i = 0; i < plain.length(); i++) {
            if (isPlain(plain.charAt(i))) {
                letters.append(plain.charAt(i));
            }
        }
        return letters.toString();
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (!isPlain(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isPlain(char letter) {
        return (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9');
    }

    /** One spelling for letters that languages write differently: Oktave, Octave, Octav. */
    static String sounded(String text) {
        String sound = spelled(text);
        if (isNumeral(sound)) {
            return sound;
        }
        sound = withC(sound, "eiy", true, 'z');
        for (List<String> pair : SOUNDS) {
            sound = sound.replace(pair.get(0), pair.get(1));
        }
        sound = singled(withC(sound, "h", false, 'k'));
        boolean isOpen = sound.length() > 2 && sound.endsWith("e");
        return isOpen ? sound.substring(0, sound.length() - 1) : sound;
    }

    private static boolean isNumeral(String letters) {
        return letters.length() > 1 && letters.chars().allMatch(each -> "ivx".indexOf(each) >= 0);
    }

    /** With another letter for every c that one of these follows, or that none of them does. */
    private static String withC(String letters, String next, boolean isNext, char other) {
        if (letters.indexOf('c') < 0) {
            return letters;
        }
        StringBuilder changed = new StringBuilder(letters);
        for (int i = 0; i < letters.length(); i++) {
            boolean follows = i + 1 < letters.length() && next.indexOf(letters.charAt(i + 1)) >= 0;
            if (letters.charAt(i) == 'c' && follows == isNext) {
                changed.setCharAt(i, other);
            }
        }
        return changed.toString();
    }

    /** With one letter for several of the same. */
    private static String singled(String letters) {
        StringBuilder single = new StringBuilder(letters.length());
        for (int i = 0; i < letters.length(); i++) {
            char letter = letters.charAt(i);
            if (i == 0 || letter != letters.charAt(i - 1) || Character.isDigit(letter)) {
                single.append(letter);
            }
        }
        return single.toString();
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
