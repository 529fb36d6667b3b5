package versewind.terminal;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import versewind.plan.Plan;
import versewind.plan.Undo;
import versewind.screen.state.Event;
import versewind.store.Autosave;
import versewind.store.BadFile;
import versewind.store.Journal;
import versewind.store.Library;
import versewind.store.OpenPlan;
import versewind.store.Presence;

/**
 * Keeps the edits of the open plan in its journal: each is written before it is painted, and is on the medium within a
 * second. Whatever cannot be kept is said at once.
 */
final class JournalWriter implements AutoCloseable {

    private static final long FORCED_AFTER_MS = 500;

    private final Library library;
    private final Consumer<Event> tell;
    private final AtomicBoolean isWaiting = new AtomicBoolean();
    private final ScheduledExecutorService forcing = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "journal");
        thread.setDaemon(true);
        return thread;
    });
    private Optional<Journal> journal = Optional.empty();
    private Optional<Future<?>> next = Optional.empty();
    private boolean isToldElsewhere;

    JournalWriter(Library library, Consumer<Event> tell) {
        this.library = library;
        this.tell = tell;
    }

    /** Begins the journal of a plan, and returns who else has it open. */
    List<Presence> begin(OpenPlan open) {
        journal.ifPresent(Journal::close);
        Journal begun = library.journal(open);
        journal = Optional.of(begun);
        isToldElsewhere = false;
        return begun.others();
    }

    /** Keeps an edit; what comes of it is what there is to be said. */
    List<Event> keep(Undo<Plan> history) {
        if (journal.isEmpty()) {
            return List.of();
        }
        Journal open = journal.get();
        try {
            open.record(history);
        } catch (IOException trouble) {
            return List.of(new Event.Failed("This edit is not kept if the program is cut off, neither beside the plan"
                    + " nor elsewhere. Save it soon. " + Journal.sentence(trouble)));
        }
        if (isWaiting.compareAndSet(false, true)) {
            next = Optional.of(forcing.schedule(() -> force(open), FORCED_AFTER_MS, TimeUnit.MILLISECONDS));
        }
        if (open.isElsewhere() && !isToldElsewhere) {
            isToldElsewhere = true;
            return List.of(new Event.Failed("Nothing can be written beside the plan. Edits are kept in "
                    + open.path().orElseThrow().getParent() + " until you save."));
        }
        return List.of();
    }

    private void force(Journal open) {
        isWaiting.set(false);
        try {
            open.force();
        } catch (IOException trouble) {
            tell.accept(new Event.Failed("The last edits are lost if the power goes. " + Journal.sentence(trouble)));
        }
    }

    /** There is nothing more to keep: the plan is saved, or as it was saved. */
    void clear(OpenPlan saved) {
        if (journal.isEmpty()) {
            return;
        }
        try {
            journal.get().clear(saved);
        } catch (IOException trouble) {
            // The edits are offered again the next time, though they are not wanted or saved already.
            tell.accept(new Event.Failed("Edits that are no longer needed stay kept. " + Journal.sentence(trouble)));
        }
    }

    /** Lets go of the plan. */
    void end() {
        journal.ifPresent(Journal::close);
        journal = Optional.empty();
    }

    /** Takes up work that was left over. */
    OpenPlan restore(OpenPlan open, Autosave.Kept work) throws BadFile {
        return library.restore(open, work, journal.orElseThrow());
    }

    @Override
    public void close() {
        next.ifPresent(each -> each.cancel(false));
        forcing.shutdown();
        journal.ifPresent(open -> {
            force(open);
            open.close();
        });
    }
}
