package versewind.stoplist;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A kind of word in a stop list that is neither the name of a stop nor that of a division: units, prepositions, headings of
 * parts, words for couplers. The words stand in {@code words.csv}, each under the name of its constant.
 *
 * <p>All words that are asked for are spelled plainly, as {@link Spelling#words} gives them.
 */
enum WordClass {
    FEET,
    RANKS,
    KEYS,
    PIPES,
    COUNTED,
    INCH,
    WIND,
    MATERIAL,
    BOTTOM,
    BEGINS,
    MIDDLE,
    GROOVED,
    PITCH_IN_NAME,
    SPAN,
    HALF,
    HALF_HEADING,
    HALF_STOP,
    HALF_COLUMN,
    MANUAL,
    ORDINAL_1,
    ORDINAL_2,
    ORDINAL_3,
    ORDINAL_4,
    ORDINAL_5,
    ORDINAL_6,
    ORDINAL_END,
    HEADING_FILLER,
    HEADING_TAIL,
    ENCLOSED,
    UNENCLOSED,
    LOUD,
    NOT_A_HEADING,
    TOO_SHORT,
    NAMED_MANUAL,
    SOFT_ROLE,
    PART_COUPLERS,
    PART_ACCESSORIES,
    PART_TREMULANTS,
    PART_PISTONS,
    PART_NOTES,
    PART_TITLE,
    PART_FILLER,
    ONE_COUPLER,
    COLLECTIVE,
    AND,
    COUPLED_TO,
    COUPLER_FILLER,
    THE_MANUAL,
    COUPLER,
    TO_PEDAL,
    MANUAL_COUPLER,
    SUB,
    SUPER,
    OCTAVE,
    UNISON_OFF,
    NO_COUPLER,
    OWN_PITCH,
    ALONE,
    PITCH_OF_COUPLER,
    TREMULANT,
    PLAYING_AID,
    GENERAL_PISTON,
    EACH,
    EACH_OF,
    AID_OF_PISTONS,
    MEMORY_LEVEL,
    OTHER_AID,
    SAID_BY_PISTONS,
    NUMBER_RANGE,
    PREPARED,
    TOY,
    CARILLON,
    PROSE,
    SENTENCE,
    JOINED_NAMES,
    BORROWED,
    LENT_BY,
    LENT_OF,
    LENT_ALONE,
    NOT_IN_NAMES,
    RANKS_IN_NAME,
    TWO_RANKS,
    PAIR_OF_PITCHES,
    EXTRA_COLUMN,
    EXTRA_COUNT,
    END_OF_NAME,
    BULLET;

    private static final List<WordClass> ORDINALS =
            List.of(ORDINAL_1, ORDINAL_2, ORDINAL_3, ORDINAL_4, ORDINAL_5, ORDINAL_6);
    private static final Map<WordClass, Words> TABLE = read();

    /** The words of a class: those that stand as they are, those with a star, and phrases by their first word. */
    private record Words(Set<String> whole, List<String> starred, Map<String, List<List<String>>> phrases) {

        int at(List<String> words, int place) {
            String word = words.get(place);
            int longest = whole.contains(word) || starred.stream().anyMatch(each -> fits(each, word)) ? 1 : 0;
            for (List<String> phrase : phrases.getOrDefault(word, List.of())) {
                boolean fits = place + phrase.size() <= words.size()
                        && IntStream.range(1, phrase.size())
                                .allMatch(i -> fits(phrase.get(i), words.get(place + i)));
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
    }

    private static Map<WordClass, Words> read() {
        Map<WordClass, Words> table = new EnumMap<>(WordClass.class);
        for (WordClass each : values()) {
            table.put(each, new Words(new HashSet<>(), new ArrayList<>(), new HashMap<>()));
        }
        for (List<String> row : WordTable.rows("words.csv")) {
            Words words = table.get(valueOf(row.get(0).toUpperCase(Locale.ROOT).replace(' ', '_')));
            for (String entry : WordTable.names(row.get(2))) {
                List<String> phrase = List.of(entry.split(" ", -1));
                if (phrase.size() > 1) {
                    words.phrases()
                            .computeIfAbsent(phrase.get(0), first -> new ArrayList<>())
                            .add(phrase);
                } else if (entry.startsWith("*") || entry.endsWith("*")) {
                    words.starred().add(entry);
                } else {
                    words.whole().add(entry);
                }
            }
        }
        return table;
    }

    /** The number of words of the longest entry that begins at a place; 0 where none does. */
    int at(List<String> words, int place) {
        return TABLE.get(this).at(words, place);
    }

    /** Whether one word is of this class. */
    boolean has(String word) {
        return at(List.of(word), 0) > 0;
    }

    /** Whether any of the words begins an entry of this class. */
    boolean in(List<String> words) {
        return IntStream.range(0, words.size()).anyMatch(i -> at(words, i) > 0);
    }

    /** Whether a text has a word of this class. */
    boolean in(String text) {
        return in(Spelling.words(text));
    }

    /** Whether the words are one entry of this class and nothing else. */
    boolean is(List<String> words) {
        return !words.isEmpty() && at(words, 0) == words.size();
    }

    /** The words without those of this class. */
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

    /** The number that a word means as an ordinal or a numeral, 1 to 6; 0 where it means none. */
    static int ordinal(String word) {
        return IntStream.range(0, ORDINALS.size())
                        .filter(i -> ORDINALS.get(i).has(word))
                        .findFirst()
                        .orElse(-1)
                + 1;
    }
}
