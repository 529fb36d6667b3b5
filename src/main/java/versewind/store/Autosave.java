package versewind.store;

import java.nio.file.Path;
import java.time.Instant;
import versewind.plan.Plan;
import versewind.plan.Undo;
import versewind.schema.KnownOrgan;

/** Work on a plan that was kept beside it before it was saved, by a process that has ended. */
public sealed interface Autosave {

    /** The file in which it is kept. */
    Path file();

    /**
     * Work that can be taken up again.
     *
     * @param file where it is kept
     * @param history the plan as it was left, with its steps
     * @param organ the instrument it is made for, and what is known of it
     * @param by who did it
     * @param kept when it was kept
     * @param base what the plan's file held when the work began
     */
    record Kept(Path file, Undo<Plan> history, KnownOrgan organ, Presence by, Instant kept, Fingerprint base)
            implements Autosave {

        /** The plan as it was left. */
        public Plan plan() {
            return history.now();
        }
    }

    /**
     * Work that cannot be read; it stays where it is until it is discarded.
     *
     * @param file where it is kept
     * @param why what is wrong with it
     */
    record Unreadable(Path file, BadFile why) implements Autosave {}
}
