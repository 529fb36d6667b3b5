package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.organ.Registration;
import versewind.plan.Verse;
import versewind.sound.Margin;
import versewind.sound.Verdict;

/**
 * The change that makes a verse that fails hold again: the {@link SmallestChange} where one movement is enough; else
 * steps of the {@link DynamicSteps}, in their order, until it holds.
 */
final class Remedy {

    private static final int MOST_STEPS = 5;

    private Remedy() {}

    /**
     * The change in the way that a verdict asks for; for a soloed melody a softer accompaniment if that helps, else a
     * stronger melody. Empty where no change within the steps is enough.
     */
    static Optional<Mend> of(InHymn hymn, int index, Verdict verdict) {
        if (verdict.kind() == Margin.Kind.SOLO_LINE) {
            return SmallestChange.to(hymn, index, Verdict.Way.SOFTER)
                    .or(() -> SmallestChange.to(hymn, index, Verdict.Way.STRONGER));
        }
        return SmallestChange.to(hymn, index, verdict.way()).or(() -> steps(hymn, index, verdict.way()));
    }

    private static Optional<Mend> steps(InHymn hymn, int index, Verdict.Way way) {
        Verse verse = hymn.verse(index);
        boolean isOnlyJust = !hymn.estimate(index).margin().verdict().wantsAttention();
        List<Registration> drawn = new ArrayList<>(List.of(verse.registration()));
        for (DynamicStep rung : DynamicSteps.steps(
                hymn.sound(), verse, hymn.plan().heading().people(), hymn.hymn().tempo(), way, MOST_STEPS)) {
            drawn.add(rung.registration());
            Verdict verdict = rung.estimate().margin().verdict();
            if (isOnlyJust ? verdict.way() == Verdict.Way.NONE : !verdict.wantsAttention()) {
                return Optional.of(Mend.drawing(hymn, index, drawn));
            }
        }
        return Optional.empty();
    }
}
