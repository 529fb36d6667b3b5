package versewind.screen.plan;

import java.util.List;
import java.util.Optional;
import versewind.calibration.CalibratedOrgan;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.PlanMerge;
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
     * @param hasVersion whether what the file held before is kept among its versions, if it held anything
     */
    record Saved(Plan plan, List<Effect> then, boolean hasVersion) implements FileEvent {
        @Override
        public State on(State state) {
            State next = state.work()
                    .map(work -> state.with(work.with(work.history().savedAs(plan))))
                    .orElse(state);
            boolean isUnheard = hasVersion && state.isSpoken() && state.top().savesUnheard();
            String said = hasVersion ? "Saved." : "Saved, but the version before could not be kept.";
            return (isUnheard ? next : next.says(said)).wants(then);
        }
    }

    /**
     * A plan was not written, since its file has changed since it was read, and the two cannot be merged.
     *
     * @param why what became of the file, a sentence
     * @param plan as it was to be written
     * @param then what was to be done then
     */
    record SaveRefused(String why, Plan plan, List<Effect> then) implements FileEvent {
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
            return state.open(new Question(why, List.of(under, over, Question.Answer.STAY)));
        }
    }

    /**
     * A plan was merged with what somebody else had saved meanwhile, and written.
     *
     * @param plan as it was written
     * @param then what is to be done now
     */
    record Merged(Plan plan, List<Effect> then) implements FileEvent {
        @Override
        public State on(State state) {
            return state.onWork(work -> {
                        String where = PlanDifference.between(work.plan(), plan, work.instrument())
                                .place()
                                .filter(place -> !plan.hymn(place).verses().isEmpty())
                                .map(place -> plan.hymn(place).title() + ", "
                                        + plan.verse(place).label())
                                .orElse("the details of the service");
                        PlanEdit merged = work.with(work.history().to(plan).savedAs(plan));
                        String said = plan.equals(work.plan())
                                ? "Saved as it was here. The other version is among the earlier ones (library, Ctrl-V)."
                                : "Saved, with what was changed elsewhere, first in " + where + ". u undoes that.";
                        return state.with(merged).says(said);
                    })
                    .wants(then);
        }
    }

    /**
     * A plan was not written, since somebody else has changed the same verses meanwhile.
     *
     * @param merge the two versions
     * @param then what was to be done once it is written
     */
    record Conflicting(PlanMerge merge, List<Effect> then) implements FileEvent {
        @Override
        public State on(State state) {
            return state.open(ConflictScreen.of(merge, then));
        }
    }

    /**
     * Unsaved work was taken up.
     *
     * @param history the plan with its steps
     */
    record WorkRestored(Undo<Plan> history) implements FileEvent {
        @Override
        public State on(State state) {
            return state.onWork(work -> {
                Undo<Plan> restored =
                        new Undo<>(history.now(), Optional.of(work.plan()), history.past(), history.future());
                return state.with(work.with(restored)).says("Restored; not saved yet. u undoes the last edit.");
            });
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
     * Others have the plan open that has just been opened here. Whoever only looks is not asked about unsaved work.
     *
     * @param others who, where and since when, a sentence each
     */
    record OpenElsewhere(List<String> others) implements FileEvent {
        @Override
        public State on(State state) {
            Question.Answer look =
                    new Question.Answer("Enter", "look at the plan without editing it", asking -> asking.closed()
                            .onWork(work -> asking.closed().with(work.lookedAt()))
                            .wants(Effects::onlyLook));
            Question.Answer edit =
                    new Question.Answer("e", "edit it too; saving merges both versions", asking -> asking);
            Question.Answer back = new Question.Answer("Esc", "back to the library", asking -> state.doors()
                    .library(look.then().apply(asking)));
            return state.open(new Question(String.join(". ", others) + ".", List.of(look, edit, back)));
        }
    }

    /**
     * Unsaved work that was found with a plan.
     *
     * @param history the plan as it was left, with its steps
     * @param about who did it, and when: "by anna on vestry at 09:30"
     */
    record LeftWork(Undo<Plan> history, String about) {}

    /**
     * A plan was opened.
     *
     * @param id name of its file without the ending
     * @param plan as it lies saved
     * @param instrument the instrument it is for
     * @param organ its sound and calibration
     * @param left unsaved work on it that was found beside it
     */
    record PlanOpened(String id, Plan plan, Instrument instrument, CalibratedOrgan organ, Optional<LeftWork> left)
            implements FileEvent {

        @Override
        public State on(State state) {
            boolean wasNeverSaved =
                    left.filter(work -> work.history().now().equals(plan)).isPresent();
            PlanEdit work = new PlanEdit(
                    id,
                    instrument,
                    organ,
                    wasNeverSaved ? Undo.ofUnsaved(plan) : Undo.of(plan),
                    VersePlace.START,
                    PlanEdit.Side.STOPS,
                    0,
                    PlanEdit.Access.EDITED);
            State next = state.closed().with(work).with(Notice.NONE);
            if (wasNeverSaved) {
                return next.says("This plan has no file, only unsaved work.");
            }
            return left.map(kept -> next.open(aboutWork(kept)))
                    .orElseGet(() -> next.says(organ.changedVerdicts(plan)
                            .map(day -> "Verdicts have changed since the feedback of " + UsualRow.day(day) + ".")
                            .orElse(PlanEdit.usualAsked(organ.experience()))));
        }

        /** What is to become of work that was kept; it can be taken up if it is for the organ that is open. */
        private Question aboutWork(LeftWork kept) {
            Question.Answer takeUp =
                    new Question.Answer("Enter", "restore", closed -> closed.wants(Effects::restoreWork));
            Question.Answer forget = new Question.Answer(
                    "x", "discard: move it to the bin", closed -> closed.wants(Effects::discardWork));
            Question.Answer leave = new Question.Answer("q", "leave", closed -> closed.wants(Effects::quit));
            Plan now = kept.history().now();
            if (!now.instrument().equals(plan.instrument()) || !now.fits(instrument)) {
                return new Question(
                        "Unsaved work on this plan was kept, but for another organ: " + now.instrument() + ".",
                        List.of(forget, leave));
            }
            int edits = kept.history().past().size();
            String words = PlanDifference.between(plan, now, instrument).words();
            return new Question(
                    "Unsaved work on this plan was kept when the program was cut off: "
                            + (edits > 1 ? edits + " edits" : "one edit") + " " + kept.about() + ". Changed: " + words
                            + ".",
                    List.of(takeUp, forget));
        }
    }
}
