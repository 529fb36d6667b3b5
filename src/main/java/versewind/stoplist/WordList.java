package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The words of one kind, of {@code words.csv}: neither names of stops nor of divisions, but units, prepositions,
 * headings of parts, words for couplers. All words that are asked for are spelled plainly, as {@link Spelling#words}
 * gives them.
 *
 * @param whole words that stand as they are
 * @param starred words with a star at one end, or both, for any letters
 * @param phrases several words, by the first of them
 */
record WordList(Set<String> whole, List<String> starred, Map<String, List<List<String>>> phrases) {

    private static final Map<String, WordList> TABLE = read();

    private static Map<String, WordList> read() {
        Map<String, WordList> table = new HashMap<>();
        for (List<String> row : WordTable.rows("words.csv")) {
            WordList list = table.computeIfAbsent(
                    row.get(0), kind -> new WordList(new HashSet<>(), new ArrayList<>(), new HashMap<>()));
            for (String entry : WordTable.names(row.get(2))) {
                List<String> phrase = List.of(entry.split(" ", -1));
                if (phrase.size() > 1) {
                    list.phrases
                            .computeIfAbsent(phrase.get(0), first -> new ArrayList<>())
                            .add(phrase);
                } else if (entry.contains("*")) {
                    list.starred.add(entry);
                } else {
                    list.whole.add(entry);
                }
            }
        }
        return table;
    }

    /** The words of a kind, by its name in the table. */
    static WordList of(String kind) {
        WordList list = TABLE.get(kind);
        if (list == null) {
            throw new IllegalStateException("the table of words has no kind \"" + kind + "\"");
        }
        return list;
    }

    /** The names of all kinds. */
    static Set<String> kinds() {
        return Set.copyOf(TABLE.keySet());
    }

    /** The number of words of the longest entry that begins at a place; 0 where none does. */
    int at(List<String> words, int place) {
        if (place >= words.size()) {
            return 0;
        }
        String word = words.get(place);
        int longest = has(word) ? 1 : 0;
        for (List<String> phrase : phrases.getOrDefault(word, List.of())) {
            boolean fits = place + phrase.size() <= words.size()
                    && IntStream.range(1, phrase.size()).allMatch(i -> fits(phrase.get(i), words.get(place + i)));
            longest = fits ? Math.max(longest, phrase.size()) : longest;
        }
        return longest;
    }

    private static boolean fits(String pattern, String word) {
        boolean open = pattern.startsWith("*");
        boolean end = pattern.endsWith("*");
        String part = pattern.substring(open ? 1 : 0, pattern.length() - (end ? 1 : 0));
        if (open) {
            return end ? word.contains(part) : word.endsWith(part);
        }
        return end ? word.startsWith(part) : word.equals(part);
    }

    /** True if one word is of this kind. */
    boolean has(String word) {
        return whole.contains(word) || starred.stream().anyMatch(each -> fits(each, word));
    }

    /** True if an entry of this kind begins at any of the words. */
    boolean in(List<String> words) {
        return IntStream.range(0, words.size()).anyMatch(i -> at(words, i) > 0);
    }

    /** True if a text has an entry of this kind. */
    boolean in(String text) {
        return in(Spelling.words(text));
    }

    /** True if the words are entries of this kind and nothing else. */
    boolean isAll(List<String> words) {
        return !words.isEmpty() && without(words).isEmpty();
    }

    /** The words without those of this kind. */
    List<String> without(List<String> words) {
        List<String> rest = new ArrayList<>();
        int place = 0;
        while (place < words.size()) {
            int length = at(words, place);
            if (length == 0) {
                rest.add(words.get(place));
            }
            place += Math.max(1, length);
        }
        return rest;
    }
}
