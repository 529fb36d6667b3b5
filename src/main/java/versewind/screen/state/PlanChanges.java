package versewind.screen.state;

import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;

/** The plan that is open after a change of it. */
public final class PlanChanges {

    /** Said where a plan that is only looked at would be edited. */
    public static final String ONLY_LOOKING =
            "You are only looking at this plan. To edit it, press o and open it again.";

    private PlanChanges() {}

    /** The state with another plan, seen at a place; unsaved work is kept beside the file. */
    public static State edit(State state, PlanEdit work, Plan plan, VersePlace seenAt) {
        PlanEdit after = work.with(work.history().to(plan)).at(seenAt);
        if (after.plan().equals(work.plan())) {
            return state.says("No change: it is the same already.");
        }
        return keepingDraft(state, work, after);
    }

    /** The state after the verse where we are has become another. */
    public static State change(State state, PlanEdit work, Verse verse) {
        return edit(state, work, work.plan().withVerse(work.place(), verse), work.place());
    }

    /** The state after a change, with what was done; where nothing could be, that is said. */
    public static State told(State before, State after, String sentence) {
        return after.work().equals(before.work()) ? after : after.says(sentence);
    }

    /** The state with other work; if the plan is another, it is kept beside its file until it is saved. */
    public static State keepingDraft(State state, PlanEdit before, PlanEdit after) {
        State next = state.with(after);
        if (after.plan().equals(before.plan())) {
            return next;
        }
        if (before.access() == PlanEdit.Access.LOOKED_AT) {
            return state.says(ONLY_LOOKING);
        }
        return next.wants(
                after.history().isUnsaved() ? effects -> effects.keepDraft(after.history()) : Effects::dropDraft);
    }
}
