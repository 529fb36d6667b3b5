package versewind.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.plan.Edit;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Verse;
import versewind.sound.Verdict;

/** A heavy 16 ft pedal in every verse of a long hymn tires everyone, where one leads without it too. Common practice, no source. */
final class SixteenAlways implements HymnRule {

    @Override
    public List<UnfixedFinding> judge(InHymn hymn) {
        List<Integer> verses = hymn.textVerses();
        boolean isAlways = verses.size() >= Practice.LONG_HYMN_VERSES
                && verses.stream().allMatch(verse -> hymn.pedal(verse)
                        .filter(pedal -> pedal.has(Pitch.FEET_16))
                        .isPresent());
        if (!isAlways) {
            return List.of();
        }
        OptionalInt found = verses.subList(1, verses.size() - 1).stream()
                .filter(verse -> leads(hymn, relieved(hymn.verse(verse))))
                .min(Comparator.comparingDouble(hymn::organDba))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
        if (found.isEmpty()) {
            return List.of();
        }
        int lightest = found.getAsInt();
        Verse relieved = relieved(hymn.verse(lightest));
        return List.of(UnfixedFinding.remark(
                hymn,
                lightest,
                Rule.SIXTEEN_ALWAYS,
                List.of(FindingNumbers.count("verses", verses.size())),
                "All " + verses.size() + " verses have 16 ft in the pedal; this one could do without.",
                () -> Optional.of(new Mend(
                        "Play it with the hands only.", new Edit.SetVerse(hymn.index(), lightest, relieved)))));
    }

    private static Verse relieved(Verse verse) {
        return verse.withHands(verse.hands().withLayout(Layout.MANUALS_ONLY));
    }

    /** A verse that leads no more with the hands alone cannot do without. */
    private static boolean leads(InHymn hymn, Verse relieved) {
        return hymn.estimate(relieved).margin().verdict().way() == Verdict.Way.NONE;
    }
}
