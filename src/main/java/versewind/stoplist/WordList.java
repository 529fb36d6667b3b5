package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The words of one kind, of {@code words.csv}: neither names of stops nor of divisions, but units, prepositions,
 * headings of parts, words for couplers. All words that are asked for are spelled plainly, as {@link Spelling#words}
 * gives them.
 *
 * @param whole words that stand as they are
 * @param starred words with a star at one end, or both, for any letters
 * @param phrases what follows the first of several words, by that word
 */
record WordList(Set<String> whole, List<Starred> starred, Map<String, List<List<Starred>>> phrases) {

    private static final Map<String, WordList> TABLE = read();

    /** A word as it stands in the table; an open end stands for any letters. */
    private record Starred(String letters, boolean open, boolean end) {

        static Starred of(String entry) {
            boolean open = entry.startsWith("*");
            boolean end = entry.endsWith("*");
            return new Starred(entry.substring(open ? 1 : 0, entry.length() - (end ? 1 : 0)), open, end);
        }

        boolean fits(String word) {
            if (open) {
                return end ? word.contains(letters) : word.endsWith(letters);
            }
            return end ? word.startsWith(letters) : word.equals(letters);
        }
    }

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
                            .add(phrase.stream().skip(1).map(Starred::of).toList());
                } else if (entry.contains("*")) {
                    list.starred.add(Starred.of(entry));
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
        for (List<Starred> phrase : phrases.getOrDefault(word, List.of())) {
            if (phrase.size() >= longest && begins(phrase, words, place + 1)) {
                longest = phrase.size() + 1;
            }
        }
        return longest;
    }

    private static boolean begins(List<Starred> phrase, List<String> words, int place) {
        if (place + phrase.size() > words.size()) {
            return false;
        }
        for (int i = 0; i < phrase.size(); i++) {
            if (!phrase.get(i).fits(words.get(place + i))) {
                return false;
            }
        }
        return true;
    }

    /** True if one word is of this kind. */
    boolean has(String word) {
        if (whole.contains(word)) {
            return true;
        }
        for (Starred each : starred) {
            if (each.fits(word)) {
                return true;
            }
        }
        return false;
    }

    /** True if an entry of this kind begins at any of the words. */
    boolean in(List<String> words) {
        for (int i = 0; i < words.size(); i++) {
            if (at(words, i) > 0) {
                return true;
            }
        }
        return false;
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
