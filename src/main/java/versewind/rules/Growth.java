package versewind.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import versewind.plan.ChurchYear;
import versewind.plan.Occasion;
import versewind.plan.Singing;

/**
 * A hymn that is sung strongly, or on a festal day, grows toward its end, and its biggest verse is the last. Hymns that end gently are meant
 * to, and differences of less than {@link Practice#WORTH_A_WORD_DB} are none. Common practice, no source.
 */
final class Growth implements HymnRule {

    @Override
    public List<UnfixedFinding> judge(InHymn hymn) {
        List<Integer> verses = hymn.congregationVerses();
        if (verses.size() <= 2 || !isFestal(hymn, verses)) {
            return List.of();
        }
        int last = verses.get(verses.size() - 1);
        List<Integer> before = verses.subList(0, verses.size() - 1);
        int biggest =
                before.stream().max(Comparator.comparingDouble(hymn::organDba)).orElseThrow();
        int softest =
                before.stream().min(Comparator.comparingDouble(hymn::organDba)).orElseThrow();
        if (hymn.organDba(biggest) - hymn.organDba(last) >= Practice.WORTH_A_WORD_DB) {
            return List.of(notLast(hymn, biggest, last));
        }
        return hymn.organDba(last) - hymn.organDba(softest) < Practice.WORTH_A_WORD_DB
                ? List.of(flat(hymn, softest, last))
                : List.of();
    }

    private static boolean isFestal(InHymn hymn, List<Integer> verses) {
        return (isStrong(hymn, verses) || isFestalDay(hymn))
                && hymn.verse(verses.get(verses.size() - 1)).singing() != Singing.GENTLE;
    }

    private static boolean isStrong(InHymn hymn, List<Integer> verses) {
        return verses.stream().anyMatch(verse -> hymn.verse(verse).singing().compareTo(Singing.STRONG) >= 0);
    }

    private static boolean isFestalDay(InHymn hymn) {
        return hymn.plan()
                .heading()
                .date()
                .flatMap(ChurchYear::day)
                .filter(day -> day.occasion() == Occasion.FESTAL)
                .isPresent();
    }

    private static UnfixedFinding notLast(InHymn hymn, int biggest, int last) {
        return UnfixedFinding.remark(
                hymn,
                last,
                Rule.BIGGEST_NOT_LAST,
                List.of(
                        FindingNumbers.db("biggest", hymn.organDba(biggest)),
                        FindingNumbers.db("last", hymn.organDba(last))),
                hymn.verse(biggest).label() + " is bigger than this last verse by "
                        + FindingNumbers.about(hymn.organDba(biggest) - hymn.organDba(last)) + ".",
                Optional::empty);
    }

    private static UnfixedFinding flat(InHymn hymn, int softest, int last) {
        return UnfixedFinding.remark(
                hymn,
                last,
                Rule.NO_GROWTH,
                List.of(
                        FindingNumbers.db("softest", hymn.organDba(softest)),
                        FindingNumbers.db("last", hymn.organDba(last))),
                (isStrong(hymn, hymn.congregationVerses())
                                ? "The hymn is sung strongly"
                                : "The hymn is of a festal day")
                        + ", and does not grow: its last verse is about as loud as its softest.",
                Optional::empty);
    }
}
