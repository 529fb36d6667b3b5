package versewind.stoplist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import versewind.organ.Footage;

/** Finds a name by the parts that it is made of: words that change only its size, and the ends of compounds. */
final class WordParts {

    private static final int SHORTEST_BEGINNING = 2;

    private final Map<String, Footage> factors = new HashMap<>();
    private final Map<String, String> ends = new HashMap<>();
    private final Map<String, String> shortened = new HashMap<>();
    private final List<String> longestEnds;

    private WordParts(List<List<String>> rows) {
        for (List<String> row : rows) {
            String part = Spelling.spelled(row.get(1));
            if (row.get(0).equals("short")) {
                shortened.put(part, row.get(2));
            } else if (row.get(0).equals("end")) {
                ends.put(part, row.get(2));
            } else {
                factors.put(part, Footage.parse(row.get(2)).orElseThrow());
            }
        }
        longestEnds = ends.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    static WordParts read() {
        return new WordParts(WordTable.rows("wordparts.csv"));
    }

    /** A name with its shortened words written out: "Stop. Diap." becomes "stopped diapason". */
    String spelledOut(String name) {
        return Spelling.words(name).stream()
                .map(word -> shortened.getOrDefault(word, word))
                .collect(Collectors.joining(" "));
    }

    /** The kind of stop of a name, by its parts. */
    Optional<StopKind> find(String name, Function<String, Optional<StopKind>> exact) {
        List<String> words = Spelling.words(name);
        List<String> core = new ArrayList<>();
        double factor = 1;
        for (String word : words) {
            Footage change = factors.get(word);
            if (change == null) {
                core.add(word);
            } else {
                factor *= change.feet();
            }
        }
        double size = factor;
        if (!core.isEmpty() && core.size() < words.size()) {
            Optional<StopKind> rest = exact.apply(String.join(" ", core));
            if (rest.isPresent()) {
                return rest.map(kind -> sized(kind, size));
            }
        }
        return core.isEmpty() && words.size() > 1 ? lastOf(words, exact) : compound(core, size, exact);
    }

    /** A name all of whose words are words of size: what one of them means alone. */
    private static Optional<StopKind> lastOf(List<String> words, Function<String, Optional<StopKind>> exact) {
        for (int i = words.size() - 1; i >= 0; i--) {
            Optional<StopKind> kind = words.get(i).length() > 2 ? exact.apply(words.get(i)) : Optional.empty();
            if (kind.isPresent()) {
                return kind;
            }
        }
        return Optional.empty();
    }

    private Optional<StopKind> compound(List<String> core, double size, Function<String, Optional<StopKind>> exact) {
        if (core.isEmpty() || core.size() > 3) {
            return Optional.empty();
        }
        String joined = String.join("", core);
        for (String end : longestEnds) {
            if (joined.endsWith(end) && joined.length() >= end.length() + SHORTEST_BEGINNING) {
                String beginning = joined.substring(0, joined.length() - end.length());
                double factor =
                        factors.containsKey(beginning) ? factors.get(beginning).feet() : 1;
                Optional<StopKind> first = end.startsWith("bas") ? exact.apply(beginning) : Optional.empty();
                return first.or(() -> exact.apply(ends.get(end))).map(kind -> sized(kind, size * factor));
            }
        }
        return joined.length() > 2 && core.size() == 2 ? eitherWord(core, size, exact) : Optional.empty();
    }

    private static Optional<StopKind> eitherWord(
            List<String> core, double size, Function<String, Optional<StopKind>> exact) {
        Optional<StopKind> last = exact.apply(core.get(1));
        return (last.isPresent() ? last : exact.apply(core.get(0))).map(kind -> sized(kind, size));
    }

    private static StopKind sized(StopKind kind, double factor) {
        return new StopKind(
                kind.name(),
                kind.language(),
                kind.family(),
                scaled(kind.footage(), factor),
                kind.pedalFootage().map(feet -> scaled(feet, factor)),
                kind.pipe(),
                kind.strengthDb(),
                kind.description());
    }

    private static Footage scaled(Footage feet, double factor) {
        int doubled = (int) Math.round(4 * factor);
        boolean inRange = feet.feet() * factor <= 64 && feet.feet() * factor >= 0.125;
        return doubled >= 1 && inRange ? new Footage(feet.numerator() * doubled, feet.denominator() * 4) : feet;
    }
}
