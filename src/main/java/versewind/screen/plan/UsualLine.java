package versewind.screen.plan;

import java.util.Optional;
import versewind.plan.Verse;
import versewind.schema.KnownOrgan;
import versewind.screen.state.PlanEdit;

/** A verse beside the usual registration, in a few words: "2 dB above your usual". */
public final class UsualLine {

    private UsualLine() {}

    /** Empty where no usual registration applies, or one of them is silent. */
    public static Optional<String> of(PlanEdit work, Verse verse) {
        return KnownOrgan.fromUsual(
                work.organ().experience(),
                work.sound(),
                verse,
                work.plan().heading().people());
    }
}
