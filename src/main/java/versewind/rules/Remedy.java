package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.Registration;
import versewind.plan.Verse;
import versewind.sound.Verdict;

/**
 * What makes a verse that fails hold again: the {@link SmallestChange} where one movement is enough; else steps of the
 * {@link DynamicSteps}, in their order, until it holds.
 */
final class Remedy {

    private static final int MOST_STEPS = 5;

    private Remedy() {}

    /** The change, in the way that the verdict asks for: to all well where it holds only just, else to where it holds; empty where nothing within the steps is enough. */
    static Optional<Mend> of(InHymn hymn, int index, Verdict.Way way) {
        return SmallestChange.to(hymn, index, way).or(() -> steps(hymn, index, way));
    }

    private static Optional<Mend> steps(InHymn hymn, int index, Verdict.Way way) {
        Verse verse = hymn.verse(index);
        boolean isOnlyJust = !hymn.estimate(index).margin().verdict().wantsAttention();
        List<Registration> drawn = new ArrayList<>(List.of(verse.registration()));
        for (DynamicSteps.Rung rung : DynamicSteps.steps(
                hymn.sound(), verse, hymn.plan().heading().people(), hymn.hymn().tempo(), way, MOST_STEPS)) {
            drawn.add(rung.registration());
            Verdict verdict = rung.estimate().margin().verdict();
            if (isOnlyJust ? verdict.way() == Verdict.Way.NONE : !verdict.wantsAttention()) {
                return Optional.of(Mend.drawing(hymn.organ(), hymn.place(index), verse, drawn));
            }
        }
        return Optional.empty();
    }
}
