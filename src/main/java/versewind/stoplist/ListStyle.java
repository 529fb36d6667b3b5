package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a whole list is written.
 *
 * @param language the language most of its words are of
 * @param numbered whether numbers before the names count the stops
 * @param pitched whether most stops have their pitch written
 */
record ListStyle(String language, boolean numbered, boolean pitched) {

    private static final Pattern LEADING = Pattern.compile("^\\s*(\\d{1,3})\\s+\\p{L}");
    private static final int FEWEST_NUMBERED = 3;

    /** Looks at all lines of a list. */
    static ListStyle of(List<String> lines) {
        return new ListStyle(language(lines), isNumbered(lines), isPitched(lines));
    }

    /** A manual in this list. */
    NameContext setting() {
        return new NameContext(language, NameContext.Keyboard.MANUAL, Optional.empty(), 0);
    }

    private static boolean isNumbered(List<String> lines) {
        List<Integer> numbers = new ArrayList<>();
        for (String line : lines) {
            Matcher matcher = LEADING.matcher(line);
            if (matcher.find()) {
                numbers.add(Integer.parseInt(matcher.group(1)));
            }
        }
        int rising = 0;
        for (int i = 1; i < numbers.size(); i++) {
            rising += numbers.get(i) == numbers.get(i - 1) + 1 ? 1 : 0;
        }
        return numbers.size() >= FEWEST_NUMBERED && rising * 2 >= numbers.size();
    }

    private static boolean isPitched(List<String> lines) {
        long pitched = lines.stream()
                .filter(line -> Pitches.isMarked(line)
                        || line.matches(".*\\p{L}.*\\s(?:16|8|4|2)\\b.*|\\s*(?:16|8|4|2)\\s+\\p{L}.*"))
                .count();
        long known = lines.stream()
                .filter(line -> line.length() < 40
                        && Lexicon.get().exact(line.strip(), NameContext.NONE).isPresent())
                .count();
        return pitched > known;
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
            String name = line.replaceAll("[^\\p{L}' -]", " ").strip();
            Lexicon.get().language(name).ifPresent(language -> votes.merge(language, 2, Integer::sum));
        }
        return votes.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .orElse("");
    }
}
