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
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Undo;
import versewind.schema.KnownOrgan;
import versewind.screen.plan.FileEvent;
import versewind.screen.plan.PlanEvent;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;
import versewind.store.Autosave;
import versewind.store.BadFile;
import versewind.store.Library;
import versewind.store.OpenOrgan;
import versewind.store.OpenPlan;
import versewind.store.Presence;
import versewind.store.SaveOutcome;
import versewind.store.WhenChanged;

/** Opens, makes and saves the plan that is worked on, with what is written beside it. */
final class Planning {

    private static final Event NO_PLAN = new Event.Failed("No plan is open.");

    private final Library library;
    private final JournalWriter journal;
    private Optional<OpenPlan> open = Optional.empty();

    /** Work that was left over and is neither taken up nor discarded yet. */
    private Optional<Autosave> offered = Optional.empty();

    /** The plan with its steps, once one is open. */
    private Optional<Undo<Plan>> steps = Optional.empty();

    Planning(Library library, JournalWriter journal) {
        this.library = library;
        this.journal = journal;
    }

    /** The plan that is worked on, as it was last read or written. */
    Optional<OpenPlan> open() {
        return open;
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
        offered = file.draft();
        steps = Optional.of(Undo.of(file.plan()));
        Optional<Plan> draft = file.draft()
                .flatMap(each -> each instanceof Autosave.Kept kept ? Optional.of(kept.plan()) : Optional.empty());
        List<Event> inputs = new ArrayList<>();
        inputs.add(
                new FileEvent.PlanOpened(EffectRunner.id(file.path()), file.plan(), file.instrument(), organ, draft));
        file.draft().ifPresent(each -> {
            if (each instanceof Autosave.Unreadable unreadable) {
                inputs.add(new Event.Failed("Unsaved work was kept, but cannot be read: "
                        + unreadable.why().getMessage()));
            }
        });
        return inputs;
    }

    /** Begins the journal of the plan that was read, and says who else has it open. */
    List<Event> begun(OpenPlan file) {
        List<Presence> others = open.filter(file::equals).map(journal::begin).orElse(List.of());
        return others.stream()
                .limit(1)
                .<Event>map(other -> new Event.Failed("Take care: " + other.sentence() + "."))
                .toList();
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

    /** Keeps an edit of the plan. */
    List<Event> keep(Plan plan) {
        if (open.isEmpty()) {
            return List.of();
        }
        try {
            takeUp();
        } catch (BadFile trouble) {
            return List.of(new Event.Failed(trouble.getMessage()));
        }
        Undo<Plan> before = steps.orElseThrow();
        Undo<Plan> after = before.before().equals(Optional.of(plan))
                ? before.undo()
                : before.after().equals(Optional.of(plan)) ? before.redo() : before.to(plan);
        steps = Optional.of(after);
        return journal.keep(after);
    }

    private void takeUp() throws BadFile {
        Optional<Autosave> work = offered;
        offered = Optional.empty();
        if (work.isPresent() && work.get() instanceof Autosave.Kept kept) {
            open = Optional.of(journal.restore(open.orElseThrow(), kept));
            steps = Optional.of(kept.history());
        }
    }

    /** Forgets the work that was kept. */
    List<Event> drop() throws BadFile {
        Optional<Autosave> work = offered;
        offered = Optional.empty();
        if (work.isPresent()) {
            library.discard(work.get());
        } else {
            open.ifPresent(this::clear);
        }
        return List.of();
    }

    private void clear(OpenPlan saved) {
        steps = Optional.of(Undo.of(saved.plan()));
        journal.clear(saved);
    }

    Event save(Plan plan, List<Effect> then, WhenChanged whenChanged) {
        if (open.isEmpty()) {
            return NO_PLAN;
        }
        try {
            takeUp();
        } catch (BadFile trouble) {
            return new Event.Failed(trouble.getMessage());
        }
        OpenPlan wanted = open.get().with(plan);
        SaveOutcome outcome = library.savePlan(wanted, whenChanged);
        if (outcome instanceof SaveOutcome.Saved saved) {
            open = Optional.of(wanted.after(saved));
            clear(open.get());
            return new FileEvent.Saved(plan, then);
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            return new FileEvent.SaveRefused(plan, then);
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
            clear(old);
            open = Optional.of(fresh.after(saved));
            journal.begin(open.get());
            return new FileEvent.SavedUnder(EffectRunner.id(saved.path()), plan);
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
}
