package versewind.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * Shows progress on one line of the standard error. After Ctrl-C the command ends with what it has found so far, and
 * the process exits only when that is written.
 */
public final class ConsoleProgress implements Progress {

    private static final int PATIENCE_S = 10;
    private static final String TO_THE_START = "\r";

    private final Consumer<String> progressLine;
    private final Consumer<String> standardError;
    private final AtomicBoolean isInterrupted = new AtomicBoolean();
    private final CountDownLatch written = new CountDownLatch(1);
    private boolean isBegun;
    private boolean isTold;

    /**
     * Shows progress.
     *
     * @param progressLine writes progress, each time over the line before; does nothing where there is no terminal
     * @param standardError writes errors
     */
    public ConsoleProgress(Consumer<String> progressLine, Consumer<String> standardError) {
        this.progressLine = progressLine;
        this.standardError = standardError;
    }

    @Override
    public void begin() {
        if (!isBegun) {
            isBegun = true;
            Runtime.getRuntime().addShutdownHook(new Thread(this::interrupt));
        }
    }

    @Override
    public void tell(String progress) {
        begin();
        isTold = true;
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

    /** Ends the progress line, if there is one, before other output. */
    public void endLine() {
        if (isTold) {
            progressLine.accept("\n");
        }
    }

    /** Allows the process to exit, once everything is written. */
    public void end() {
        written.countDown();
    }
}
