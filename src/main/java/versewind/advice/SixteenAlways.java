package versewind.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import versewind.plan.Edit;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Verse;

/** A heavy 16 ft pedal in every verse of a long hymn tires everyone. Common practice, no source. */
final class SixteenAlways implements HymnRule {

    @Override
    public List<Found> judge(InHymn hymn) {
        List<Integer> verses = hymn.textVerses();
        boolean isAlways = verses.size() >= Practice.LONG_HYMN_VERSES
                && verses.stream().allMatch(verse -> hymn.pedal(verse)
                        .filter(pedal -> pedal.has(Pitch.FEET_16))
                        .isPresent());
        if (!isAlways) {
            return List.of();
        }
        int lightest = verses.subList(1, verses.size() - 1).stream()
                .min(Comparator.comparingDouble(hymn::organDba))
                .orElseThrow();
        Verse verse = hymn.verse(lightest);
        Verse relieved = verse.withHands(verse.hands().withLayout(Layout.MANUALS_ONLY));
        return List.of(Found.remark(
                hymn,
                lightest,
                Rule.SIXTEEN_ALWAYS,
                List.of(Figures.count("verses", verses.size())),
                "All " + verses.size() + " verses have 16 ft in the pedal; this one could do without.",
                () -> Optional.of(new Mend(
                        "Play it with the hands only.", new Edit.SetVerse(hymn.index(), lightest, relieved)))));
    }
}
