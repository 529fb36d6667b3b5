package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tremulants in a line: "Tremulant", "Tremblant doux", "Tremulants to Swell and Choir". */
final class Tremulants {

    private static final int LONGEST = 8;

    private Tremulants() {}

    /** True if a text names a tremulant. */
    static boolean isOne(String text) {
        List<String> words = Spelling.words(text);
        return words.size() <= LONGEST && WordList.of("tremulant").in(words);
    }

    /** The divisions that are named with it; one empty where none is. */
    static List<Optional<DivisionWord>> divisions(String text, String language) {
        String rest = WordList.of("tremulant").without(Spelling.words(text)).stream()
                .map(word -> word.matches("[iv]{1,3}") ? word.toUpperCase(Locale.ROOT) : word)
                .collect(Collectors.joining(" "));
        List<Optional<DivisionWord>> named = new ArrayList<>();
        CouplerWords.of(rest, language).divisions().forEach(each -> named.add(Optional.of(each.word())));
        return named.isEmpty() ? List.of(Optional.empty()) : List.copyOf(named);
    }
}
