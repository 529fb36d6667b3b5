package versewind.rules;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import versewind.plan.VersePlace;

/**
 * A finding whose mend is not looked for yet: that may need many estimates.
 *
 * @param severity how much it matters
 * @param rule what it is about
 * @param place the verse
 * @param numbers what it rests on
 * @param sentence what is found
 * @param mend looks for the smallest change that mends it
 */
record UnfixedFinding(
        Severity severity,
        Rule rule,
        VersePlace place,
        List<Figure> numbers,
        String sentence,
        Supplier<Optional<Mend>> mend) {

    static UnfixedFinding caution(
            InHymn hymn, int verse, Rule rule, List<Figure> numbers, String sentence, Supplier<Optional<Mend>> mend) {
        return new UnfixedFinding(Severity.CAUTION, rule, hymn.place(verse), numbers, sentence, mend);
    }

    static UnfixedFinding remark(
            InHymn hymn, int verse, Rule rule, List<Figure> numbers, String sentence, Supplier<Optional<Mend>> mend) {
        return new UnfixedFinding(Severity.REMARK, rule, hymn.place(verse), numbers, sentence, mend);
    }

    /** As it is told. */
    Finding with(Optional<Mend> change, Optional<String> silence) {
        return new Finding(severity, rule, place, numbers, sentence, change, silence);
    }
}
