package versewind.screen.plan;

import java.util.List;
import java.util.Optional;
import versewind.calibration.CalibratedOrgan;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.Undo;
import versewind.plan.VersePlace;
import versewind.screen.state.Effect;
import versewind.screen.state.Effects;
import versewind.screen.state.Event;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.Question;
import versewind.screen.state.ServiceForm;
import versewind.screen.state.State;
import versewind.screen.toolkit.Notice;

/** What comes of opening and saving a plan. */
public interface FileEvent extends Event {

    /**
     * A plan was written.
     *
     * @param plan as it was written
     * @param then what is to be done now
     */
    record Saved(Plan plan, List<Effect> then) implements FileEvent {
        @Override
        public State on(State state) {
            State next = state.work()
                    .map(work ->
                            state.with(work.with(work.history().savedAs(plan)).withoutDraft()))
                    .orElse(state);
            return next.says("Saved.").wants(then);
        }
    }

    /**
     * A plan was not written, since its file has changed since it was read.
     *
     * @param plan as it was to be written
     * @param then what was to be done then
     */
    record SaveRefused(Plan plan, List<Effect> then) implements FileEvent {
        @Override
        public State on(State state) {
            Question.Answer over = new Question.Answer(
                    "x",
                    "discard the other version: overwrite it with this one",
                    closed -> closed.wants(effects -> effects.saveOver(plan, then)));
            Question.Answer under = new Question.Answer(
                    "w",
                    "save this version under another title",
                    closed -> closed.onWork(work -> closed.open(ServiceForm.ofSaveUnder(work))));
            return state.open(new Question(
                    "Somebody else changed this plan's file after you opened it.",
                    List.of(under, over, Question.Answer.STAY)));
        }
    }

    /**
     * The plan that is open was written to a file of its own, on which work goes on; what had been kept beside the old
     * one is no longer wanted there.
     *
     * @param id name of that file without the ending
     * @param plan as it was written
     */
    record SavedUnder(String id, Plan plan) implements FileEvent {
        @Override
        public State on(State state) {
            return state.work()
                    .map(work -> state.with(work.under(id, work.history().savedAs(plan))))
                    .orElse(state)
                    .says("Saved as " + id + ".json, which is now open.");
        }
    }

    /**
     * A plan was opened.
     *
     * @param id name of its file without the ending
     * @param plan as it lies saved
     * @param instrument the instrument it is for
     * @param organ its sound and calibration
     * @param draft unsaved work on it that was found beside it
     */
    record PlanOpened(String id, Plan plan, Instrument instrument, CalibratedOrgan organ, Optional<Plan> draft)
            implements FileEvent {

        @Override
        public State on(State state) {
            boolean wasNeverSaved = draft.equals(Optional.of(plan));
            PlanEdit work = new PlanEdit(
                    id,
                    instrument,
                    organ,
                    wasNeverSaved ? Undo.ofUnsaved(plan) : Undo.of(plan),
                    VersePlace.START,
                    PlanEdit.Side.STOPS,
                    0,
                    wasNeverSaved ? Optional.empty() : draft);
            State next = state.closed().with(work).with(Notice.NONE);
            if (wasNeverSaved) {
                return next.says("This plan has no file, only unsaved work.");
            }
            return work.draft()
                    .map(kept -> next.open(aboutDraft(kept)))
                    .orElseGet(() -> next.says(PlanEdit.usualAsked(work.organ().experience())));
        }

        /** What is to become of work that was kept; it can be taken up if it is for the organ that is open. */
        private Question aboutDraft(Plan kept) {
            Question.Answer takeUp = new Question.Answer("Enter", "restore", PlanOpened::takenUp);
            Question.Answer forget = new Question.Answer(
                    "x", "discard", closed -> closed.onWork(work -> closed.with(work.withoutDraft()))
                            .wants(Effects::dropDraft));
            Question.Answer leave = new Question.Answer("q", "leave", closed -> closed.wants(Effects::quit));
            boolean fits = kept.instrument().equals(plan.instrument()) && kept.fits(instrument);
            return fits
                    ? new Question(
                            "Unsaved work on this plan was kept when the program was cut off.", List.of(takeUp, forget))
                    : new Question(
                            "Unsaved work on this plan was kept, but for another organ: " + kept.instrument() + ".",
                            List.of(forget, leave));
        }

        /** The draft becomes the plan; the plan as it was saved stays what undo leads back to by saving nothing. */
        private static State takenUp(State state) {
            return state.onWork(work -> work.draft()
                    .map(kept -> state.with(
                                    work.with(work.history().restored(kept)).withoutDraft())
                            .says("Restored; not saved yet."))
                    .orElse(state));
        }
    }
}
