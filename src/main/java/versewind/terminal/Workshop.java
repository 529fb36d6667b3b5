package versewind.terminal;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import versewind.calibration.Experience;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.schema.KnownOrgan;
import versewind.schema.OrganDraft;
import versewind.screen.organ.OrganEvent;
import versewind.screen.plan.PlanEvent;
import versewind.screen.state.Effect;
import versewind.screen.state.Event;
import versewind.store.BadFile;
import versewind.store.Journal;
import versewind.store.Library;
import versewind.store.OpenOrgan;
import versewind.store.OrganHold;
import versewind.store.OrganOutcome;
import versewind.store.SaveOutcome;

/** Opens, writes and makes the organs that are changed in the editor. */
final class Workshop implements AutoCloseable {

    /** More plans than these are counted and not named. */
    private static final int MOST_NAMED = 8;

    private static final int TOLD_EVERY = 10;

    private final Library library;
    private final Consumer<Event> tell;
    private final AtomicBoolean goesOn = new AtomicBoolean();
    private Optional<OpenOrgan> open = Optional.empty();
    private Optional<OrganHold> hold = Optional.empty();

    Workshop(Library library, Consumer<Event> tell) {
        this.library = library;
        this.tell = tell;
    }

    /** Opens an organ, and says a sentence of it; blank for none. */
    OrganEvent.OrganOpened open(String id, String sentence) throws BadFile {
        OpenOrgan organ = library.openOrgan(id);
        open = Optional.of(organ);
        close();
        OrganHold begun = library.hold(organ);
        hold = Optional.of(begun);
        String told = begun.others().stream()
                .findFirst()
                .map(other -> "Take care: " + other.sentence() + ". Whoever saves second must begin again.")
                .orElse(sentence);
        return new OrganEvent.OrganOpened(
                id, organ.organ().instrument(), organ.organ().experience(), told, begun.left(organ));
    }

    /** The organ is no longer changed here. */
    @Override
    public void close() {
        hold.ifPresent(OrganHold::close);
        hold = Optional.empty();
    }

    /** Keeps a draft beside the organ's file; says so if that cannot be done. */
    List<Event> keep(OrganDraft draft) {
        if (open.isEmpty()) {
            return List.of();
        }
        try {
            OrganHold held = hold.orElseGet(() -> library.hold(open.get()));
            hold = Optional.of(held);
            held.keep(open.get(), draft);
            return List.of();
        } catch (IOException trouble) {
            return List.of(new Event.Failed("Unsaved work is not kept: " + Journal.sentence(trouble)));
        }
    }

    void drop() {
        try {
            if (hold.isPresent()) {
                hold.get().drop();
            }
        } catch (IOException trouble) {
            // The edits are offered again the next time, though they are not wanted or saved already.
            tell.accept(new Event.Failed("Edits that are no longer needed stay kept. " + Journal.sentence(trouble)));
        }
    }

    /** Begins to save the organ and its plans in a thread of its own; until that ends nothing else is done here. */
    Event beginSaving(Instrument next, FormerNames change, List<Effect> then) {
        goesOn.set(true);
        Thread saving = new Thread(
                () -> {
                    Event outcome = new Event.Failed("The organ could not be saved.");
                    try {
                        outcome = save(next, change, then);
                    } finally {
                        tell.accept(new OrganEvent.SavingEnded(outcome));
                    }
                },
                "saving");
        saving.setDaemon(true);
        saving.start();
        return new OrganEvent.SavingBegun();
    }

    /** Leaves the plans that do not have the new names yet as they are. */
    void stopSaving() {
        goesOn.set(false);
    }

    private boolean goesOn(int done, int of) {
        if (done % TOLD_EVERY == TOLD_EVERY - 1) {
            tell.accept(new OrganEvent.Rewriting(done, of));
        }
        return goesOn.get();
    }

    private Event save(Instrument next, FormerNames change, List<Effect> then) {
        if (open.isEmpty()) {
            return new Event.Failed("No organ is open.");
        }
        OrganOutcome outcome = library.saveChangedOrgan(open.get(), next, change, this::goesOn);
        if (outcome.saved() instanceof SaveOutcome.NotSaved failed) {
            return Refusal.of(failed);
        }
        if (outcome.saved() instanceof SaveOutcome.ChangedOnDisk changed) {
            return new Event.Failed(
                    changed.path() + " was changed by somebody else since it was opened. Leave it and open it again.");
        }
        open = Optional.of(outcome.open());
        drop();
        return new OrganEvent.OrganSaved(outcome.open().organ().instrument(), told(outcome), then);
    }

    /** What became of the plans, those that miss something first, and of what was kept of the organ. */
    private static String told(OrganOutcome outcome) {
        String plans = ofPlans(outcome);
        return outcome.forgotten().isEmpty()
                ? plans
                : plans + " Dropped with what they draw: " + String.join(", ", outcome.forgotten()) + ".";
    }

    private static String ofPlans(OrganOutcome outcome) {
        if (!outcome.troubles().isEmpty()) {
            return "Saved, but a plan could not be brought up to date: "
                    + outcome.troubles().get(0);
        }
        if (!outcome.missing().isEmpty()) {
            return "Saved. Plans that miss something say so in their notes: " + String.join("; ", outcome.missing())
                    + ".";
        }
        if (outcome.left() > 0) {
            return "Saved, but stopped with " + outcome.left() + " plans to go. They open all the same, and get the new"
                    + " names when they are saved.";
        }
        List<String> plans = outcome.rewritten().stream().distinct().toList();
        if (plans.size() > MOST_NAMED) {
            return "Saved, and the new names in " + plans.size() + " plans.";
        }
        return plans.isEmpty() ? "Saved." : "Saved, and the new names in " + String.join(", ", plans) + ".";
    }

    /** What is usually drawn on the organ, as its file has it. */
    List<Event> usual() {
        return open.stream().map(organ -> Workshop.usual(organ.organ())).toList();
    }

    private static Event usual(KnownOrgan organ) {
        try {
            return new PlanEvent.UsualOpened(organ.calibrated());
        } catch (IllegalArgumentException unknownMaterial) {
            return new Event.Failed(
                    organ.instrument().name() + " cannot be estimated: " + unknownMaterial.getMessage());
        }
    }

    /** Writes the organ, as its file has it, with what its organist knows without a meter. */
    Event kept(Experience experience) {
        if (open.isEmpty()) {
            return new Event.Failed("No organ is open.");
        }
        OpenOrgan next = open.get().with(open.get().organ().with(experience));
        SaveOutcome outcome = library.saveOrgan(next);
        if (outcome instanceof SaveOutcome.Saved saved) {
            open = Optional.of(new OpenOrgan(next.organ(), next.path(), saved.fingerprint()));
            return new PlanEvent.UsualKept(next.organ().calibrated(), Optional.empty());
        }
        return outcome instanceof SaveOutcome.NotSaved failed
                ? Refusal.of(failed)
                : new Event.Failed(next.path() + " was changed by somebody else since it was opened. Leave it and open"
                        + " it again.");
    }

    Event make(Instrument organ) throws BadFile {
        String id = library.freeInstrumentId(organ.name());
        SaveOutcome outcome = library.saveNewInstrument(library.newInstrument(id), organ);
        if (outcome instanceof SaveOutcome.NotSaved failed) {
            return Refusal.of(failed);
        }
        if (outcome instanceof SaveOutcome.ChangedOnDisk) {
            return new Event.Failed("A file of that name has just been made by somebody else. Try again.");
        }
        return new OrganEvent.OrganMade(open(id, "Saved as " + id + ".json."));
    }
}
