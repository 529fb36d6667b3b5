package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import versewind.workshop.OrganDraft;

/** Unsaved work, kept beside the files of plans and instruments. */
final class KeptWork {

    private final Disk disk;
    private final SafeFile safe;
    private final Organs organs;

    KeptWork(Disk disk, SafeFile safe, Organs organs) {
        this.disk = disk;
        this.safe = safe;
        this.organs = organs;
    }

    /** Keeps the work on a plan, in place of what was kept before. */
    SaveOutcome keep(OpenPlan open) {
        if (open.draft().filter(Draft.Unreadable.class::isInstance).isPresent()) {
            try {
                setAsideUnreadable(open.path());
            } catch (IOException trouble) {
                return new SaveOutcome.NotSaved(Drafts.pathOf(open.path()), SafeFile.sentence(trouble));
            }
        }
        return keep(open.path(), PlanWriter.bytes(open.plan(), open.instrument()));
    }

    private SaveOutcome keep(Path path, byte[] bytes) {
        return safe.save(Drafts.pathOf(path), bytes, now -> true, SafeFile.Durability.QUICK);
    }

    /** Work that cannot be read may still be saved by hand: it gets another name rather than being written over. */
    private void setAsideUnreadable(Path path) throws IOException {
        if (of(path).filter(Draft.Unreadable.class::isInstance).isEmpty()) {
            return;
        }
        int number = 1;
        while (disk.exists(Drafts.asidePathOf(path, number))) {
            number++;
        }
        disk.move(Drafts.pathOf(path), Drafts.asidePathOf(path, number));
    }

    /** The work that was kept beside a plan's file. */
    Optional<Draft> of(Path path) {
        Path draft = Drafts.pathOf(path);
        if (!disk.exists(draft)) {
            return Optional.empty();
        }
        try {
            PlanReader.Read read = organs.readPlan(draft);
            return Optional.of(new Draft.Kept(read.plan(), read.organ(), disk.modified(draft)));
        } catch (BadFile why) {
            return Optional.of(new Draft.Unreadable(why));
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
        Path path = Drafts.pathOf(open.path());
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
            disk.delete(Drafts.pathOf(path));
        } catch (IOException cannot) {
            // Work that is left over is offered again the next time; that is better than to stop here.
            return;
        }
    }
}
