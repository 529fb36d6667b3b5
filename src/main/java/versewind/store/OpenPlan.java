package versewind.store;

import java.nio.file.Path;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.schema.KnownOrgan;

/**
 * A plan as it was read from its file, or is going to be written to it.
 *
 * @param plan the plan
 * @param organ the instrument it is made for, and what is known of it
 * @param path its file
 * @param fingerprint what the file held
 * @param draft work that was kept beside it and is not in the file, if there is any
 */
public record OpenPlan(Plan plan, KnownOrgan organ, Path path, Fingerprint fingerprint, Optional<Autosave> draft) {

    /** The instrument it is made for. */
    public Instrument instrument() {
        return organ.instrument();
    }

    /** With another plan for the same instrument, to be written to the same file. */
    public OpenPlan with(Plan other) {
        return new OpenPlan(other, organ, path, fingerprint, draft);
    }

    /** With what is now known of the organ. */
    public OpenPlan with(KnownOrgan other) {
        return new OpenPlan(plan, other, path, fingerprint, draft);
    }

    /** After it was saved: the file now holds this plan, and no work is left over. */
    public OpenPlan after(SaveOutcome.Saved saved) {
        return new OpenPlan(plan, organ, saved.path(), saved.fingerprint(), Optional.empty());
    }
}
