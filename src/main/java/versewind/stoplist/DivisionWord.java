package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A word for a division in a heading or a coupler's name.
 *
 * @param role what kind of division it means: "great", "pedal"; "" for a manual by its number
 * @param number the manual's number, if it is one
 * @param box whether the word itself means a swell box
 * @param words the word as it was found
 */
record DivisionWord(String role, OptionalInt number, boolean box, String words) {

    static final String PEDAL = "pedal";

    /** The only manual, or the main one. */
    static final String MAIN = "main";

    private static final int SHORTEST_SOUND = 6;
    private static final int MOST_ORDINALS = 6;
    private static final int MOST_WORDS = 4;
    private static final Map<String, List<Entry>> ENTRIES = read();

    /**
     * A row of the table.
     *
     * @param language whose word it is
     * @param role the kind of division
     * @param box whether it means a swell box
     */
    record Entry(String language, String role, boolean box) {}

    /** The number that a word means as an ordinal or a numeral, 1 to 6; 0 where it means none. */
    static int ordinal(String word) {
        return IntStream.rangeClosed(1, MOST_ORDINALS)
                .filter(i -> WordList.of("ordinal " + i).has(word))
                .findFirst()
                .orElse(0);
    }

    /** A manual that is called by its number; 0 for none. */
    static DivisionWord numbered(String words, int number) {
        return new DivisionWord("", number > 0 ? OptionalInt.of(number) : OptionalInt.empty(), false, words);
    }

    /** The same with another number of its manual. */
    DivisionWord numbered(OptionalInt other) {
        return new DivisionWord(role, other, box, words);
    }

    /** The same, where another word beside it may mean a swell box. */
    DivisionWord boxed(boolean isBoxed) {
        return new DivisionWord(role, number, isBoxed, words);
    }

    boolean isPedal() {
        return role.equals(PEDAL);
    }

    private static Map<String, List<Entry>> read() {
        Map<String, List<Entry>> entries = new HashMap<>();
        for (List<String> row : WordTable.rows("divisions.csv")) {
            for (String name : WordTable.names(row.get(0))) {
                entries.computeIfAbsent(Spelling.spelled(name), key -> new ArrayList<>())
                        .add(new Entry(row.get(1), row.get(2), row.get(3).equals("box")));
            }
        }
        for (String name : List.copyOf(entries.keySet())) {
            if (name.length() >= SHORTEST_SOUND) {
                entries.putIfAbsent(Spelling.sounded(name), entries.get(name));
            }
        }
        return entries;
    }

    /** The rows for a word as it is spelled, or as a longer one sounds: "Ober-Werck". */
    static List<Entry> entries(String word) {
        String name = Spelling.spelled(word);
        List<Entry> known = ENTRIES.getOrDefault(name, List.of());
        return known.isEmpty() && name.length() >= SHORTEST_SOUND
                ? ENTRIES.getOrDefault(Spelling.sounded(name), known)
                : known;
    }

    /** The longest division's name that begins at a place among words, and how many words it takes. */
    static Optional<Spotted> at(List<String> words, int place, String language) {
        for (int length = Math.min(MOST_WORDS, words.size() - place); length >= 1; length--) {
            String name = String.join("", words.subList(place, place + length));
            List<Entry> entries = entries(name);
            if (!entries.isEmpty() && (length == 1 || words.get(place).length() > 0)) {
                Entry entry = entries.stream()
                        .filter(each -> each.language().equals(language))
                        .findFirst()
                        .orElse(entries.get(0));
                return Optional.of(
                        new Spotted(new DivisionWord(entry.role(), OptionalInt.empty(), entry.box(), name), length));
            }
        }
        return Optional.empty();
    }

    /** The first division's name among words. */
    static Optional<Spotted> in(List<String> words, String language) {
        return IntStream.range(0, words.size())
                .mapToObj(i -> at(words, i, language))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /**
     * A division's name among words.
     *
     * @param word what it is
     * @param length how many words it takes
     */
    record Spotted(DivisionWord word, int length) {}
}
