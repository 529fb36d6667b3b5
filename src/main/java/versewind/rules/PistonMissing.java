package versewind.rules;

import java.util.List;
import java.util.Optional;
import versewind.organ.General;
import versewind.organ.Pistons;
import versewind.plan.Edit;
import versewind.plan.Plan;
import versewind.plan.Verse;

/** A general piston is one that the organ has, on a memory level that it has. Common practice, no source. */
final class PistonMissing implements VerseRule {

    @Override
    public Optional<UnfixedFinding> judge(InHymn hymn, int index) {
        Pistons pistons = hymn.organ().pistons();
        return General.of(hymn.verse(index).piston())
                .filter(general -> !pistons.has(general))
                .map(general -> UnfixedFinding.caution(
                        hymn,
                        index,
                        Rule.PISTON_MISSING,
                        List.of(),
                        sentence(general, pistons),
                        () -> mend(hymn, index)));
    }

    private static String sentence(General general, Pistons pistons) {
        if (pistons.generals() == 0) {
            return "The organ has no general pistons, and so no " + general.piston() + ": all is moved by hand.";
        }
        if (general.number() < 1 || general.number() > pistons.generals()) {
            return "The organ has no piston " + general.piston() + ": its generals are G1 to G" + pistons.generals()
                    + ".";
        }
        return "The organ has no memory level " + general.level() + " for piston " + general.name() + ": it has "
                + pistons.memoryLevels() + ".";
    }

    private static Optional<Mend> mend(InHymn hymn, int index) {
        Verse verse = hymn.verse(index).withPiston("");
        Plan without = new Edit.SetVerse(hymn.index(), index, verse).apply(hymn.plan());
        return PistonsInUse.forVerse(without, hymn.organ(), verse)
                .map(piston -> Mend.onPiston(piston, hymn.place(index), verse));
    }
}
