package versewind.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;

/** Finds the value that a word in a file or on a command line means. */
final class Keywords {
    private Keywords() {}

    static <T> Optional<T> find(T[] values, Function<T, String> wordOf, String word) {
        return Arrays.stream(values)
                .filter(value -> wordOf.apply(value).equalsIgnoreCase(word.strip()))
                .findFirst();
    }
}
