package versewind.terminal;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import versewind.store.Library;
import versewind.store.OpenPlan;

/**
 * Keeps unsaved work beside the plan's file without making a key wait for the disk: one thread writes, and of several
 * versions that wait only the last is written.
 */
final class AutosaveWriter implements AutoCloseable {

    private final Library library;
    private final AtomicReference<OpenPlan> waiting = new AtomicReference<>();
    private final ExecutorService writer = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "drafts");
        thread.setDaemon(true);
        return thread;
    });

    AutosaveWriter(Library library) {
        this.library = library;
    }

    /** Keeps a version, soon. */
    void keep(OpenPlan version) {
        waiting.set(version);
        writer.execute(this::write);
    }

    private void write() {
        OpenPlan version = waiting.getAndSet(null);
        if (version != null) {
            library.keepDraft(version);
        }
    }

    /** What waits is no longer wanted; returns when nothing is being written. */
    void forget() {
        waiting.set(null);
        settle();
    }

    /** Returns when all that waited is written. */
    void settle() {
        try {
            writer.submit(this::write).get();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("unsaved work could not be kept", failed.getCause());
        }
    }

    @Override
    public void close() {
        settle();
        writer.shutdown();
    }
}
