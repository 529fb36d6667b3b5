package versewind.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import versewind.schema.ServiceFields;

/**
 * The journals beside plans, {@code plans/.harvest.4711-9a0b1c2d.journal}: one for each process that has a plan open or
 * was cut off. The number of the process and a random one make the name, so that nobody can put a link in its place.
 * Where nothing can be written beside a plan, its journal lies in a folder of the user's.
 */
final class JournalFiles {

    private static final Pattern NAME = Pattern.compile("\\.(.+)\\.\\d+-[0-9a-f]{8}\\.journal");

    /** No journal is read that is larger than this, in bytes. */
    private static final int LARGEST = 3 * JsonTree.LARGEST_FILE;

    private static final Path HOST = Path.of("/proc/sys/kernel/hostname");

    private final Disk disk;
    private final Optional<Path> elsewhere;

    JournalFiles(Disk disk, Optional<Path> elsewhere) {
        this.disk = disk;
        this.elsewhere = elsewhere;
    }

    /** A new file, where it is, and whether that is elsewhere than beside its plan. */
    record Made(Path path, Disk.Appending file, boolean isElsewhere) {}

    /**
     * The journal of another process.
     *
     * @param path its file
     * @param by who wrote it
     * @param written when, at last
     */
    record Found(Path path, Presence by, Instant written) {}

    /** The plan's id, if a file is a journal. */
    static Optional<String> idOf(Path file) {
        Matcher matcher = NAME.matcher(file.getFileName().toString());
        return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
    }

    /** The name of a journal after its plan was renamed. */
    static String renamed(Path journal, String id) {
        String name = journal.getFileName().toString();
        return "." + id + name.substring(idOf(journal).orElseThrow().length() + 1);
    }

    /** True if a file is a journal with steps in it; looks at its name and length only. */
    boolean hasSteps(Path file) {
        return idOf(file).isPresent() && disk.sizeOfOwn(file) > JournalText.HEAD;
    }

    /** This process. */
    static Presence us() {
        String host = "";
        try {
            host = Files.isReadable(HOST) ? Files.readString(HOST).strip() : "";
        } catch (IOException nameless) {
            host = "";
        }
        return new Presence(
                System.getProperty("user.name", ""),
                host,
                ProcessHandle.current().pid(),
                Instant.now());
    }

    Made make(Path plan) throws IOException {
        return make(plan, folder(plan), JsonFolder.stem(plan), false);
    }

    Made makeElsewhere(Path plan) throws IOException {
        return make(plan, elsewhere.orElseThrow(() -> new IOException("no other folder")), distinct(plan), true);
    }

    private Made make(Path plan, Path folder, String id, boolean isElsewhere) throws IOException {
        disk.makeFolder(folder);
        String name = String.format(
                ".%s.%d-%08x.journal",
                id, ProcessHandle.current().pid(), ThreadLocalRandom.current().nextInt());
        Path path = folder.resolve(name);
        return new Made(path, disk.append(path, Optional.of(plan).filter(disk::exists)), isElsewhere);
    }

    private static Path folder(Path plan) {
        return plan.toAbsolutePath().normalize().getParent();
    }

    /** A name that tells plans of one name in several folders apart. */
    private static String distinct(Path plan) {
        CRC32 sum = new CRC32();
        sum.update(folder(plan).toString().getBytes(StandardCharsets.UTF_8));
        return JsonFolder.stem(plan) + "~" + Long.toHexString(sum.getValue());
    }

    /** False if a journal was taken away, or something else put in its place. */
    boolean hasLength(Made made, long length) {
        return disk.sizeOfOwn(made.path()) == length;
    }

    /** Lets go of a journal and takes it away. */
    void remove(Made made) {
        delete(made.path());
        leave(made);
    }

    /** What is in it is of no more use, or is in another: where it cannot be taken away it is in nobody's way. */
    void delete(Path journal) {
        try {
            disk.delete(journal);
        } catch (IOException cannot) {
            return;
        }
    }

    static void leave(Made made) {
        try {
            made.file().close();
        } catch (IOException unwritten) {
            // The steps were written before; there is nothing left to be done.
            return;
        }
    }

    /** Who else has a plan open. */
    List<Presence> others(Path plan, Optional<Path> ours) {
        return all(plan).stream()
                .filter(each -> !Optional.of(each).equals(ours) && disk.isHeld(each))
                .map(each -> found(each).by())
                .toList();
    }

    /** The journals of processes that have ended, the latest first; those without a step are taken away. */
    List<Found> left(Path plan) {
        List<Found> left = new ArrayList<>();
        for (Path each : all(plan)) {
            if (!disk.isHeld(each)) {
                if (hasSteps(each)) {
                    left.add(found(each));
                } else {
                    delete(each);
                }
            }
        }
        left.sort((one, other) -> other.written().compareTo(one.written()));
        return left;
    }

    /** Every journal of a plan, also those that are held. */
    List<Path> all(Path plan) {
        List<Path> all = new ArrayList<>(named(folder(plan), JsonFolder.stem(plan)));
        elsewhere.ifPresent(folder -> all.addAll(named(folder, distinct(plan))));
        return all;
    }

    private List<Path> named(Path folder, String id) {
        try {
            return disk.list(folder).stream()
                    .filter(each -> idOf(each).filter(id::equals).isPresent())
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    private Found found(Path path) {
        String owner = disk.owner(path);
        try {
            Instant written = disk.modified(path);
            return new Found(path, JournalText.presence(disk.readOwn(path, JournalText.HEAD), owner, written), written);
        } catch (IOException gone) {
            return new Found(path, new Presence(owner, "", 0, Instant.EPOCH), Instant.EPOCH);
        }
    }

    /** True if the work in a journal was begun on a plan for an instrument; also if that cannot be read. */
    boolean isFor(Path journal, String instrument) {
        try {
            String base = JournalText.replay(read(journal))
                    .map(JournalText.Replayed::base)
                    .orElse("");
            return base.isEmpty()
                    || JsonTree.read(journal, Fingerprint.ofText(base).bytes())
                            .hasText(ServiceFields.INSTRUMENT.name(), instrument);
        } catch (BadFile | IOException unreadable) {
            return true;
        }
    }

    byte[] read(Path journal) throws IOException {
        return disk.readOwn(journal, LARGEST);
    }
}
