package versewind.store;

import java.util.Optional;
import versewind.plan.ServiceHeading;

/**
 * The outcome of giving a plan another title.
 *
 * @param id what it is called now
 * @param trouble why it has its old title, a whole sentence; blank if it has the new one
 */
public record Renaming(String id, String trouble) {

    /** Gives a plan another title; its file gets the name that goes with it, if it has not that already. */
    static Renaming of(Library library, JsonFolder plans, Bin bin, String id, String title) throws BadFile {
        OpenPlan open = library.openPlan(plans.path(id));
        if (open.draft().isPresent()) {
            return new Renaming(id, "It has unsaved changes. Open it, and save or discard them first.");
        }
        ServiceHeading was = open.plan().heading();
        ServiceHeading heading = was.withTitle(title);
        SaveOutcome outcome = library.savePlan(open.with(open.plan().withHeading(heading)), WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.NotSaved notSaved) {
            return new Renaming(id, notSaved.why());
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            return new Renaming(id, "Another program has just changed its file. Try again.");
        }
        if (Slug.of(title).equals(Optional.of(id))) {
            return new Renaming(id, "");
        }
        String free = plans.freeId(title);
        bin.rename(plans.path(id), plans.path(free));
        return new Renaming(free, "");
    }
}
