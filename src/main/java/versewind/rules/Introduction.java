package versewind.rules;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.plan.Edit;
import versewind.plan.Mode;
import versewind.plan.Verse;
import versewind.plan.VerseKind;

/**
 * An introduction is no louder than the verse it introduces, and of its world: not so soft that the verse comes as a
 * shock. Whoever sings the verse counts with it. A melody soloed out may be softer than a playover. Common practice, no source.
 */
final class Introduction implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int index) {
        OptionalInt next = next(hymn, index);
        boolean isCompared = hymn.verse(index).kind() == VerseKind.INTRODUCTION
                && next.isPresent()
                && !hymn.estimate(index).isSilent()
                && !hymn.estimate(next.getAsInt()).isSilent();
        if (!isCompared) {
            return Optional.empty();
        }
        double louderDb = hymn.organDba(index) - hymn.soundingDba(next.getAsInt());
        if (louderDb >= Practice.INTRODUCTION_LOUDER_DB) {
            return Optional.of(louder(hymn, index, next.getAsInt(), louderDb));
        }
        double softerDb = hymn.organDba(next.getAsInt()) - hymn.organDba(index);
        return softerDb > softestDb(hymn.verse(index))
                ? Optional.of(softer(hymn, index, next.getAsInt(), softerDb))
                : Optional.empty();
    }

    private static double softestDb(Verse introduction) {
        return introduction.mode() == Mode.MELODY_SOLOED
                ? Practice.SOLOED_INTRODUCTION_SOFTER_DB
                : Practice.INTRODUCTION_SOFTER_DB;
    }

    private static OptionalInt next(InHymn hymn, int index) {
        return IntStream.range(index + 1, hymn.verses().size())
                .filter(i -> hymn.verse(i).isSung())
                .findFirst();
    }

    private static UnfixedFinding louder(InHymn hymn, int index, int next, double louderDb) {
        return UnfixedFinding.caution(
                hymn,
                index,
                Rule.INTRODUCTION_LOUDER,
                numbers(hymn, index, next),
                "The introduction is " + FindingNumbers.about(louderDb) + " louder than "
                        + hymn.verse(next).label() + ", which it introduces.",
                () -> asNext(hymn, index, next));
    }

    private static UnfixedFinding softer(InHymn hymn, int index, int next, double softerDb) {
        return UnfixedFinding.remark(
                hymn,
                index,
                Rule.INTRODUCTION_ELSEWHERE,
                numbers(hymn, index, next),
                "The introduction is " + FindingNumbers.about(softerDb) + " softer than "
                        + hymn.verse(next).label() + ": it comes from another world.",
                () -> asNext(hymn, index, next));
    }

    private static List<Figure> numbers(InHymn hymn, int index, int next) {
        return List.of(
                FindingNumbers.db("introduction", hymn.organDba(index)),
                FindingNumbers.db("verse", hymn.soundingDba(next)));
    }

    /** Played as the verse is. */
    private static Optional<Mend> asNext(InHymn hymn, int index, int next) {
        Verse verse = hymn.verse(next);
        Verse same = hymn.verse(index)
                .withMode(verse.mode())
                .withRegistration(verse.registration())
                .withHands(verse.hands())
                .withPiston(verse.piston());
        String words = "Play it on what " + verse.label() + " has.";
        return Optional.of(new Mend(words, new Edit.SetVerse(hymn.index(), index, same)));
    }
}
