package versewind.screen;

import java.util.List;
import versewind.plan.ServiceHeading;

/** Saving, opening, making plans, asking what is to become of unsaved work, leaving. */
final class FileCommands {

    private FileCommands() {}

    static State save(State state, PlanEdit work) {
        if (!work.history().isUnsaved()) {
            return state.says("Nothing to save.");
        }
        return state.wants(effects -> effects.save(work.plan(), List.of()));
    }

    /** Saves the plan under another title, in a file of its own. */
    static State saveUnder(State state, PlanEdit work, String title) {
        ServiceHeading heading = work.plan().heading().withTitle(title);
        PlanEdit after = work.with(work.history().to(work.plan().withHeading(heading)));
        return state.with(after).wants(effects -> effects.saveUnder(after.plan()));
    }
}
