package versewind.rules;

import java.util.List;
import java.util.Optional;
import versewind.plan.Edit;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Verse;

/** A general piston holds one registration; for another its memory level has to be changed. Common practice, no source. */
final class PistonTwice implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        if (!PistonsInUse.isGeneral(verse.piston(), hymn.organ())) {
            return Optional.empty();
        }
        return holder(hymn, index)
                .map(holder -> UnfixedFinding.remark(
                        hymn,
                        index,
                        Rule.PISTON_TWICE,
                        List.of(),
                        "Piston " + verse.piston() + " holds something else since " + holder
                                + ": it would have to be on another memory level here.",
                        () -> mend(hymn, index)));
    }

    /** The first verse of the plan that has the piston, if that is set otherwise there. */
    private static Optional<String> holder(InHymn hymn, int index) {
        Verse verse = hymn.verse(index);
        for (int i = 0; i <= hymn.index(); i++) {
            Hymn other = hymn.plan().hymns().get(i);
            for (int v = 0; v < (i < hymn.index() ? other.verses().size() : index); v++) {
                Verse before = other.verses().get(v);
                if (PistonsInUse.isTheSame(before.piston(), verse.piston())) {
                    String where = i == hymn.index() ? "" : (other.number() + " ").stripLeading();
                    return PistonsInUse.isSetTheSame(before, verse)
                            ? Optional.empty()
                            : Optional.of(where + before.label());
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Mend> mend(InHymn hymn, int index) {
        Verse verse = hymn.verse(index).withPiston("");
        Plan without = new Edit.SetVerse(hymn.index(), index, verse).apply(hymn.plan());
        return PistonsInUse.forVerse(without, hymn.organ(), verse)
                .map(piston -> Mend.onPiston(piston, hymn.place(index), verse));
    }
}
