package versewind.terminal;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Experience;
import versewind.calibration.Fit;
import versewind.calibration.MeterReading;
import versewind.organ.Instrument;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.PlanMerge;
import versewind.plan.ServiceHeading;
import versewind.plan.Undo;
import versewind.rules.OrdinaryHymn;
import versewind.schema.KnownOrgan;
import versewind.screen.library.LibraryEvent;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.PlanEvent;
import versewind.screen.state.Chooser;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;
import versewind.store.Autosave;
import versewind.store.BadFile;
import versewind.store.Catalogue;
import versewind.store.Fingerprint;
import versewind.store.Library;
import versewind.store.OpenOrgan;
import versewind.store.OpenPlan;
import versewind.store.PlanEntry;
import versewind.store.PlanFile;
import versewind.store.Presence;
import versewind.store.SaveOutcome;
import versewind.store.Version;
import versewind.store.WhenChanged;

/** Opens, makes and saves the plan that is worked on, with what is written beside it. */
final class Planning {

    private static final Event NO_PLAN = new Event.Failed("No plan is open.");

    private final Library library;
    private final JournalWriter journal;
    private Optional<OpenPlan> open = Optional.empty();

    /** What was found in the file when the plan was to be saved, to be merged with. */
    private Optional<OpenPlan> theirs = Optional.empty();

    Planning(Library library, JournalWriter journal) {
        this.library = library;
        this.journal = journal;
    }

    /** The plan that is worked on, as it was last read or written. */
    Optional<OpenPlan> open() {
        return open;
    }

    /** Which library it is that is listed, where the plan that is open does not lie in it. */
    List<Event> besideLibrary() {
        return open.map(OpenPlan::path)
                .filter(path -> !library.holds(path))
                .map(path -> List.<Event>of(new Event.Done(
                        "These are the plans in " + library.plansFolder() + "; the one that is open lies elsewhere.")))
                .orElse(List.of());
    }

    /** A plan that has been read becomes the one that is worked on. */
    List<Event> opened(OpenPlan file) {
        List<Event> inputs = new ArrayList<>(read(file));
        inputs.addAll(begun(file));
        return inputs;
    }

    /** As above, but without its journal: {@link #begun} is to follow before the first edit. */
    List<Event> read(OpenPlan file) {
        CalibratedOrgan organ;
        try {
            organ = file.organ().calibrated();
        } catch (IllegalArgumentException unknownMaterial) {
            return List.of(new Event.Failed(
                    file.instrument().name() + " cannot be estimated: " + unknownMaterial.getMessage()));
        }
        open = Optional.of(file);
        Optional<FileEvent.LeftWork> left = file.draft().flatMap(Planning::left);
        List<Event> events = new ArrayList<>();
        events.add(new FileEvent.PlanOpened(id(file.path()), file.plan(), file.instrument(), organ, left));
        file.draft()
                .filter(Autosave.Unreadable.class::isInstance)
                .map(Autosave.Unreadable.class::cast)
                .ifPresent(work -> events.add(new Event.Failed("Unsaved work was kept, but cannot be read: "
                        + work.why().getMessage())));
        return events;
    }

    private static Optional<FileEvent.LeftWork> left(Autosave work) {
        return work instanceof Autosave.Kept kept
                ? Optional.of(new FileEvent.LeftWork(
                        kept.history(),
                        "by " + kept.by().name() + kept.by().where() + ", last at " + Presence.time(kept.kept())))
                : Optional.empty();
    }

    /** Begins the journal of the plan that was read, and says who else has it open. */
    List<Event> begun(OpenPlan file) {
        if (!open.equals(Optional.of(file))) {
            return List.of();
        }
        List<String> others =
                journal.begin(file).stream().map(Presence::sentence).toList();
        try {
            // Where there is no file, the work that was left over is the plan.
            if (file.fingerprint().equals(Fingerprint.NO_FILE)) {
                restoreWork();
            }
        } catch (BadFile trouble) {
            return List.of(new Event.Failed(trouble.getMessage()));
        }
        return others.isEmpty() ? List.of() : List.of(new FileEvent.OpenElsewhere(others));
    }

