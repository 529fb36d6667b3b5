package versewind.plan;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Looks up enum constants by the keyword used in files and on the command line, ignoring case. */
public final class Keywords {

    /** What some were called before, and may still be called. */
    private static final Map<String, String> FORMER = Map.of("solo voice", "soloist");

    private Keywords() {}

    /** Today's word for one that is written. */
    public static String today(String word) {
        return FORMER.getOrDefault(word.strip().toLowerCase(Locale.ROOT), word);
    }

    static <T> Optional<T> find(T[] values, Function<T, String> wordOf, String word) {
        return Arrays.stream(values)
                .filter(value ->
                        wordOf.apply(value).equalsIgnoreCase(today(word).strip()))
                .findFirst();
    }
}
