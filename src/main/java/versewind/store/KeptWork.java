package versewind.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import versewind.plan.Plan;
import versewind.plan.Undo;

/** Unsaved work on plans, left over by processes that were cut off: found, taken up, discarded. */
final class KeptWork {

    /** So many steps can be undone one by one; those before them are no longer known. */
    private static final int MOST_STEPS = 1000;

    private final Disk disk;
    private final JournalFiles files;
    private final Organs organs;
    private final Bin bin;

    KeptWork(Disk disk, JournalFiles files, Organs organs, Bin bin) {
        this.disk = disk;
        this.files = files;
        this.organs = organs;
        this.bin = bin;
    }

    /** The latest work that was left over. Work that is in the plan's file already is taken away. */
    Optional<Autosave> of(Path path, Optional<Plan> saved) {
        for (JournalFiles.Found each : files.left(path)) {
            Autosave found = read(path, each);
            if ((found instanceof Autosave.Unreadable && isUnbegun(each.path())) || isIn(saved, found)) {
                files.delete(each.path());
            } else {
                return Optional.of(found);
            }
        }
        return before(path, saved).filter(found -> !isIn(saved, found));
    }

    /** True if the process was cut off while it wrote its first step. */
    private boolean isUnbegun(Path journal) {
        try {
            return JournalText.isUnbegun(files.read(journal));
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static boolean isIn(Optional<Plan> saved, Autosave found) {
        return found instanceof Autosave.Kept kept && saved.equals(Optional.of(kept.plan()));
    }

    private Autosave read(Path path, JournalFiles.Found journal) {
        try {
            Optional<JournalText.Replayed> replayed = JournalText.replay(files.read(journal.path()));
            if (replayed.isEmpty()) {
                return unreadable(journal.path(), "nothing in it is whole");
            }
            PlanJson.Read now =
                    read(path, journal.path(), replayed.get().steps().now());
            Undo<Plan> history = new Undo<>(
                    now.plan(),
                    Optional.empty(),
                    plans(path, journal.path(), replayed.get().steps().past()),
                    plans(path, journal.path(), replayed.get().steps().future()));
            return new Autosave.Kept(
                    journal.path(),
                    history,
                    now.organ(),
                    journal.by(),
                    journal.written(),
                    Fingerprint.ofText(replayed.get().base()));
        } catch (BadFile why) {
            return new Autosave.Unreadable(journal.path(), why);
        } catch (IOException trouble) {
            return unreadable(journal.path(), SafeFile.sentence(trouble));
        }
    }

    private static Autosave unreadable(Path file, String why) {
        return new Autosave.Unreadable(file, BadFile.whole(file, "it cannot be read: " + why, ""));
    }

    private PlanJson.Read read(Path plan, Path journal, String text) throws BadFile {
        return PlanJson.read(journal, Fingerprint.ofText(text).bytes(), (id, found) -> organs.of(plan, id, found));
    }

    /** As many steps as can be read. */
    private List<Plan> plans(Path plan, Path journal, List<String> texts) {
        List<Plan> plans = new ArrayList<>();
        try {
            for (String each : texts.subList(0, Math.min(MOST_STEPS, texts.size()))) {
                plans.add(read(plan, journal, each).plan());
            }
        } catch (BadFile unreadable) {
            return plans;
        }
        return plans;
    }

    /** Work kept by versions of the program that kept one plan without its steps. */
    private Optional<Autosave> before(Path path, Optional<Plan> saved) {
        Path file = Autosaves.pathOf(path);
        if (!disk.exists(file)) {
            return Optional.empty();
        }
        try {
            byte[] bytes = disk.readOwn(file, JsonTree.LARGEST_FILE + 1);
            PlanJson.Read read = PlanJson.read(file, bytes, (id, found) -> organs.of(path, id, found));
            Fingerprint base =
                    disk.exists(path) ? Fingerprint.of(disk.read(path, JsonTree.LARGEST_FILE)) : Fingerprint.NO_FILE;
            Instant kept = disk.modified(file);
            Presence by = new Presence(disk.owner(file), "", 0, kept);
            Undo<Plan> history =
                    new Undo<>(read.plan(), Optional.empty(), saved.stream().toList(), List.of());
            return Optional.of(new Autosave.Kept(file, history, read.organ(), by, kept, base));
        } catch (BadFile why) {
            return Optional.of(new Autosave.Unreadable(file, why));
        } catch (IOException trouble) {
            return Optional.of(unreadable(file, SafeFile.sentence(trouble)));
        }
    }

    /**
     * Takes up work that was left over: it is written into a journal, then its own file is taken away.
     *
     * @return the plan as it was when that work began, to be saved again
     */
    OpenPlan restore(OpenPlan open, Autosave.Kept kept, Journal journal) throws IOException {
        OpenPlan began = new OpenPlan(open.plan(), kept.organ(), open.path(), kept.base(), Optional.empty());
        OpenPlan restored = kept.base().equals(open.fingerprint()) ? began : began.with(first(kept));
        byte[] bytes = files.read(kept.file());
        Optional<JournalText.Replayed> replayed =
                JournalFiles.idOf(kept.file()).isPresent() ? JournalText.replay(bytes) : Optional.empty();
        if (replayed.isPresent()) {
            journal.adopt(bytes, replayed.get(), restored, kept.history());
        } else {
            journal.clear(restored);
            journal.record(kept.history());
            journal.force();
        }
        files.delete(kept.file());
        return restored;
    }

    private static Plan first(Autosave.Kept kept) {
        List<Plan> past = kept.history().past();
        return past.isEmpty() ? kept.plan() : past.get(past.size() - 1);
    }

    /** Moves work that is not wanted to the bin. */
    void discard(Autosave kept) throws BadFile {
        bin.putWork(kept.file());
    }
}
