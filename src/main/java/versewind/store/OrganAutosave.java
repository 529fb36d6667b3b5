package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import versewind.schema.OrganDraft;

/** Unsaved work, kept beside the files of plans and instruments. */
final class OrganAutosave {

    private final Disk disk;
    private final SafeFile safe;
    private final Organs organs;

    OrganAutosave(Disk disk, SafeFile safe, Organs organs) {
        this.disk = disk;
        this.safe = safe;
        this.organs = organs;
    }

    /** Keeps the work on a plan, in place of what was kept before. */
    SaveOutcome keep(OpenPlan open) {
        if (open.draft().filter(Autosave.Unreadable.class::isInstance).isPresent()) {
            try {
                setAsideUnreadable(open.path());
            } catch (IOException trouble) {
                return new SaveOutcome.NotSaved(Autosaves.pathOf(open.path()), SafeFile.sentence(trouble));
            }
        }
        return keep(open.path(), PlanJson.bytes(open.plan(), open.instrument()));
    }

    private SaveOutcome keep(Path path, byte[] bytes) {
        return safe.save(Autosaves.pathOf(path), bytes, now -> true, SafeFile.Durability.QUICK);
    }

    /** Work that cannot be read may still be saved by hand: it gets another name rather than being written over. */
    private void setAsideUnreadable(Path path) throws IOException {
        if (of(path).filter(Autosave.Unreadable.class::isInstance).isEmpty()) {
            return;
        }
        int number = 1;
        while (disk.exists(Autosaves.asidePathOf(path, number))) {
            number++;
        }
        disk.move(Autosaves.pathOf(path), Autosaves.asidePathOf(path, number));
    }

    /** The work that was kept beside a plan's file. */
    Optional<Autosave> of(Path path) {
        Path draft = Autosaves.pathOf(path);
        if (!disk.exists(draft)) {
            return Optional.empty();
        }
        try {
            PlanJson.Read read = organs.readPlan(draft);
            return Optional.of(new Autosave.Kept(read.plan(), read.organ(), disk.modified(draft)));
        } catch (BadFile why) {
            return Optional.of(new Autosave.Unreadable(why));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /** Keeps the draft of an instrument, in place of what was kept before. */
    SaveOutcome keep(OpenOrgan open, OrganDraft draft) {
        return keep(open.path(), OrganDraftFile.bytes(draft, open.fingerprint()));
    }

    /** The draft that was kept beside an instrument's file, if there is one that can be read and is another. */
    Optional<OrganDraft> of(OpenOrgan open) {
        Path path = Autosaves.pathOf(open.path());
        if (!disk.exists(path)) {
            return Optional.empty();
        }
        try {
            OrganDraft draft = OrganDraftFile.read(path, FileBytes.read(disk, path), open.fingerprint());
            return Optional.of(draft)
                    .filter(each -> !each.equals(OrganDraft.of(open.organ().instrument())));
        } catch (BadFile unreadable) {
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
