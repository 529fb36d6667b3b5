package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How a whole list is written.
 *
 * @param language the language most of its words are of
 * @param numbered whether numbers before the names count the stops
 * @param pitched whether most stops have their pitch written
 * @param halves whether B and D in brackets mean bass and treble
 * @param headed whether a division has a heading, or too few lines name stops for a list without
 * @param stopLines texts of this list that were taken apart as stops
 * @param names whether texts of this list are names of stops
 */
record ListStyle(
        String language,
        boolean numbered,
        boolean pitched,
        boolean halves,
        boolean headed,
        Memory<StopLine> stopLines,
        Memory<Boolean> names) {

    private static final TokenForm LEADING = TokenForm.of("#3 _word|roman");
    private static final TokenForm LETTER_ASIDE = TokenForm.of("open letter close", "number letter");
    private static final TokenForm LEGEND = TokenForm.of("open letter close [=:-]? word", "letter [=:] word");
    private static final Set<String> UNISONS = Set.of("16", "8", "4", "2");
    private static final Pattern NOT_IN_NAMES = Pattern.compile("[\\d|\t,;]+|\\s{2,}");
    /** A word for a division counts more than a name, and less if several languages have it. */
    private static final int WORD_VOTES = 12;

    private static final int NAME_VOTES = 6;
    private static final int FEWEST_NUMBERED = 3;
    private static final int FEWEST_NAMES = 3;
    private static final int LONGEST_NAME = 40;

    /** A list of which nothing is known. */
    static final ListStyle PLAIN = new ListStyle("", false, true, true, true, Memory.none(), Memory.none());

    /** Looks at all lines of a list. */
    static ListStyle of(List<String> lines) {
        String language = language(lines);
        boolean headed = lines.stream().anyMatch(line -> DivisionHeading.read(line, language)
                        .filter(heading -> !heading.word().isPedal())
                        .isPresent())
                || names(lines).count() < FEWEST_NAMES;
        return new ListStyle(
                language,
                isNumbered(lines),
                isPitched(lines),
                areHalves(lines),
                headed,
                Memory.ofList(),
                Memory.ofList());
    }

    /** A manual in this list. */
    NameContext setting() {
        return new NameContext(language, NameContext.Keyboard.MANUAL, Optional.empty(), 0);
    }

    /** True if B and D are the only single letters in brackets, and no legend gives them another meaning. */
    private static boolean areHalves(List<String> lines) {
        Set<String> letters = new HashSet<>();
        boolean legend = false;
        for (Line line : lines.stream().map(Line::new).toList()) {
            for (int i = 0; i < line.size(); i++) {
                if (LETTER_ASIDE.at(line, i) > 0 && !line.is(i + 1, "ranks") && !line.is(i + 1, "feet")) {
                    letters.add(line.at(i + 1).plain());
                }
            }
            legend |= LEGEND.at(line, 0) > 0;
        }
        return !legend && Set.of("b", "d").containsAll(letters);
    }

    private static boolean isNumbered(List<String> lines) {
        List<Integer> numbers = new ArrayList<>();
        for (String text : lines) {
            Line line = new Line(text);
            IntStream.range(0, line.size())
                    .filter(i -> (i == 0 || line.gap(i) > 1) && LEADING.at(line, i) > 0)
                    .forEach(i -> numbers.add(Integer.parseInt(line.at(i).text())));
        }
        int rising = 0;
        for (int i = 1; i < numbers.size(); i++) {
            rising += numbers.get(i) == numbers.get(i - 1) + 1 ? 1 : 0;
        }
        return numbers.size() >= FEWEST_NUMBERED && rising * 2 >= numbers.size();
    }

    private static boolean isPitched(List<String> lines) {
        long pitched = pieces(lines).map(Line::new).filter(ListStyle::hasPitch).count();
        return pitched > names(lines).count();
    }

    /** What signs part in the lines. */
    private static Stream<String> pieces(List<String> lines) {
        return lines.stream().flatMap(line -> Segments.split(line, ListStyle::isBetween).stream());
    }

    private static boolean isBetween(Line line, int token) {
        return Segments.isSeparator(line, token)
                || Segments.isApart(line, token, "-")
                || (line.isSign(token, ".:") && line.gap(token + 1) > 0);
    }

    /** The pieces that hold the name of a stop alone. */
    private static Stream<String> names(List<String> lines) {
        return pieces(lines)
                .filter(line -> line.length() < LONGEST_NAME
                        && Lexicon.get().exact(line.strip(), NameContext.NONE).isPresent());
    }

    private static boolean hasPitch(Line line) {
        boolean leads = isUnison(line, 0) && line.is(1) && line.at(1).isWord() && line.gap(1) > 0;
        boolean follows = IntStream.range(1, line.size())
                .anyMatch(i -> isUnison(line, i)
                        && line.gap(i) > 0
                        && line.tokens().subList(0, i).stream().anyMatch(Token::isWord));
        return leads || follows || Pitches.isMarked(line);
    }

    private static boolean isUnison(Line line, int token) {
        return line.is(token, Token.Kind.NUMBER)
                && UNISONS.contains(line.at(token).text())
                && !Character.isLetterOrDigit(line.after(token));
    }

    private static String language(List<String> lines) {
        Map<String, Integer> votes = new HashMap<>();
        for (String line : lines) {
            List<String> words = Spelling.words(line);
            for (int i = 0; i < words.size(); i++) {
                DivisionWord.at(words, i, "")
                        .filter(spotted -> spotted.word().words().length() > 2)
                        .map(spotted -> DivisionWord.entries(spotted.word().words()).stream()
                                .map(DivisionWord.Entry::language)
                                .distinct()
                                .toList())
                        .ifPresent(languages -> languages.forEach(
                                language -> votes.merge(language, WORD_VOTES / languages.size(), Integer::sum)));
            }
            for (String name : NOT_IN_NAMES.split(line, -1)) {
                Lexicon.get().language(name).ifPresent(language -> votes.merge(language, NAME_VOTES, Integer::sum));
            }
        }
        return votes.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse("");
    }
}
