package versewind.store;

import java.nio.file.Path;

/** What became of saving a file. In every case but the first, the file is as it was. */
public sealed interface SaveOutcome {

    /**
     * The file is written.
     *
     * @param path the file
     * @param fingerprint what it holds now
     */
    record Saved(Path path, Fingerprint fingerprint) implements SaveOutcome {}

    /**
     * Somebody else has changed, made or taken away the file since it was read.
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

        /** What would have been written cannot be read. */
        static NotSaved asItWouldNotOpen(Path path, BadFile unreadable) {
            return new NotSaved(
                    path, "It would not open again, as " + unreadable.problem() + ". " + unreadable.remedy());
        }
    }
}
