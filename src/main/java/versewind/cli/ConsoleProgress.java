package versewind.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * Somebody who waits at the terminal: reads how far it is on one line of the standard error, and may press Ctrl-C. Then the
 * command ends with what it has, and the process goes only when that is written.
 */
public final class ConsoleProgress implements Progress {

    private static final int PATIENCE_S = 10;
    private static final String TO_THE_START = "\r";

    private final Consumer<String> progressLine;
    private final Consumer<String> standardError;
    private final AtomicBoolean isInterrupted = new AtomicBoolean();
    private final CountDownLatch written = new CountDownLatch(1);
    private boolean isBegun;

    /**
     * Somebody who waits.
     *
     * @param progressLine where progress is written, each time over what was there; nowhere, where no terminal shows it
     * @param standardError where trouble is written
     */
    public ConsoleProgress(Consumer<String> progressLine, Consumer<String> standardError) {
        this.progressLine = progressLine;
        this.standardError = standardError;
    }

    /** From the first word on Ctrl-C does not end the process any more, but what is done. */
    @Override
    public void tell(String progress) {
        if (!isBegun) {
            isBegun = true;
            Runtime.getRuntime().addShutdownHook(new Thread(this::interrupt));
        }
        progressLine.accept(TO_THE_START + progress);
    }

    private void interrupt() {
        isInterrupted.set(true);
        try {
            if (!written.await(PATIENCE_S, TimeUnit.SECONDS)) {
                standardError.accept("\nversewind: The command did not stop in time.\n");
            }
        } catch (InterruptedException itself) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean isInterrupted() {
        return isInterrupted.get();
    }

    /** Ends the line of progress, if there is one, before anything else is written. */
    public void endLine() {
        if (isBegun) {
            progressLine.accept("\n");
        }
    }

    /** Everything is written: the process may go. */
    public void end() {
        written.countDown();
    }
}
