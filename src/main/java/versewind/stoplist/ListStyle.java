package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
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
 * @param headed whether a division has a heading, or too few lines name stops for a list without
 */
record ListStyle(String language, boolean numbered, boolean pitched, boolean headed) {

    private static final TokenForm LEADING = TokenForm.of("#3 _word|roman");
    private static final Set<String> UNISONS = Set.of("16", "8", "4", "2");
    private static final Pattern NOT_IN_NAMES = Pattern.compile("[\\d|\t,;]+|\\s{2,}");
    private static final int FEWEST_NUMBERED = 3;
    private static final int FEWEST_NAMES = 3;
    private static final int LONGEST_NAME = 40;

    /** A list of which nothing is known. */
    static final ListStyle PLAIN = new ListStyle("", false, true, true);

    /** Looks at all lines of a list. */
    static ListStyle of(List<String> lines) {
        String language = language(lines);
        boolean headed = lines.stream().anyMatch(line -> DivisionHeading.read(line, language)
                        .filter(heading -> !heading.word().isPedal())
                        .isPresent())
                || names(lines).count() < FEWEST_NAMES;
        return new ListStyle(language, isNumbered(lines), isPitched(lines), headed);
    }

    /** A manual in this list. */
    NameContext setting() {
        return new NameContext(language, NameContext.Keyboard.MANUAL, Optional.empty(), 0);
    }

    private static boolean isNumbered(List<String> lines) {
        List<Integer> numbers = new ArrayList<>();
        for (String text : lines) {
            Line line = new Line(text);
            if (LEADING.at(line, 0) > 0) {
                numbers.add(Integer.parseInt(line.at(0).text()));
            }
        }
        int rising = 0;
        for (int i = 1; i < numbers.size(); i++) {
            rising += numbers.get(i) == numbers.get(i - 1) + 1 ? 1 : 0;
        }
        return numbers.size() >= FEWEST_NUMBERED && rising * 2 >= numbers.size();
    }

    private static boolean isPitched(List<String> lines) {
        long pitched = lines.stream().map(Line::new).filter(ListStyle::hasPitch).count();
        return pitched > names(lines).count();
    }

    /** The lines that hold the name of a stop alone. */
    private static Stream<String> names(List<String> lines) {
        return lines.stream()
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
                        .ifPresent(
                                spotted -> DivisionWord.entries(spotted.word().words()).stream()
                                        .map(DivisionWord.Entry::language)
                                        .distinct()
                                        .forEach(language -> votes.merge(language, 3, Integer::sum)));
            }
            for (String name : NOT_IN_NAMES.split(line, -1)) {
                Lexicon.get().language(name).ifPresent(language -> votes.merge(language, 2, Integer::sum));
            }
        }
        return votes.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse("");
    }
}
