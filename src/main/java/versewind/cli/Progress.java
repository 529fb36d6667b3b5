package versewind.cli;

/** The progress of a command that is still running. */
public interface Progress {

    /** Shows nothing and is never interrupted. */
    Progress QUIET = new Progress() {
        @Override
        public void tell(String progress) {}

        @Override
        public boolean isInterrupted() {
            return false;
        }
    };

    /** From the first call on, Ctrl-C ends the command and not the process. */
    default void begin() {}

    /** Begins, and shows progress in place of what was shown before. */
    void tell(String progress);

    /** Returns true after Ctrl-C: the command should end with what it has found so far. */
    boolean isInterrupted();
}
