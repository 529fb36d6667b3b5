package versewind.rules;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * How a rule is broken. What may mend it is looked for only when it is asked for: that may need many estimates.
 *
 * @param numbers the numbers it rests on
 * @param sentence the finding in one sentence
 * @param mends what may mend it, the likeliest first; each is tried before it is offered
 */
record Breach(List<Figure> numbers, String sentence, Supplier<Stream<Mend>> mends) {

    /** A breach that no single change mends. */
    Breach(List<Figure> numbers, String sentence) {
        this(numbers, sentence, Stream::empty);
    }
}
