package versewind.screen;

import versewind.plan.Edit;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** What a command does with a state. */
@FunctionalInterface
interface Handler {

    State on(State state);

    /** What a command does with the plan that is open. */
    @FunctionalInterface
    interface OnWork {
        State on(State state, PlanEdit work);
    }

    /** What a command does with the verse where we are. */
    @FunctionalInterface
    interface OnVerse {
        State on(State state, PlanEdit work, Verse verse);
    }

    /** A command that needs an open plan. */
    static Handler work(OnWork handler) {
        return state -> state.work()
                .map(work -> handler.on(state, work))
                .orElseGet(() -> state.says("No plan is open. Press o to open one."));
    }

    /** A command that needs a verse. */
    static Handler verse(OnVerse handler) {
        return work((state, work) -> work.verse()
                .map(verse -> handler.on(state, work, verse))
                .orElseGet(() -> state.says(
                        work.hymn().isPresent()
                                ? "This hymn has no verse yet. Press i for one."
                                : "This service has no hymn yet. Press I for one.")));
    }

    /** The state after an edit, seen where the edit says; unsaved work is kept beside the file. */
    static State edit(State state, PlanEdit work, Edit edit) {
        return edit(state, work, edit, edit.place());
    }

    /** The state after an edit, seen at a place. */
    static State edit(State state, PlanEdit work, Edit edit, VersePlace seenAt) {
        PlanEdit after = work.with(work.history().after(edit)).at(seenAt);
        if (after.plan().equals(work.plan())) {
            return state.says("Nothing changes: it is so already.");
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
        return next.wants(after.history().isUnsaved() ? new Effect.KeepDraft(after.plan()) : new Effect.DropDraft());
    }
}
