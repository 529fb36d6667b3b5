package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The folder {@code bin/} of a library. Plans are moved there and back; nothing in it is ever taken away or written
 * over.
 */
public final class Bin {

    private final Path library;
    private final JsonFolder plans;
    private final JsonFolder bin;
    private final Disk disk;
    private final JournalFiles journals;
    private final Versions versions;

    Bin(Path library, JsonFolder plans, JsonFolder bin, Disk disk, JournalFiles journals, Versions versions) {
        this.library = library;
        this.journals = journals;
        this.versions = versions;
        this.plans = plans;
        this.bin = bin;
        this.disk = disk;
    }

    /**
     * A plan that lies in the bin.
     *
     * @param id what it was called among the plans
     * @param path where it lies now
     */
    public record Binned(String id, Path path) {}

    /** Moves a plan to the bin, and with it the unsaved work that is kept beside it. */
    public Binned put(String id) throws BadFile {
        requireAlone(plans.path(id));
        String there = bin.freeId(id);
        move(plans.path(id), bin.path(there), "moved to the bin");
        return new Binned(id, bin.path(there));
    }

    /** Moves a plan back; if another has its name by now, under a new one. */
    public String bringBack(Binned binned) throws BadFile {
        String id = plans.isTaken(binned.id()) ? plans.freeId(binned.id()) : binned.id();
        move(binned.path(), plans.path(id), "moved back");
        return id;
    }

    /** Moves work that was kept beside a plan to the bin, without the plan. */
    void putWork(Path file) throws BadFile {
        Path there = bin.path("work").resolveSibling(file.getFileName().toString());
        for (int i = 2; disk.exists(there); i++) {
            there = there.resolveSibling(file.getFileName() + "-" + i);
        }
        try {
            disk.makeFolder(there.toAbsolutePath().getParent());
            requireInside(there);
            disk.move(file, there);
        } catch (IOException trouble) {
            throw BadFile.whole(file, "the unsaved work could not be moved to the bin", SafeFile.sentence(trouble));
        }
    }

    private void requireInside(Path there) throws IOException {
        if (!disk.isInside(there, library)) {
            throw new NotAFileException("The folder bin is a link that leads out of the library.");
        }
    }

    /** A plan that somebody has open stays where it is. */
    private void requireAlone(Path plan) throws BadFile {
        List<Presence> others = journals.others(plan, Optional.empty());
        if (!others.isEmpty()) {
            throw BadFile.whole(plan, others.get(0).sentence(), "Try again when it is closed there.");
        }
    }

    /** Gives a plan and the work beside it another name that is free. */
    void rename(Path from, Path to) throws BadFile {
        requireAlone(from);
        move(from, to, "renamed");
    }

    private void move(Path from, Path to, String what) throws BadFile {
        try {
            disk.makeFolder(to.toAbsolutePath().getParent());
            requireInside(to);
            if (disk.exists(from)) {
                disk.move(from, to);
            }
            if (disk.exists(Autosaves.pathOf(from))) {
                disk.move(Autosaves.pathOf(from), Autosaves.pathOf(to));
            }
            for (Path journal : journals.all(from)) {
                disk.move(journal, to.resolveSibling(JournalFiles.renamed(journal, JsonFolder.stem(to))));
            }
            versions.move(from, to);
        } catch (IOException trouble) {
            throw BadFile.whole(from, "the plan could not be " + what, SafeFile.sentence(trouble));
        }
    }
}
