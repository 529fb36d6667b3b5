package versewind.screen.plan;

import java.util.List;
import java.util.Optional;
import versewind.calibration.Experience;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.Undo;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.screen.state.PlanChanges;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Question;
import versewind.screen.state.State;

/** Putting in, taking out and moving verses and hymns; undoing and doing again. */
final class ArrangeCommands {
    private ArrangeCommands() {}

    static State nextKind(State state, PlanEdit work, Verse verse) {
        VerseKind[] kinds = VerseKind.values();
        VerseKind next = kinds[(verse.kind().ordinal() + 1) % kinds.length];
        VersePlace place = work.place();
        State step = PlanChanges.edit(
                state,
                work,
                work.plan().withVerses(place.hymn(), Verses.withKind(work.verses(), place.verse(), next)),
                place);
        return step.says("Now: " + next.word() + ".");
    }

    /** From a verse that is always sung to one that may be left out, and back. */
    static State turnOptional(State state, PlanEdit work, Verse verse) {
        Verse after = verse.withOptional(!verse.isOptional());
        return PlanChanges.change(state, work, after)
                .says(verse.label() + (after.isOptional() ? " may be left out." : " is always sung."));
    }

    /**
     * A new verse is sung and played as the one where we are, with nothing drawn; what is locked throughout is in it.
     */
    static State insertVerse(State state, PlanEdit work, Hymn hymn) {
        Verse blank = Verses.blank(work.instrument(), VerseKind.VERSE)
                .withLocks(work.plan().locks());
        Verse verse = work.verse()
                .filter(Verse::isSung)
                .map(here -> blank.withSungBy(here.sungBy())
                        .withSinging(here.singing())
                        .withPeople(here.people())
                        .withHands(here.hands()))
                .orElse(blank);
        int at = work.verse().isPresent() ? work.place().verse() + 1 : 0;
        List<Verse> verses = Verses.inserted(work.verses(), at, verse);
        return PlanChanges.told(
                state, withVerses(state, work, verses, at), verses.get(at).label() + " added.");
    }

    static State duplicateVerse(State state, PlanEdit work, Verse verse) {
        VersePlace place = work.place();
        List<Verse> verses = Verses.duplicated(work.verses(), place.verse());
        return PlanChanges.told(
                state, withVerses(state, work, verses, place.verse() + 1), verse.label() + " duplicated.");
    }

    static State removeVerse(State state, PlanEdit work, Verse verse) {
        VersePlace place = work.place();
        List<Verse> verses = Verses.removed(work.verses(), place.verse());
        State step = withVerses(state, work, verses, place.verse());
        return step.says("Deleted " + verse.label() + "; u to undo.");
    }

    static State moveVerse(State state, PlanEdit work, int step) {
        VersePlace place = work.place();
        int to = place.verse() + step;
        if (to < 0 || to >= work.verses().size()) {
            return state.says(
                    step < 0 ? "This is the first verse of the hymn." : "This is the last verse of the hymn.");
        }
        List<Verse> verses = Verses.swapped(work.verses(), Math.min(to, place.verse()));
        return withVerses(state, work, verses, to);
    }

    static State duplicateHymn(State state, PlanEdit work, Hymn hymn) {
        int at = work.place().hymn() + 1;
        return PlanChanges.edit(state, work, work.plan().inserting(at, hymn.unanswered()), new VersePlace(at, 0));
    }

    static State removeHymn(State state, PlanEdit work, Hymn hymn) {
        Plan plan = work.plan().removing(work.place().hymn());
        int verses = hymn.verses().size();
        return Question.before(
                verses,
                state,
                "Delete the hymn \"" + hymn.title() + "\" with its " + verses + " verses?",
                closed -> PlanChanges.edit(closed, work, plan, work.place())
                        .says("Deleted the hymn \"" + hymn.title() + "\"; u to undo."));
    }

    static State moveHymn(State state, PlanEdit work, int step) {
        int from = work.place().hymn();
        int to = from + step;
        if (to < 0 || to >= work.plan().hymns().size()) {
            return state.says(step < 0 ? "This is the first hymn." : "This is the last hymn.");
        }
        return PlanChanges.edit(
                state,
                work,
                work.plan().swapping(Math.min(from, to)),
                new VersePlace(to, work.place().verse()));
    }

    private static State withVerses(State state, PlanEdit work, List<Verse> verses, int seenAt) {
        int hymn = work.place().hymn();
        return PlanChanges.edit(state, work, work.plan().withVerses(hymn, verses), new VersePlace(hymn, seenAt));
    }

    static State undo(State state, PlanEdit work) {
        Optional<Experience> known = work.beforeLearning();
        if (known.isPresent()) {
            return state.wants(effects -> effects.keepExperience(known.get(), Optional.empty()));
        }
        return work.history()
                .before()
                .map(before -> restored(
                        state,
                        work,
                        work.history().undo(),
                        "Undid: "
                                + PlanDifference.between(before, work.plan(), work.instrument())
                                        .words()))
                .orElseGet(() -> state.says("Nothing to undo."));
    }

    static State redo(State state, PlanEdit work) {
        return work.history()
                .after()
                .map(after -> restored(
                        state,
                        work,
                        work.history().redo(),
                        "Redid: "
                                + PlanDifference.between(work.plan(), after, work.instrument())
                                        .words()))
                .orElseGet(() -> state.says("Nothing to redo."));
    }

    private static State restored(State state, PlanEdit work, Undo<Plan> history, String sentence) {
        VersePlace place = PlanDifference.between(work.plan(), history.now(), work.instrument())
                .place()
                .orElse(work.place());
        return PlanChanges.keepingDraft(state, work, work.with(history).at(place))
                .says(sentence + ".");
    }
}
