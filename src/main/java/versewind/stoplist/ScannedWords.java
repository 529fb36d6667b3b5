package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Words in which a scan took a letter for another sign: "Principa1", "PedaI". A word that no table knows is mended
 * where that gives a word that one knows; all others stay, "McIntyre" too.
 */
final class ScannedWords {

    private static final int SHORTEST = 4;
    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\p{L}\\d.,/'])(?:[lO]{0,2}\\d[lO\\d]{0,2}|[lI]\\d|lO(?=\\.)|l(?=/\\d| [\\dl]/\\d))(?![\\p{L}\\d])");
    private static final Pattern HAS_LETTERS = Pattern.compile("\\p{L}{2}");
    private static final int LONGEST = 16;
    private static final int MOST_READINGS = 100;
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\d]{" + SHORTEST + ",}");
    /** A pitch or a number close behind a name: "Terz1 3/5", "FluteII". */
    private static final Pattern FIGURES = Pattern.compile("(?:\\d+|I+)$");

    private static final List<Sign> SIGNS = WordTable.rows("scans.csv").stream()
            .map(row -> new Sign(row.get(0), row.get(1)))
            .toList();
    private static final Pattern SUSPECT =
            Pattern.compile(SIGNS.stream().map(sign -> Pattern.quote(sign.read)).collect(Collectors.joining("|")));
    private static final Set<String> KNOWN = known();

    /** What a scan reads, and what is printed. */
    private record Sign(String read, String meant) {}

    private ScannedWords() {}

    private static Set<String> known() {
        Stream<String> stops = WordTable.rows("lexicon.csv").stream().map(row -> row.get(0));
        Stream<String> divisions = WordTable.rows("divisions.csv").stream().map(row -> row.get(0));
        Stream<String> words = WordTable.rows("words.csv").stream().map(row -> row.get(2));
        Set<String> known = new HashSet<>();
        Stream.of(stops, divisions, words)
                .flatMap(names -> names)
                .flatMap(names -> Spelling.words(names).stream())
                .filter(word -> word.length() >= SHORTEST)
                .forEach(known::add);
        return known;
    }

    /** A text with every such word as it was printed. */
    static String mended(String text) {
        return SUSPECT.matcher(text).find() ? WORD.matcher(text).replaceAll(word -> word(word.group())) : text;
    }

    /** A text with figures for the letters in numbers: "l6 ft", "l 3/5 ft", "3O notes", "lO." before a name. */
    static String withFigures(String text) {
        return NUMBER.matcher(text)
                .replaceAll(number ->
                        number.group().replace('l', '1').replace('I', '1').replace('O', '0'));
    }

    private static String word(String read) {
        boolean isWord = read.length() <= LONGEST && HAS_LETTERS.matcher(read).find();
        if (!isWord
                || !SUSPECT.matcher(read).find()
                || isKnown(FIGURES.matcher(read).replaceFirst(""))) {
            return read;
        }
        Set<String> readings = new LinkedHashSet<>(List.of(read));
        for (Sign sign : SIGNS) {
            List<String> more = readings.stream()
                    .flatMap(each -> meant(each, sign).stream())
                    .limit(MOST_READINGS)
                    .toList();
            readings.addAll(more);
        }
        return readings.stream().filter(ScannedWords::isKnown).findFirst().orElse(read);
    }

    private static boolean isKnown(String word) {
        String plain = Spelling.spelled(word);
        return KNOWN.contains(plain) || WordList.of("tremulant").has(plain);
    }

    /** With what is meant by a sign in one place, and in all; in capitals where the word is, or at its beginning. */
    private static List<String> meant(String read, Sign sign) {
        List<String> meant = new ArrayList<>();
        String all = read;
        for (int at = read.lastIndexOf(sign.read); at >= 0; at = read.lastIndexOf(sign.read, at - 1)) {
            boolean capital = at == 0 || read.chars().noneMatch(Character::isLowerCase);
            String letter = capital ? sign.meant.toUpperCase(Locale.ROOT) : sign.meant;
            meant.add(read.substring(0, at) + letter + read.substring(at + sign.read.length()));
            all = all.substring(0, at) + letter + all.substring(at + sign.read.length());
        }
        meant.add(all);
        return meant;
    }
}
