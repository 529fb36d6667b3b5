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
import versewind.store.SaveOutcome;
import versewind.store.WhenChanged;

/** Opens, makes and saves the plan that is worked on, with what is written beside it. */
final class Planning {

    private static final Event NO_PLAN = new Event.Failed("No plan is open.");

    private final Library library;
    private final AutosaveWriter drafting;
    private Optional<OpenPlan> open = Optional.empty();

    Planning(Library library, AutosaveWriter drafting) {
        this.library = library;
        this.drafting = drafting;
    }

    /** The plan that is worked on, as it was last read or written. */
    Optional<OpenPlan> open() {
        return open;
    }

    /** A plan that has been read becomes the one that is worked on. */
    List<Event> opened(OpenPlan file) {
        CalibratedOrgan organ;
        try {
            organ = file.organ().calibrated();
        } catch (IllegalArgumentException unknownMaterial) {
            return List.of(new Event.Failed(
                    file.instrument().name() + " cannot be estimated: " + unknownMaterial.getMessage()));
        }
        open = Optional.of(file);
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

    /** A new plan, which becomes the one that is worked on. */
    List<Event> created(ServiceHeading heading, String instrumentId, List<Hymn> hymns, KnownOrgan organ)
            throws BadFile {
        drafting.settle();
        Plan plan = new Plan(heading, instrumentId, hymns);
        OpenPlan fresh = library.newPlan(library.freePlanId(heading.title()), plan, organ);
        SaveOutcome outcome = library.savePlan(fresh, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.Saved saved) {
            return opened(fresh.after(saved));
        }
        return List.of(notMade(fresh, outcome));
    }

    /** Keeps unsaved work beside the plan, soon. */
    void keep(Plan plan) {
        open.ifPresent(file -> drafting.keep(file.with(plan)));
    }

    /** Takes away the work that was kept. */
    void drop() {
        drafting.forget();
        open.ifPresent(file -> library.dropDraft(file.path()));
    }

    Event save(Plan plan, List<Effect> then, WhenChanged whenChanged) {
        if (open.isEmpty()) {
            return NO_PLAN;
        }
        drafting.forget();
        OpenPlan wanted = open.get().with(plan);
        SaveOutcome outcome = library.savePlan(wanted, whenChanged);
        if (outcome instanceof SaveOutcome.Saved saved) {
            open = Optional.of(wanted.after(saved));
            return new FileEvent.Saved(plan, then);
        }
        drafting.keep(wanted);
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
        drafting.forget();
        OpenPlan old = open.get();
        OpenPlan fresh = library.newPlan(library.freePlanId(plan.heading().title()), plan, old.organ());
        SaveOutcome outcome = library.savePlan(fresh, WhenChanged.REFUSE);
        if (outcome instanceof SaveOutcome.Saved saved) {
            library.dropDraft(old.path());
            open = Optional.of(fresh.after(saved));
            return new FileEvent.SavedUnder(EffectRunner.id(saved.path()), plan);
        }
        drafting.keep(old.with(plan));
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
        SaveOutcome outcome = library.saveMade(file, sheet, mark);
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