    /** The form of a new plan, for as many people as the service that was edited last for this organ. */
    LibraryEvent.PlanBegun blank(String instrument) throws BadFile {
        Instrument organ = library.openInstrument(instrument);
        int people = OrdinaryHymn.people(organ);
        Catalogue catalogue = library.catalogue();
        for (PlanFile file : catalogue.files()) {
            PlanEntry entry = catalogue.read(file);
            if (entry.instrument().equals(instrument)) {
                people = library.openPlan(file.id()).plan().heading().people();
                break;
            }
        }
        return new LibraryEvent.PlanBegun(instrument, organ.name(), library.player(), people);
    }

    /** A new plan, which becomes the one that is worked on. */
    List<Event> created(ServiceHeading heading, String instrumentId, List<Hymn> hymns, KnownOrgan organ)
            throws BadFile {
        Plan plan = new Plan(heading, instrumentId, hymns);
        OpenPlan fresh = library.newPlan(library.freePlanId(heading.title()), plan, organ);
        SaveOutcome outcome = library.savePlan(fresh, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.Saved saved) {
            return opened(fresh.after(saved));
        }
        return List.of(notMade(fresh, outcome));
    }

    /** The earlier versions of a plan, by when they were saved. */
    LibraryEvent.VersionsListed versions(String id) {
        List<Chooser.Row> listed = new ArrayList<>();
        for (Version each : library.versions(id)) {
            String words = "saved " + Presence.time(each.saved());
            listed.add(new Chooser.Row(Integer.toString(listed.size()), words, ""));
        }
        return new LibraryEvent.VersionsListed(id, listed);
    }

    /** Opens a plan with an earlier version of it as an edit. */
    List<Event> openedVersion(String id, int index) throws BadFile {
        List<Version> versions = library.versions(id);
        if (index >= versions.size()) {
            return List.of(new Event.Failed("This version is not there any more."));
        }
        Plan plan = library.readVersion(id, versions.get(index));
        List<Event> events = new ArrayList<>(opened(library.openPlan(id)));
        events.add(new LibraryEvent.VersionRead(plan));
        return events;
    }

    /** Keeps an edit of the plan. */
    List<Event> keep(Undo<Plan> history) {
        return open.isPresent() ? journal.keep(history) : List.of();
    }

    /** Takes up the work that was found with the plan. */
    List<Event> restoreWork() throws BadFile {
        if (open.isPresent() && open.get().draft().orElse(null) instanceof Autosave.Kept kept) {
            open = Optional.of(journal.restore(open.get(), kept));
            return List.of(new FileEvent.WorkRestored(kept.history()));
        }
        return List.of();
    }

    /** Moves the work that was found with the plan to the bin. */
    List<Event> discardWork() throws BadFile {
        if (open.isPresent() && open.get().draft().isPresent()) {
            library.discard(open.get().draft().get());
        }
        return List.of();
    }

    /** Others need not be told of somebody who only looks. */
    List<Event> onlyLook() {
        journal.end();
        return List.of();
    }

    /** Forgets the edits since the plan was saved. */
    List<Event> drop() {
        open.ifPresent(journal::clear);
        return List.of();
    }

    Event save(Plan plan, List<Effect> then, WhenChanged whenChanged) {
        if (open.isEmpty()) {
            return NO_PLAN;
        }
        OpenPlan wanted = open.get().with(plan);
        SaveOutcome outcome = library.savePlan(wanted, whenChanged);
        if (outcome instanceof SaveOutcome.Saved saved) {
            boolean hasVersion = whenChanged == WhenChanged.OVERWRITE
                    || wanted.fingerprint().equals(Fingerprint.NO_FILE)
                    || library.keptVersion(wanted.path(), wanted.fingerprint()).isPresent();
            open = Optional.of(wanted.after(saved));
            journal.clear(open.get());
            return new FileEvent.Saved(plan, then, hasVersion);
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            return merged(plan, then);
        }
        return Refusal.of((SaveOutcome.NotSaved) outcome);
    }

    /** The plan and what somebody else has saved meanwhile become one, if they can be. */
    private Event merged(Plan plan, List<Effect> then) {
        OpenPlan mine = open.orElseThrow();
        OpenPlan other;
        try {
            other = library.readPlan(mine.path());
        } catch (BadFile unreadable) {
            return new FileEvent.SaveRefused(
                    "This plan's file was changed elsewhere, and is not as it was: " + unreadable.problem() + ".",
                    plan,
                    then);
        }
        if (!other.instrument().equals(mine.instrument())
                || !other.plan().instrument().equals(mine.plan().instrument())) {
            return new FileEvent.SaveRefused(
                    "The plan and its organ were changed elsewhere after you opened it.", plan, then);
        }
        theirs = Optional.of(other);
        PlanMerge merge = PlanMerge.of(mine.plan(), plan, other.plan());
        return merge.conflicts().isEmpty() ? saveMerged(merge.plan(), then) : new FileEvent.Conflicting(merge, then);
    }

