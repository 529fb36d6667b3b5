package versewind.screen;

import versewind.plan.Edit;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** The plan that is open after a change of it. */
final class PlanChanges {

    private PlanChanges() {}

    /** The state after an edit, seen where the edit says; unsaved work is kept beside the file. */
    static State edit(State state, PlanEdit work, Edit edit) {
        return edit(state, work, edit, edit.place());
    }

    /** The state after an edit, seen at a place. */
    static State edit(State state, PlanEdit work, Edit edit, VersePlace seenAt) {
        PlanEdit after = work.with(work.history().after(edit)).at(seenAt);
        if (after.plan().equals(work.plan())) {
            return state.says("No change: it is the same already.");
        }
        return keepingDraft(state, work, after);
    }

    /** The state after the verse where we are has become another. */
    static State change(State state, PlanEdit work, Verse verse) {
        VersePlace place = work.place();
        return edit(state, work, new Edit.SetVerse(place.hymn(), place.verse(), verse));
    }

    /** The state with other work; if the plan is another, it is kept beside its file until it is saved. */
    static State keepingDraft(State state, PlanEdit before, PlanEdit after) {
        State next = state.with(after);
        if (after.plan().equals(before.plan())) {
            return next;
        }
        return next.wants(
                after.history().isUnsaved() ? effects -> effects.keepDraft(after.plan()) : Effects::dropDraft);
    }
}
