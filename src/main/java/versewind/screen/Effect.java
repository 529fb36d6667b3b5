package versewind.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.calibration.MeterReading;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.workshop.OrganDraft;

/** Something to be done outside the editor. What comes of it comes back as an {@link Event}. */
public sealed interface Effect {

    /**
     * Write the plan to its file, unless the file has changed since it was read.
     *
     * @param plan the plan
     * @param then what is to be done once it is written
     */
    record Save(Plan plan, List<Effect> then) implements Effect {}

    /** Write the plan to its file, whatever that holds now. */
    record SaveOver(Plan plan, List<Effect> then) implements Effect {}

    /** Write the sheet for the music desk beside the plan's file, and say where. */
    record WriteSheet(String html) implements Effect {}

    /**
     * Search for registrations, and say how far it is and what is found.
     *
     * @param plan for all of its verses, or those of one hymn
     * @param hymn index of the hymn; empty for the whole service
     * @param heard the plan whose feedback is taken into account, if it is
     */
    record Propose(Plan plan, OptionalInt hymn, Optional<Plan> heard) implements Effect {}

    /** Stop searching, with what was found. */
    record StopProposing() implements Effect {}

    /** Keep the plan beside its file, so that it is not lost if the line drops. */
    record KeepDraft(Plan plan) implements Effect {}

    /** Forget what was kept beside the plan's file. */
    record DropDraft() implements Effect {}

    /** Say which plans there are. */
    record ListPlans() implements Effect {}

    /** Say which instruments there are. */
    record ListInstruments() implements Effect {}

    /** Open a plan. */
    record OpenPlan(String id) implements Effect {}

    /** Make a plan without hymns, save it and open it. */
    record CreatePlan(ServiceHeading heading, String instrument) implements Effect {}

    /**
     * Make a plan with the hymns of another, save it and open it.
     *
     * @param id the other plan
     * @param title of the new service
     * @param date of the new service, if set
     * @param people expected; empty for as many as in the other plan
     * @param notes of the new service
     */
    record CopyPlan(String id, String title, Optional<LocalDate> date, OptionalInt people, String notes)
            implements Effect {}

    /** Say which hymns a plan has. */
    record ReadHymns(String plan) implements Effect {}

    /** Bring over a hymn of a plan, by its index there. */
    record BringHymn(String plan, int hymn) implements Effect {}

    /** Find out how some plans stand, in the background. */
    record AssessPlans(List<String> ids) implements Effect {}

    /**
     * Find what makes some verses of the open plan stronger and softer, in the background and the first of them first; what
     * was asked before is no longer wanted.
     */
    record FindLadders(List<LadderOf> wanted) implements Effect {

        public FindLadders {
            wanted = List.copyOf(wanted);
        }
    }

    /**
     * Whose ladder is meant.
     *
     * @param place of the verse in the plan
     * @param verse the verse
     * @param people how many are present
     * @param tempo of its hymn
     */
    record LadderOf(VersePlace place, Verse verse, int people, OptionalInt tempo) {}

    /** Give a plan another title and file. */
    record RenamePlan(String id, String title) implements Effect {}

    /** Move a plan to the bin. */
    record BinPlan(String id) implements Effect {}

    /** Bring back the plan that was moved to the bin last. */
    record BringBack() implements Effect {}

    /** Write the plan to a new file named by its title, and go on with that. */
    record SaveUnder(Plan plan) implements Effect {}

    /** Fit the organ of the open plan to these readings, and write its file. */
    record Recalibrate(List<MeterReading> readings) implements Effect {}

    /** Open an organ to change it. */
    record OpenOrgan(String id) implements Effect {}

    /**
     * Write the organ that is being changed, and the new names into its plans.
     *
     * @param next the organ as it is now
     * @param change what became of what has another name or is gone
     * @param then what is to be done once it is written
     */
    record SaveOrgan(Instrument next, FormerNames change, List<Effect> then) implements Effect {}

    /** Keep the draft of the organ that is being changed beside its file, so that it is not lost if the line drops. */
    record KeepOrganDraft(OrganDraft draft) implements Effect {}

    /** Forget what was kept beside the organ's file. */
    record DropOrganDraft() implements Effect {}

    /** Leave the organ that is being changed. */
    record CloseOrgan() implements Effect {}

    /** Write a new organ to a file named after it, and open it to change it. */
    record MakeOrgan(Instrument organ) implements Effect {}

    /** Paint every cell again, whatever the terminal shows. */
    record Repaint() implements Effect {}

    /** End the program. */
    record Quit() implements Effect {}
}
