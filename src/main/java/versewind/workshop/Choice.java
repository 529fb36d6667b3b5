package versewind.workshop;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A word out of some. */
final class Choice {
    private Choice() {}

    /** The value of a word, or of the only word that begins like what is written. */
    static <T> Optional<T> of(String written, List<T> values, Function<T, String> word) {
        String plain = written.strip();
        Optional<T> whole = values.stream()
                .filter(each -> word.apply(each).equalsIgnoreCase(plain))
                .findFirst();
        if (whole.isPresent() || plain.isEmpty()) {
            return whole;
        }
        List<T> begun = values.stream()
                .filter(each -> word.apply(each).regionMatches(true, 0, plain, 0, plain.length()))
                .toList();
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }
}
