package versewind.stoplist;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What was made of the texts of one list, so that a text which is asked for again is not read again. It holds so many
 * and no more.
 *
 * @param <T> what is made of a text
 */
final class Memory<T> {

    private static final int MOST = 20_000;

    private final Map<String, T> kept = new HashMap<>();
    private final int most;

    private Memory(int most) {
        this.most = most;
    }

    /** For one list, which one thread reads. */
    static <T> Memory<T> ofList() {
        return new Memory<>(MOST);
    }

    /** Keeps nothing. */
    static <T> Memory<T> none() {
        return new Memory<>(0);
    }

    /** What is kept of a text, or else what is made of it. */
    T of(String text, Function<String, T> reading) {
        T known = kept.get(text);
        if (known != null) {
            return known;
        }
        T made = reading.apply(text);
        if (kept.size() < most) {
            kept.put(text, made);
        }
        return made;
    }
}
