package versewind.stoplist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.Pipe;

/**
 * The names of stops: each found as it is written, then by how it sounds, then by its parts, then by its spelling.
 *
 * <p>Sources: those in the head of {@code lexicon.csv}.
 */
public final class Lexicon {

    private static final int SHORTEST_NEAR = 6;
    private static final int LONG = 9;
    private static final int SHORTEST_CUT = 3;

    private final List<Row> rows = new ArrayList<>();
    private final Map<String, List<Row>> bySpelling = new HashMap<>();
    private final Map<String, List<Row>> bySound = new HashMap<>();
    private final Map<String, List<Whole>> byBeginning = new HashMap<>();
    private final List<Spelled> longNames;
    private final WordParts parts = WordParts.read();

    /** A name, word by word. */
    private record Whole(List<String> words, Row row) {}

    /** A name as it is spelled, and its letters. */
    private record Spelled(String name, int letters) {}

    /**
     * A row of the lexicon.
     *
     * @param kind what is known
     * @param names all ways to write it
     * @param conditions what must hold for the row to apply
     */
    record Row(StopKind kind, List<String> names, List<String> conditions) {}

    /**
     * A name that was found.
     *
     * @param kind what is known of it
     * @param how how it was found
     */
    public record Found(StopKind kind, Confidence how) {}

    private static final class Holder {
        private static final Lexicon LEXICON = new Lexicon();
    }

    private Lexicon() {
        for (List<String> fields : WordTable.rows("lexicon.csv")) {
            Row row = row(fields);
            rows.add(row);
            for (String name : row.names()) {
                bySpelling
                        .computeIfAbsent(Spelling.spelled(name), key -> new ArrayList<>())
                        .add(row);
                List<String> words = Spelling.words(name);
                byBeginning
                        .computeIfAbsent(beginning(words), key -> new ArrayList<>())
                        .add(new Whole(words, row));
                bySound.computeIfAbsent(Spelling.sounded(name), key -> new ArrayList<>())
                        .add(row);
            }
        }
        longNames = bySpelling.keySet().stream()
                .filter(name -> name.length() >= SHORTEST_NEAR - 1)
                .map(name -> new Spelled(name, letters(name)))
                .toList();
    }

    /** The lexicon, read at its first use. */
    static Lexicon get() {
        return Holder.LEXICON;
    }

    private static Row row(List<String> fields) {
        List<String> names = WordTable.names(fields.get(0));
        StopKind kind = new StopKind(
                names.get(0),
                fields.get(2),
                family(fields.get(3)),
                Footage.parse(fields.get(4)).orElseThrow(),
                Footage.parse(fields.get(5)),
                pipe(fields.get(6)),
                Double.parseDouble(fields.get(7)),
                fields.get(8));
        String when = fields.get(1);
        return new Row(kind, names, when.isEmpty() ? List.of() : List.of(when.split(" ", -1)));
    }

    /** "Gemshorn (principal) 4": the word of a family behind a name says more than the name. */
    static Optional<Family> family(List<String> remarks) {
        return remarks.stream()
                .flatMap(remark -> Stream.of(Family.values())
                        .filter(family -> family.word().equalsIgnoreCase(remark.strip()) && !family.isCompound()))
                .findFirst();
    }

    private static Family family(String word) {
        for (Family family : Family.values()) {
            if (family.word().equals(word)) {
                return family;
            }
        }
        throw new IllegalStateException("the lexicon has an unknown family \"" + word + "\"");
    }

    private static Pipe pipe(String word) {
        for (Pipe pipe : Pipe.values()) {
            if (pipe.word().equals(word)) {
                return pipe;
            }
        }
        throw new IllegalStateException("the lexicon has an unknown pipe \"" + word + "\"");
    }

    /** All rows, in the order of the file. */
    List<Row> rows() {
        return List.copyOf(rows);
    }

    /** One sentence on the stops of a name, for somebody who asks what it is. */
    public static Optional<String> describe(String name) {
        return get().find(name, NameContext.NONE).map(found -> found.kind().description());
    }

    /** The kind of stop of a name, if it is spelled in a known way or made of known parts. */
    public static Optional<StopKind> kindOf(String name) {
        return name.isBlank()
                ? Optional.empty()
                : get().known(name, NameContext.NONE).map(Found::kind);
    }

    /** The entry for a name in its context, by spelling, parts or similar spelling. */
    Optional<Found> find(String name, NameContext setting) {
        return known(name, setting).or(() -> nearby(name, setting).map(kind -> new Found(kind, Confidence.SPELLING)));
    }

