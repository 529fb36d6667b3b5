package versewind.rules;

import java.util.List;
import java.util.Optional;
import versewind.plan.VersePlace;

/**
 * What a colleague would say of a verse.
 *
 * @param severity how much it matters
 * @param rule what it is about
 * @param place the verse
 * @param numbers what it rests on
 * @param sentence what is found, in one plain sentence
 * @param mend the smallest change that mends it, if there is one and it was looked for
 * @param silence why it is not to be said again; empty where it is to be said
 */
public record Finding(
        Severity severity,
        Rule rule,
        VersePlace place,
        List<Figure> numbers,
        String sentence,
        Optional<Mend> mend,
        Optional<String> silence) {

    public Finding {
        numbers = List.copyOf(numbers);
    }

    Finding with(Optional<Mend> other) {
        return new Finding(severity, rule, place, numbers, sentence, other, silence);
    }

    /** Whether it is a caution that was not silenced. */
    public boolean isStandingCaution() {
        return severity == Severity.CAUTION && !isSilenced();
    }

    /** Whether it was silenced for its verse. */
    public boolean isSilenced() {
        return silence.isPresent();
    }
}
