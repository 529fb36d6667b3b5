package versewind.rules;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * How a rule is broken. The mend is looked for only when it is asked for: that may need many estimates.
 *
 * @param numbers the numbers it rests on
 * @param sentence the finding in one sentence
 * @param mend the search for the smallest change that mends it
 */
record Breach(List<Figure> numbers, String sentence, Supplier<Optional<Mend>> mend) {

    /** A breach that no single change mends. */
    Breach(List<Figure> numbers, String sentence) {
        this(numbers, sentence, Optional::empty);
    }
}
