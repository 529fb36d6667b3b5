package versewind.store;

import java.io.IOException;
import java.nio.file.Path;

/**
 * The folder {@code bin/} of a library. Plans are moved there and back; nothing in it is ever taken away or written
 * over.
 */
public final class Bin {

    private final JsonFolder plans;
    private final JsonFolder bin;
    private final Disk disk;

    Bin(JsonFolder plans, JsonFolder bin, Disk disk) {
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

    /** Gives a plan and the work beside it another name that is free. */
    void rename(Path from, Path to) throws BadFile {
        move(from, to, "renamed");
    }

    private void move(Path from, Path to, String what) throws BadFile {
        try {
            disk.makeFolder(to.toAbsolutePath().getParent());
            if (disk.exists(from)) {
                disk.move(from, to);
            }
            if (disk.exists(Autosaves.pathOf(from))) {
                disk.move(Autosaves.pathOf(from), Autosaves.pathOf(to));
            }
        } catch (IOException trouble) {
            throw BadFile.whole(from, "the plan could not be " + what, SafeFile.sentence(trouble));
        }
    }
}
