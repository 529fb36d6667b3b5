package versewind.cli;

/** What can be said, and heard, while a command is still at work. */
public interface Progress {

    /** Nobody listens, and nobody interrupts. */
    Progress QUIET = new Progress() {
        @Override
        public void tell(String progress) {}

        @Override
        public boolean isInterrupted() {
            return false;
        }
    };

    /** Says how far it is; it takes the place of what was said before. */
    void tell(String progress);

    /** Whether somebody wants it to end with what it has. */
    boolean isInterrupted();
}
