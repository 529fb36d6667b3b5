package versewind.screen.plan;

import java.util.List;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import versewind.organ.Division;
import versewind.plan.Hymn;
import versewind.plan.Locks;
import versewind.plan.Locks.Kept;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.Verses;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Question;
import versewind.screen.state.State;
import versewind.sheet.Wording;

/** Locking stops in and out: what a proposal has to draw and what it must not. */
final class LockCommands {
    private LockCommands() {}

    /** What is done with the stop under the cursor, by its index in the instrument. */
    private static State onStop(State state, PlanEdit work, IntFunction<State> action) {
        List<Item> items = StopGridLayout.items(work.instrument());
        return work.item() < items.size() && items.get(work.item()) instanceof Item.StopItem stop
                ? action.apply(stop.stop())
                : state.says("Only stops can be locked.");
    }

    /** From free to locked as it is, drawn or not, to the other way, to free. */
    static State lock(State state, PlanEdit work, Verse verse) {
        return onStop(state, work, stop -> lock(state, work, verse, stop));
    }

    private static State lock(State state, PlanEdit work, Verse verse, int stop) {
        Locks next = next(verse.locks(), stop, verse.registration().stops().contains(stop));
        return PlanChanges.change(state, work, verse.withLocks(next)).says(words(work, next, stop) + ".");
    }

    private static Locks next(Locks locks, int stop, boolean isDrawn) {
        boolean isFree = !locks.always().contains(stop) && !locks.never().contains(stop);
        boolean isAsItIs = (isDrawn ? locks.always() : locks.never()).contains(stop);
        if (!isFree && !isAsItIs) {
            return locks.without(stop);
        }
        return isFree == isDrawn ? locks.withAlways(stop) : locks.withNever(stop);
    }

    /** As it is locked here it is locked in all verses. */
    static State lockThroughout(State state, PlanEdit work, Verse verse) {
        return onStop(state, work, stop -> lockThroughout(state, work, verse, stop));
    }

    private static State lockThroughout(State state, PlanEdit work, Verse verse, int stop) {
        Locks here = verse.locks();
        UnaryOperator<Locks> same = locks -> here.always().contains(stop)
                ? locks.withAlways(stop)
                : here.never().contains(stop) ? locks.withNever(stop) : locks.without(stop);
        Plan plan = work.plan();
        List<Hymn> hymns = plan.hymns().stream()
                .map(hymn -> hymn.withVerses(hymn.verses().stream()
                        .map(each -> each.withLocks(same.apply(each.locks())))
                        .toList()))
                .toList();
        if (hymns.equals(plan.hymns())) {
            return state.says(
                    "It is the same in every verse already. Lock it here with v first, then everywhere with V.");
        }
        int verses = hymns.stream().mapToInt(hymn -> hymn.verses().size()).sum();
        String said = words(work, here, stop) + ", in every verse of the service.";
        return Question.before(
                verses,
                state,
                "Lock it the same way in all "
                        + Verses.counted(hymns.stream().flatMap(hymn -> hymn.verses().stream()))
                        + " of the service?",
                closed -> PlanChanges.edit(closed, work, plan.withHymns(hymns), work.place())
                        .says(said));
    }

    /** Proposals keep hands and feet, the swell boxes, both, or neither as the verse has them. */
    static State keepPlaying(State state, PlanEdit work, Verse verse) {
        Kept next =
                switch (verse.locks().kept()) {
                    case NOTHING -> Kept.HANDS_AND_FEET;
                    case HANDS_AND_FEET ->
                        work.instrument().divisions().stream().anyMatch(Division::isEnclosed)
                                ? Kept.HANDS_FEET_AND_BOXES
                                : Kept.NOTHING;
                    case HANDS_FEET_AND_BOXES -> Kept.BOXES;
                    case BOXES -> Kept.NOTHING;
                };
        String playing =
                verse.locks().keeping(next).keepsHands() ? ": " + Wording.hands(work.instrument(), verse.hands()) : "";
        return PlanChanges.change(state, work, verse.withLocks(verse.locks().keeping(next)))
                .says(
                        next == Kept.NOTHING
                                ? "Proposals may change hands, feet and swell boxes in " + verse.label() + "."
                                : "Proposals keep " + next.word() + " in " + verse.label() + playing + ".");
    }

    private static String words(PlanEdit work, Locks locks, int stop) {
        String name = Item.fullName(work.instrument(), new Item.StopItem(stop));
        if (locks.always().contains(stop)) {
            return "Proposals always draw " + name;
        }
        return locks.never().contains(stop) ? "Proposals never draw " + name : "Proposals may draw " + name + " or not";
    }
}
