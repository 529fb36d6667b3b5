package versewind.stoplist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.stoplist.Token.Kind;

/**
 * The numbers of pistons in a line: "6 generals, Great 4, Swell 4", "Generals 1-8", "64 memory levels".
 *
 * @param generals number of general pistons; 0 where none is said
 * @param levels number of memory levels; 0 where none is said
 * @param toEach number of pistons of each division; 0 where none is said
 * @param divisionals number of pistons by the words that name their divisions
 * @param rest what was not understood of it
 */
record PistonLine(int generals, int levels, int toEach, Map<DivisionWord, Integer> divisionals, List<String> rest) {

    private static final TokenForm RANGE = TokenForm.of("#3 [-]|=to|=bis #3");
    private static final List<List<String>> NUMBERS_FROM_TWO = List.of(
            List.of("two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"),
            List.of("zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun", "zehn", "elf", "zwölf"),
            List.of("deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf", "dix", "onze", "douze"),
            List.of("twee", "drie", "vier", "vijf", "zes", "zeven", "acht", "negen", "tien", "elf", "twaalf"));

    private static final int MOST = 40;
    private static final int MOST_LEVELS = 100_000;
    private static final int MOST_DIGITS = 5;

    PistonLine {
        divisionals = Collections.unmodifiableMap(new LinkedHashMap<>(divisionals));
        rest = List.copyOf(rest);
    }

    /** True if a text names pistons or other playing aids. */
    static boolean isOfPistons(String text) {
        return WordList.of("playing aid").in(text);
    }

    /** True if anything was understood. */
    boolean saysAnything() {
        return generals > 0 || levels > 0 || toEach > 0 || !divisionals.isEmpty();
    }

    static PistonLine read(String text, String language) {
        int generals = 0;
        int levels = 0;
        int toEach = 0;
        Map<DivisionWord, Integer> divisionals = new LinkedHashMap<>();
        List<String> rest = new ArrayList<>();
        for (String part : Segments.split(text, PistonLine::isBetween)) {
            List<String> words = Spelling.words(part);
            boolean isOther = WordList.of("other aid").in(words) || isOfCoupler(words, language);
            int count = isOther ? 0 : inWords(words).orElse(count(new Line(part)));
            boolean few = count > 0 && count <= MOST;
            List<DivisionWord> named = divisions(WordList.of("aid of pistons").without(words), language);
            if (few && WordList.of("general piston").in(words)) {
                generals = count;
            } else if (few
                    && WordList.of("each").in(words)
                    && WordList.of("each of").in(words)) {
                toEach = count;
            } else if (few && !named.isEmpty()) {
                named.forEach(division -> divisionals.put(division, count));
            } else if (count > 0
                    && count <= MOST_LEVELS
                    && WordList.of("memory level").in(words)) {
                levels = count;
            } else {
                rest.add(part);
            }
        }
        return new PistonLine(generals, levels, toEach, divisionals, rest);
    }

    /** Whether a piston moves a coupler, "2 Great to Pedal pistons"; "4 toe pistons to Pedal" are the pedal's own. */
    private static boolean isOfCoupler(List<String> words, String language) {
        int to = words.indexOf("to");
        return to > 0
                && division(WordList.of("aid of pistons").without(words.subList(0, to)), language)
                        .isPresent();
    }

    /** True if a token parts two entries; commas between running numbers do not. */
    private static boolean isBetween(Line line, int token) {
        boolean counted = line.is(token + 1, Kind.NUMBER) && Segments.isAnd(line, token);
        boolean inNumbers = line.isSign(token, ",")
                && line.is(token - 1, Kind.NUMBER)
                && line.is(token + 1, Kind.NUMBER)
                && !line.is(token + 2, Kind.WORD)
                && number(line, token + 1) == number(line, token - 1) + 1;
        return counted
                || (line.isSign(token, ",;:") && !inNumbers)
                || (line.isSign(token, ".") && line.gap(token + 1) > 0);
    }

    /** "Six general pistons" are six; empty where no number is written out. */
    private static OptionalInt inWords(List<String> words) {
        return NUMBERS_FROM_TWO.stream()
                .flatMap(numbers -> words.stream().map(numbers::indexOf))
                .filter(place -> place >= 0)
                .mapToInt(place -> place + 2)
                .findFirst();
    }

    /** "6" is six; "1-8" is eight; 0 where no number is said, or more than one. */
    private static int count(Line line) {
        int[] numbers = IntStream.range(0, line.size())
                .filter(i -> line.at(i).isWhole(MOST_DIGITS)
                        && !Character.isLetter(line.before(i))
                        && !Character.isLetter(line.after(i)))
                .toArray();
        int range = RANGE.in(line);
        boolean rising = IntStream.range(1, numbers.length)
                .allMatch(i -> number(line, numbers[i]) == number(line, numbers[i - 1]) + 1);
        if (numbers.length > 1 && (rising || (numbers.length == 2 && range >= 0))) {
            return Math.max(0, number(line, numbers[numbers.length - 1]) - number(line, numbers[0]) + 1);
        }
        return numbers.length == 1 ? number(line, numbers[0]) : 0;
    }

    private static int number(Line line, int token) {
        return Integer.parseInt(line.at(token).text());
    }

    /** "Three to Great and Swell": one division, or those on both sides of the "and". */
    private static List<DivisionWord> divisions(List<String> words, String language) {
        int and = IntStream.range(0, words.size())
                .filter(i -> WordList.of("and").has(words.get(i)))
                .findFirst()
                .orElse(words.size());
        List<DivisionWord> all = new ArrayList<>();
        division(words.subList(0, and), language).ifPresent(all::add);
        division(words.subList(Math.min(and + 1, words.size()), words.size()), language)
                .ifPresent(all::add);
        return all;
    }

    private static Optional<DivisionWord> division(List<String> words, String language) {
        return DivisionWord.in(words, language).map(DivisionWord.Spotted::word);
    }
}
