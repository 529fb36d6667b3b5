package versewind.proposal;

/** Somebody who waits for a long search, and may lose patience. */
public interface SearchProgress {

    /** Whether to go on. */
    boolean goesOn();

    /** So many verses are searched, of so many. */
    void searched(int verses, int of);

    /** Somebody who waits to the end. */
    SearchProgress PATIENT = new SearchProgress() {
        @Override
        public boolean goesOn() {
            return true;
        }

        @Override
        public void searched(int verses, int of) {}
    };
}
