package versewind.screen;

import java.util.List;
import java.util.Optional;
import versewind.plan.Edit;
import versewind.plan.History;
import versewind.plan.Hymn;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.plan.Verses;

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
                new Edit.SetVerses(place.hymn(), place.verse(), Verses.withKind(work.verses(), place.verse(), next)));
        return step.says("Now: " + next.word() + ".");
    }

    /**
     * A new verse is sung and played as the one where we are, with nothing drawn; what is locked throughout is in it.
     */
    static State insertVerse(State state, PlanEdit work, Hymn hymn) {
        Verse blank = Verses.blank(work.instrument(), VerseKind.VERSE)
                .withLocks(work.plan().locks());
        Verse verse = work.verse()
                .filter(Verse::isSung)
                .map(here -> blank.withMode(here.mode())
                        .withSinging(here.singing())
                        .withPeople(here.people())
                        .withHands(here.hands()))
                .orElse(blank);
        int at = work.verse().isPresent() ? work.place().verse() + 1 : 0;
        List<Verse> verses = Verses.inserted(work.verses(), at, verse);
        return PlanChanges.edit(state, work, new Edit.SetVerses(work.place().hymn(), at, verses));
    }

    static State duplicateVerse(State state, PlanEdit work, Verse verse) {
        VersePlace place = work.place();
        List<Verse> verses = Verses.duplicated(work.verses(), place.verse());
        return PlanChanges.edit(state, work, new Edit.SetVerses(place.hymn(), place.verse() + 1, verses));
    }

    static State removeVerse(State state, PlanEdit work, Verse verse) {
        VersePlace place = work.place();
        List<Verse> verses = Verses.removed(work.verses(), place.verse());
        State step = PlanChanges.edit(state, work, new Edit.SetVerses(place.hymn(), place.verse(), verses));
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
        return PlanChanges.edit(state, work, new Edit.SetVerses(place.hymn(), to, verses));
    }

    static State duplicateHymn(State state, PlanEdit work, Hymn hymn) {
        return PlanChanges.edit(state, work, new Edit.InsertHymn(work.place().hymn() + 1, hymn.unanswered()));
    }

    static State removeHymn(State state, PlanEdit work, Hymn hymn) {
        State step =
                PlanChanges.edit(state, work, new Edit.RemoveHymn(work.place().hymn()));
        return step.says("Deleted the hymn \"" + hymn.title() + "\"; u to undo.");
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
                new Edit.SwapHymns(Math.min(from, to)),
                new VersePlace(to, work.place().verse()));
    }

    static State undo(State state, PlanEdit work) {
        return work.history()
                .toUndo()
                .map(edit -> restored(state, work, work.history().undo(), edit, "Undid"))
                .orElseGet(() -> state.says("Nothing to undo."));
    }

    static State redo(State state, PlanEdit work) {
        return work.history()
                .toRedo()
                .map(edit -> restored(state, work, work.history().redo(), edit, "Redid"))
                .orElseGet(() -> state.says("Nothing to redo."));
    }

    private static State restored(State state, PlanEdit work, History history, Edit edit, String sentence) {
        Optional<VersePlace> stays = edit instanceof Edit.SetHeading ? Optional.of(work.place()) : Optional.empty();
        PlanEdit after = work.with(history).at(stays.orElse(edit.place()));
        State step = PlanChanges.keepingDraft(state, work, after);
        String where = stays.isPresent()
                ? "the service"
                : "hymn " + (after.place().hymn() + 1)
                        + after.verse().map(verse -> ", " + verse.label()).orElse("");
        return step.says(sentence + ": " + where + ".");
    }
}
