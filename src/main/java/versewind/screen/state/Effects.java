package versewind.screen.state;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.calibration.Experience;
import versewind.calibration.MeterReading;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Undo;
import versewind.plan.VersePlace;
import versewind.schema.OrganDraft;

/** All that the editor can have done outside. Everything returns the events that come of it at once. */
public interface Effects {

    /**
     * Writes the open plan to its file, unless the file has changed since it was read.
     *
     * @param then what is to be done once it is written
     */
    List<Event> save(Plan plan, List<Effect> then);

    /** Writes the open plan to its file, whatever that holds now. */
    List<Event> saveOver(Plan plan, List<Effect> then);

    /** Writes the open plan to a new file named by its title, and goes on with that. */
    List<Event> saveUnder(Plan plan);

    /**
     * Writes the sheet for the music desk.
     *
     * @param file its path, from the folder of the plan's file
     * @param sheet as it is written
     * @param mark by which a sheet of this kind is known from other files
     */
    List<Event> writeSheet(String file, String sheet, String mark);

    /** Keeps the last edit of the open plan in its journal, so that it is not lost if the line drops. */
    List<Event> keepDraft(Undo<Plan> history);

    /** Forgets the edits since the open plan was saved. */
    List<Event> dropDraft();

    /** Takes up the unsaved work that was found with the open plan. */
    List<Event> restoreWork();

    /** Moves the unsaved work that was found with the open plan to the bin. */
    List<Event> discardWork();

    /** Lets others know that the open plan is only looked at. */
    List<Event> onlyLook();

    /** Writes the open plan, merged with the version that was found in its file when it was to be saved. */
    List<Event> saveMerged(Plan plan, List<Effect> then);

    /** Lists the earlier versions of a plan. */
    List<Event> listVersions(String id);

    /** Opens a plan with an earlier version of it as an edit. */
    List<Event> openVersion(String id, int index);

    /** Searches for registrations for a verse in the background, and tells what is found. */
    List<Event> proposeVerse(Plan plan, VersePlace place);

    /**
     * Searches for registrations for many verses in the background, and tells how far it is and what is found.
     *
     * @param plan for all of its verses, or those of one hymn
     * @param hymn index of the hymn; empty for the whole service
     */
    List<Event> propose(Plan plan, OptionalInt hymn);

    /** Stops searching, with what was found. */
    List<Event> stopProposing();

    /** Lists the plans, in the background. */
    List<Event> listPlans();

    /** Finds out how some plans stand, in the background. */
    List<Event> assessPlans(List<String> ids);

    /** Looks for words in all that the plans hold, in the background; what was looked for before is given up. */
    List<Event> searchPlans(String typed);

    List<Event> listInstruments();

    List<Event> openPlan(String id);

    /** Asks who plays new plans, to begin one for an instrument. */
    List<Event> beginPlan(String instrument);

    /** Makes a plan without hymns, saves it and opens it; whoever plays it plays the next new plans too. */
    List<Event> createPlan(ServiceHeading heading, String instrument);

    /**
     * Makes a plan with the hymns of another, saves it and opens it.
     *
     * @param id the other plan
     * @param title of the new service
     * @param date of the new service, if set
     * @param people expected; empty for as many as in the other plan
     * @param notes of the new service
     */
    List<Event> copyPlan(String id, String title, Optional<LocalDate> date, OptionalInt people, String notes);

    /** Makes a plan with the hymns of another for another organ, saves it and opens it. */
    List<Event> movePlan(String id, String instrument);

    /** Gives a plan another title and file. */
    List<Event> renamePlan(String id, String title);

    /** Moves a plan to the bin. */
    List<Event> binPlan(String id);

    /** Brings back the plan that was moved to the bin last. */
    List<Event> bringBack();

    /** Lists the hymns of a plan. */
    List<Event> readHymns(String plan);

    /** Brings over a hymn of a plan, by its index there. */
    List<Event> bringHymn(String plan, int hymn, Effect.Bringing as);

    /**
     * Finds hymns with the number, title or tune of another, in the background, the latest first.
     *
     * @param except the plan that is not looked through
     */
    List<Event> findHymn(String except, Hymn hymn, Effect.Telling telling);

    /**
     * Finds what makes some verses of the open plan stronger and softer, in the background and the first of them first;
     * what was asked before is no longer wanted.
     */
    List<Event> findLadders(List<Effect.LadderOf> wanted);

    /** Fits the organ of the open plan to these readings, and writes its file. */
    List<Event> recalibrate(List<MeterReading> readings);

    /**
     * Keeps what the organist of the open plan's organ knows without a meter, in the organ's file.
     *
     * @param next what is known now
     * @param before what undo goes back to; empty for an undo itself
     */
    List<Event> keepExperience(Experience next, Optional<Experience> before);

    /** Asks what is usually drawn on the organ that is being changed. */
    List<Event> openUsual();

    /** Keeps what the organist of the organ that is being changed knows without a meter, in its file. */
    List<Event> keepExperienceOfOrgan(Experience experience);

    /** Opens an organ to change it. */
    List<Event> openOrgan(String id);

    /**
     * Writes the organ that is being changed, and the new names into its plans.
     *
     * @param next the organ as it is now
     * @param change what became of what has another name or is gone
     * @param then what is to be done once it is written
     */
    List<Event> saveOrgan(Instrument next, FormerNames change, List<Effect> then);

    /** Stops writing the new names into plans. */
    List<Event> stopSaving();

    /** Writes a new organ to a file named after it, and opens it to change it. */
    List<Event> makeOrgan(Instrument organ);

    /** Keeps the draft of the organ that is being changed beside its file, so that it is not lost if the line drops. */
    List<Event> keepOrganDraft(OrganDraft draft);

    /** Forgets what was kept beside the organ's file. */
    List<Event> dropOrganDraft();

    /** Paints every cell again, whatever the terminal shows. */
    List<Event> repaint();

    /** Ends the program. */
    List<Event> quit();
}
