package versewind.rules;

import versewind.organ.Instrument;
import versewind.plan.Edit;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** What is drawn otherwise in a verse that others share a general piston with goes on a piston of its own. */
public final class Pistoned {

    private Pistoned() {}

    /**
     * A verse that is drawn otherwise than the plan has it, on a piston that may set it: its own where no other verse has it,
     * else one that sets just this, or the first that is free. What was moved by hand is moved by hand.
     *
     * @param plan with the verse as it was
     * @param place of the verse
     * @param drawn the verse as it is drawn now
     * @param organ the instrument
     */
    public static Verse redrawn(Plan plan, VersePlace place, Verse drawn, Instrument organ) {
        Verse before = plan.hymns().get(place.hymn()).verses().get(place.verse());
        if (PistonsInUse.isSetTheSame(drawn, before)) {
            return drawn.withPiston(before.piston());
        }
        Verse without = drawn.withPiston("");
        if (!PistonsInUse.isGeneral(before.piston(), organ)) {
            return without;
        }
        if (!isShared(plan, before.piston())) {
            return drawn.withPiston(before.piston());
        }
        Edit freed = new Edit.SetVerse(place.hymn(), place.verse(), without);
        return without.withPiston(
                PistonsInUse.forVerse(freed.apply(plan), organ, without).orElse(""));
    }

    /** A mend, with another piston where it would leave one that sets something else in another verse. */
    static Mend mend(Mend mend, InHymn hymn, int index) {
        Verse before = hymn.verse(index);
        if (!(mend.edit() instanceof Edit.SetVerse set)
                || set.verse() != index
                || !set.value().piston().equals(before.piston())) {
            return mend;
        }
        Verse after = redrawn(hymn.plan(), hymn.place(index), set.value(), hymn.organ());
        if (after.piston().equals(before.piston()) || !PistonsInUse.isGeneral(before.piston(), hymn.organ())) {
            return mend;
        }
        String words = after.piston().isEmpty()
                ? " No piston is free for it: move it by hand."
                : " Set it on piston " + after.piston() + ".";
        return new Mend(mend.words() + words, new Edit.SetVerse(set.hymn(), index, after));
    }

    private static boolean isShared(Plan plan, String piston) {
        return plan.hymns().stream()
                        .flatMap(hymn -> hymn.verses().stream())
                        .filter(verse -> PistonsInUse.isTheSame(verse.piston(), piston))
                        .count()
                > 1;
    }
}
