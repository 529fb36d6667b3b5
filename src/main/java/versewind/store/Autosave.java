package versewind.store;

import java.time.Instant;
import versewind.plan.Plan;
import versewind.schema.KnownOrgan;

/** Work on a plan that was kept beside it before it was saved. */
public sealed interface Autosave {

    /**
     * Work that can be taken up again.
     *
     * @param plan the plan as it was left
     * @param organ the instrument it is made for, and what is known of it
     * @param kept when it was kept
     */
    record Kept(Plan plan, KnownOrgan organ, Instant kept) implements Autosave {}

    /**
     * Work that cannot be read; it stays where it is until it is dropped.
     *
     * @param why what is wrong with it
     */
    record Unreadable(BadFile why) implements Autosave {}
}
