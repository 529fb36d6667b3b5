package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import versewind.schema.OrganDraft;

/** The drafts of instruments, kept beside their files. */
final class OrganAutosave {

    private final Disk disk;
    private final SafeFile safe;

    OrganAutosave(Disk disk, SafeFile safe) {
        this.disk = disk;
        this.safe = safe;
    }

    /** Keeps the draft of an instrument, in place of what was kept before. */
    SaveOutcome keep(OpenOrgan open, OrganDraft draft) {
        return safe.save(
                Autosaves.pathOf(open.path()),
                OrganDraftFile.bytes(draft, open.fingerprint()),
                now -> true,
                SafeFile.Durability.QUICK);
    }

    /** The draft that was kept beside an instrument's file, if there is one that can be read and is another. */
    Optional<OrganDraft> of(OpenOrgan open) {
        Path path = Autosaves.pathOf(open.path());
        if (!disk.exists(path)) {
            return Optional.empty();
        }
        try {
            OrganDraft draft =
                    OrganDraftFile.read(path, disk.readOwn(path, JsonTree.LARGEST_FILE + 1), open.fingerprint());
            return Optional.of(draft)
                    .filter(each -> !each.equals(OrganDraft.of(open.organ().instrument())));
        } catch (BadFile | IOException unreadable) {
            return Optional.empty();
        }
    }

    /** Takes away what was kept beside a file, if there is anything. */
    void drop(Path path) {
        try {
            disk.delete(Autosaves.pathOf(path));
        } catch (IOException cannot) {
            // Work that is left over is offered again the next time; that is better than to stop here.
            return;
        }
    }
}