    /** The entry for a name in its context, if it is spelled in a known way or made of known parts. */
    Optional<Found> known(String name, NameContext setting) {
        return exact(name, setting)
                .or(() -> exact(parts.spelledOut(name), setting))
                .map(kind -> new Found(kind, Confidence.NAME))
                .or(() -> parts.find(parts.spelledOut(name), part -> exact(part, setting))
                        .map(kind -> new Found(kind, Confidence.PARTS)));
    }

    /**
     * The entry for a name of which every word is cut short, "Vox Ang.", where all that it can mean are of one family.
     */
    Optional<Found> shortened(String name, NameContext setting) {
        List<String> words = Spelling.words(name);
        boolean tells = words.stream().anyMatch(word -> word.length() >= SHORTEST_CUT)
                && words.stream().noneMatch(word -> Character.isDigit(word.charAt(0)));
        List<Row> meant = !tells
                ? List.of()
                : byBeginning.getOrDefault(beginning(words), List.of()).stream()
                        .filter(each -> begins(each.words(), words))
                        .map(Whole::row)
                        .filter(row -> row.conditions().stream().allMatch(setting::holds))
                        .distinct()
                        .toList();
        boolean alike =
                meant.stream().map(row -> row.kind().family()).distinct().count() == 1;
        return alike ? best(meant, setting).map(kind -> new Found(kind, Confidence.PARTS)) : Optional.empty();
    }

    /** How many words a name has, and the first letter: what a name cut short has too. */
    private static String beginning(List<String> words) {
        return words.size() + words.get(0).substring(0, 1);
    }

    private static boolean begins(List<String> whole, List<String> cut) {
        return whole.size() == cut.size()
                && IntStream.range(0, cut.size()).allMatch(i -> whole.get(i).startsWith(cut.get(i)));
    }

    /** The entry for a name that is in the lexicon as it is written, or as it sounds. */
    Optional<StopKind> exact(String name, NameContext setting) {
        Optional<StopKind> spelled = best(bySpelling.get(Spelling.spelled(name)), setting);
        return spelled.isPresent() ? spelled : best(bySound.get(Spelling.sounded(name)), setting);
    }

    /** The language that a name as it is spelled belongs to, if it belongs to one alone. */
    Optional<String> language(String name) {
        List<String> languages = bySpelling.getOrDefault(Spelling.spelled(name), List.of()).stream()
                .map(row -> row.kind().language())
                .distinct()
                .toList();
        return languages.size() == 1 && !languages.get(0).equals("la")
                ? Optional.of(languages.get(0))
                : Optional.empty();
    }

    private static Optional<StopKind> best(List<Row> candidates, NameContext setting) {
        if (candidates == null) {
            return Optional.empty();
        }
        return candidates.stream()
                .filter(row -> row.conditions().stream().allMatch(setting::holds))
                .max(Comparator.comparingInt((Row row) -> 4 * row.conditions().size() + near(row, setting)))
                .or(() -> candidates.stream().findFirst())
                .map(Row::kind);
    }

    /** Of rows that fit alike, the one of the list's language or of the pitch that is written. */
    private static int near(Row row, NameContext setting) {
        boolean isPitch = setting.footage()
                .filter(feet -> feet.equals(row.kind().usualFootage(setting.inPedal())))
                .isPresent();
        return (row.kind().language().equals(setting.language()) ? 2 : 0) + (isPitch ? 1 : 0);
    }

    /** Which letters a name has, a bit for each; one letter put in or taken out changes one of them at most. */
    private static int letters(String name) {
        return name.chars().map(each -> 1 << (each % Integer.SIZE)).reduce(0, (all, each) -> all | each);
    }

    private Optional<StopKind> nearby(String name, NameContext setting) {
        String typed = Spelling.spelled(name);
        if (typed.length() < SHORTEST_NEAR) {
            return Optional.empty();
        }
        int limit = typed.length() < LONG ? 1 : 2;
        String nearest = "";
        int least = limit + 1;
        int letters = letters(typed);
        for (Spelled each : longNames) {
            if (Integer.bitCount(letters ^ each.letters()) > 2 * limit) {
                continue;
            }
            int distance = Spelling.distance(typed, each.name(), limit);
            boolean first =
                    distance == least && !nearest.isEmpty() && each.name().compareTo(nearest) < 0;
            if (distance < least || first) {
                nearest = each.name();
                least = distance;
            }
        }
        return best(bySpelling.get(nearest), setting);
    }
}
