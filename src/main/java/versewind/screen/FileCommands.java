package versewind.screen;

import java.util.List;
import java.util.Optional;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Undo;
import versewind.plan.VersePlace;

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

    /** Does something that closes the plan, after asking what is to become of unsaved work. */
    static State afterAsking(State state, Effect then) {
        State asking = state.top() instanceof Question ? state.close() : state;
        Optional<OrganScreen> organ = state.find(OrganScreen.class);
        if (organ.filter(screen -> screen.draft().isUnsaved()).isPresent()) {
            return organ.get().asked(asking, then);
        }
        if (!state.isUnsaved() || state.work().isEmpty()) {
            return state.closed().wants(then);
        }
        Plan plan = state.work().get().plan();
        return asking.open(new Question(
                "This plan has unsaved changes.",
                List.of(
                        new Question.Answer(
                                "s",
                                "save and continue",
                                closed -> closed.wants(effects -> effects.save(plan, List.of(then)))),
                        new Question.Answer(
                                "x", "discard the changes and continue", closed -> closed.wants(Effects::dropDraft)
                                        .wants(then)),
                        Question.Answer.STAY)));
    }

    static State saved(State state, Event.Saved saved) {
        State next = state.work()
                .map(work -> state.with(
                        work.with(work.history().savedAs(saved.plan())).withoutDraft()))
                .orElse(state);
        return next.with(Notice.says("Saved.")).wants(saved.then());
    }

    static State saveRefused(State state, Event.SaveRefused refused) {
        Question.Answer over = new Question.Answer(
                "x",
                "discard the other version: overwrite it with this one",
                closed -> closed.wants(effects -> effects.saveOver(refused.plan(), refused.then())));
        Question.Answer under = new Question.Answer(
                "w",
                "save this version under another title",
                closed -> closed.onWork(work -> closed.open(ServiceForm.ofSaveUnder(work))));
        return state.open(new Question(
                "Somebody else changed this plan's file after you opened it.",
                List.of(under, over, Question.Answer.STAY)));
    }

    /** What went wrong is said below the plan; where none is open, instead of it, with the way back to the list. */
    static State failed(State state, String sentence) {
        if (state.work().isPresent()
                || state.find(OrganScreen.class).isPresent()
                || state.top() instanceof LibraryScreen) {
            return state.warns(sentence);
        }
        Question.Answer choose = new Question.Answer("Enter", "choose another plan", LibraryScreen::open);
        return state.closed().open(new Question(sentence, List.of(choose)));
    }

    /** The plan goes on in its new file; what had been kept beside the old one is no longer wanted there. */
    static State savedUnder(State state, Event.SavedUnder saved) {
        return state.work()
                .map(work -> state.with(work.under(saved.id(), work.history().savedAs(saved.plan()))))
                .orElse(state)
                .with(Notice.says("Saved as " + saved.id() + ".json, which is now open."));
    }

    static State planOpened(State state, Event.PlanOpened opened) {
        boolean wasNeverSaved = opened.draft().equals(Optional.of(opened.plan()));
        PlanEdit work = new PlanEdit(
                opened.id(),
                opened.instrument(),
                opened.organ(),
                wasNeverSaved ? Undo.ofUnsaved(opened.plan()) : Undo.of(opened.plan()),
                VersePlace.START,
                PlanEdit.Side.STOPS,
                0,
                wasNeverSaved ? Optional.empty() : opened.draft());
        State next = state.closed().with(work).with(Notice.NONE);
        if (wasNeverSaved) {
            return next.says("This plan has no file, only unsaved work.");
        }
        return work.draft()
                .map(draft -> next.open(aboutDraft(opened, draft)))
                .orElseGet(() -> next.says(UsualScreen.asked(work.organ().experience())));
    }

    /** What is to become of work that was kept; it can be taken up if it is for the organ that is open. */
    private static Question aboutDraft(Event.PlanOpened opened, Plan draft) {
        Question.Answer takeUp = new Question.Answer("Enter", "restore", FileCommands::takenUp);
        Question.Answer forget =
                new Question.Answer("x", "discard", closed -> closed.onWork(work -> closed.with(work.withoutDraft()))
                        .wants(Effects::dropDraft));
        Question.Answer leave = new Question.Answer("q", "leave", closed -> closed.wants(Effects::quit));
        boolean fits = draft.instrument().equals(opened.plan().instrument()) && draft.fits(opened.instrument());
        return fits
                ? new Question(
                        "Unsaved work on this plan was kept when the program was cut off.", List.of(takeUp, forget))
                : new Question(
                        "Unsaved work on this plan was kept, but for another organ: " + draft.instrument() + ".",
                        List.of(forget, leave));
    }

    /** The draft becomes the plan; the plan as it was saved stays what undo leads back to by saving nothing. */
    private static State takenUp(State state) {
        return state.onWork(work -> work.draft()
                .map(draft -> state.with(
                                work.with(work.history().restored(draft)).withoutDraft())
                        .says("Restored; not saved yet."))
                .orElse(state));
    }
}
