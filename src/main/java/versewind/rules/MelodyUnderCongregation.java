package versewind.rules;

import java.util.List;
import java.util.Optional;
import versewind.plan.Edit;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.plan.Verse;

/** A melody soloed out is a poor support for a congregation. Common practice, no source. */
final class MelodyUnderCongregation implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        boolean isSoloed = verse.hands().layout() == Layout.MELODY_SOLOED
                && verse.hands().right() != verse.hands().left()
                && Company.of(verse).isCongregation();
        if (!isSoloed) {
            return Optional.empty();
        }
        int manual = hymn.organ().mainDivision();
        Verse inFourParts = verse.withHands(HandsAndFeet.on(Layout.FOUR_PARTS, manual));
        String words = "Play it in four parts on the "
                + hymn.organ().divisions().get(manual).name() + ".";
        return Optional.of(UnfixedFinding.remark(
                hymn,
                index,
                Rule.MELODY_UNDER_CONGREGATION,
                List.of(),
                "A melody soloed out gives a congregation little support.",
                () -> Optional.of(new Mend(words, new Edit.SetVerse(hymn.index(), index, inFourParts)))));
    }
}
