package versewind.advice;

import java.util.Optional;
import versewind.plan.Edit;
import versewind.plan.Plan;
import versewind.plan.Verse;

/** What is drawn otherwise in a verse that others share a general piston with goes on a piston of its own. */
final class Pistoned {

    private Pistoned() {}

    /** A mend, with another piston where it would leave one that sets something else in another verse. */
    static Mend mend(Mend mend, InHymn hymn, int index) {
        Verse before = hymn.verse(index);
        if (!(mend.edit() instanceof Edit.SetVerse set)
                || set.verse() != index
                || !Generals.isGeneral(before.piston(), hymn.organ())
                || Generals.isSetTheSame(set.value(), before)
                || !set.value().piston().equals(before.piston())
                || !isShared(hymn.plan(), before.piston())) {
            return mend;
        }
        Verse without = set.value().withPiston("");
        Edit freed = new Edit.SetVerse(set.hymn(), index, without);
        Optional<String> piston = Generals.forVerse(freed.apply(hymn.plan()), hymn.organ(), without);
        String words = piston.map(free -> " Set it on piston " + free + ".")
                .orElse(" No piston is free for it: move it by hand.");
        return new Mend(
                mend.words() + words, new Edit.SetVerse(set.hymn(), index, without.withPiston(piston.orElse(""))));
    }

    private static boolean isShared(Plan plan, String piston) {
        return plan.hymns().stream()
                        .flatMap(hymn -> hymn.verses().stream())
                        .filter(verse -> Generals.isTheSame(verse.piston(), piston))
                        .count()
                > 1;
    }
}
