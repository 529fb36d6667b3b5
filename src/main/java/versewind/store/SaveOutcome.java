package versewind.store;

import java.nio.file.Path;

/** The outcome of saving a file. In every case but the first, the file is unchanged. */
public sealed interface SaveOutcome {

    /**
     * The file is written.
     *
     * @param path the file
     * @param fingerprint what it holds now
     */
    record Saved(Path path, Fingerprint fingerprint) implements SaveOutcome {}

    /**
     * Another program has changed, made or deleted the file since it was read.
     *
     * @param path the file
     */
    record ChangedOnDisk(Path path) implements SaveOutcome {}

    /**
     * The file could not be written.
     *
     * @param path the file
     * @param why a whole sentence
     */
    record NotSaved(Path path, String why) implements SaveOutcome {

        /** The new contents could not be read again. */
        static NotSaved asItWouldNotOpen(Path path, BadFile unreadable) {
            return new NotSaved(
                    path, "It could not be opened again: " + unreadable.problem() + ". " + unreadable.remedy());
        }
    }
}