    /** Saves what was merged over the version that it was merged with. */
    Event saveMerged(Plan plan, List<Effect> then) {
        OpenPlan wanted = theirs.orElseThrow().with(plan);
        SaveOutcome outcome = library.savePlan(wanted, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.Saved saved) {
            open = Optional.of(wanted.after(saved));
            journal.clear(open.get());
            return new FileEvent.Merged(plan, then);
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            open = theirs;
            return merged(plan, then);
        }
        return Refusal.of((SaveOutcome.NotSaved) outcome);
    }

    /** The plan goes on in a file of its own; the old one stays as it was last saved. */
    Event saveUnder(Plan plan) {
        if (open.isEmpty()) {
            return NO_PLAN;
        }
        OpenPlan old = open.get();
        OpenPlan fresh = library.newPlan(library.freePlanId(plan.heading().title()), plan, old.organ());
        SaveOutcome outcome = library.savePlan(fresh, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.Saved saved) {
            journal.clear(old);
            open = Optional.of(fresh.after(saved));
            journal.begin(open.get());
            return new FileEvent.SavedUnder(id(saved.path()), plan);
        }
        return notMade(fresh, outcome);
    }

    private static Event notMade(OpenPlan fresh, SaveOutcome outcome) {
        String why = outcome instanceof SaveOutcome.NotSaved notSaved
                ? notSaved.why()
                : "a file of that name has just been made by somebody else.";
        return new Event.Failed("The new plan was not saved to " + fresh.path() + ": " + why);
    }

    /** Writes the sheet of the plan, unless a file of another kind has its name. */
    Event write(String name, String sheet, String mark) {
        if (open.isEmpty()) {
            return NO_PLAN;
        }
        Path file;
        try {
            file = open.get().path().resolveSibling(name);
        } catch (InvalidPathException wrong) {
            return new Event.Failed("No file can be called \"" + name + "\". Choose another name.");
        }
        SaveOutcome outcome = library.saveMade(file, sheet, mark, open.get().path());
        if (outcome instanceof SaveOutcome.Saved) {
            return new Event.Done(new Delivery(System.getenv()).words(file));
        }
        String why = outcome instanceof SaveOutcome.NotSaved notSaved
                ? notSaved.why()
                : "Somebody else has just changed it. Try again.";
        return new Event.Failed("The sheet is not written to " + file + ": " + why);
    }

    /** Fits the organ of the plan to readings of a meter, and writes it. */
    List<Event> recalibrated(List<MeterReading> readings) throws BadFile {
        return changed(
                organ -> organ.fittedTo(readings),
                known -> new PlanEvent.Recalibrated(
                        known.calibrated(), Fit.outliers(known.soundBeforeReadings(), readings)));
    }

    /** Writes the organ of the plan with what its organist knows without a meter. */
    List<Event> kept(Experience next, Optional<Experience> before) throws BadFile {
        return changed(organ -> organ.with(next), known -> new PlanEvent.UsualKept(known.calibrated(), before));
    }

    /** Writes the organ of the plan with what is now known of it. */
    private List<Event> changed(UnaryOperator<KnownOrgan> change, Function<KnownOrgan, Event> told) throws BadFile {
        if (open.isEmpty()) {
            return List.of();
        }
        OpenPlan plan = open.get();
        OpenOrgan organ = library.openOrganOf(plan);
        if (!organ.organ().equals(plan.organ())) {
            return List.of(new Event.Failed("The organ's file was changed by somebody else since the plan was opened."
                    + " Open the plan again, then try again."));
        }
        OpenOrgan next = organ.with(change.apply(organ.organ()));
        SaveOutcome outcome = library.saveOrgan(next);
        if (outcome instanceof SaveOutcome.NotSaved failed) {
            return List.of(Refusal.of(failed));
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk changed) {
            return List.of(new Event.Failed(changed.path() + " was changed just now by somebody else. Try again."));
        }
        open = Optional.of(plan.with(next.organ()));
        return List.of(told.apply(next.organ()));
    }

    /** Name of a file without the ending. */
    static String id(Path path) {
        String name = path.getFileName().toString();
        return name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
    }
}
