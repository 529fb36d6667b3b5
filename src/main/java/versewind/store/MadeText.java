package versewind.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A text that was made from a plan, such as a sheet: it replaces only what was made the same way. */
final class MadeText {

    private final Disk disk;
    private final SafeFile safe;

    MadeText(Disk disk, SafeFile safe) {
        this.disk = disk;
        this.safe = safe;
    }

    /** Saves a text, unless what is there is neither empty nor holds the mark of texts that are made this way. */
    SaveOutcome save(Path path, String text, String mark) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Fingerprint there = Fingerprint.NO_FILE;
        if (disk.exists(path)) {
            try {
                byte[] old = FileBytes.read(disk, path);
                if (old.length > 0 && !new String(old, StandardCharsets.UTF_8).contains(mark)) {
                    return new SaveOutcome.NotSaved(
                            path, "There is a file of another kind under this name. Choose another.");
                }
                there = Fingerprint.of(old);
            } catch (BadFile unreadable) {
                return new SaveOutcome.NotSaved(
                        path, "It cannot be replaced: " + unreadable.problem() + ". Choose another name.");
            }
        }
        return safe.save(path, bytes, there::equals, SafeFile.Durability.FORCED);
    }
}
