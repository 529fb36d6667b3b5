package versewind.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;

/** Looks up enum constants by the keyword used in files and on the command line, ignoring case. */
final class Keywords {
    private Keywords() {}

    static <T> Optional<T> find(T[] values, Function<T, String> wordOf, String word) {
        return Arrays.stream(values)
                .filter(value -> wordOf.apply(value).equalsIgnoreCase(word.strip()))
                .findFirst();
    }
}
