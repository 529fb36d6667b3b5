package versewind.terminal;

import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import versewind.store.BadFile;
import versewind.store.Catalogue;
import versewind.store.PlanFile;

/** Reads what the first screen of the library shows while the terminal is still being asked what it can do. */
final class LookAhead {

    private final FutureTask<List<PlanFile>> files;

    private LookAhead(FutureTask<List<PlanFile>> files) {
        this.files = files;
    }

    /**
     * Begins in a thread of its own.
     *
     * @param catalogue which keeps the heads that are read
     * @param shown how many plans are soon to be shown
     */
    static LookAhead begin(Catalogue catalogue, int shown) {
        FutureTask<List<PlanFile>> task = new FutureTask<>(() -> {
            List<PlanFile> files = catalogue.files();
            files.stream().limit(shown).forEach(catalogue::read);
            return files;
        });
        Thread thread = new Thread(task, "look ahead");
        thread.setDaemon(true);
        thread.start();
        return new LookAhead(task);
    }

    /** The files of all plans; waits for them. */
    List<PlanFile> files() throws BadFile {
        try {
            return files.get();
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
            return List.of();
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof BadFile bad) {
                throw bad;
            }
            throw new IllegalStateException(failed.getCause());
        }
    }
}
