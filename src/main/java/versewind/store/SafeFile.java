package versewind.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import versewind.organ.Quoted;

/**
 * Writes a file so that, whenever the program or the computer stops, the file is the old or the new one: everything
 * goes into a temporary file beside it, is forced to the medium, and takes the file's name in one step.
 */
final class SafeFile {

    /** How long to wait for the medium. */
    enum Durability {
        FORCED,
        /** For what is written often and may be lost: whole or not there, but not necessarily on the medium yet. */
        QUICK
    }

    private static final String ENDING = ".saving";
    private static final AtomicLong COUNTER = new AtomicLong();

    /** A file that another process has just written is not taken for a leftover: it may live on another computer. */
    private static final Duration LONGEST_SAVING = Duration.ofMinutes(10);

    /** Pauses that are longer together than it takes to read a plan and to rename a file. */
    private static final int PATIENCE = 1000;

    /** One save at a time, so that a temporary file of this process is always a leftover. */
    private static final Object TURN = new Object();

    /** Where nobody has to wait. */
    private static final Disk.Turn NO_TURN = () -> {};

    /** Apart, so that reading a plan does not wait for it. */
    private static final class Temporary {
        /** Tells this process from one of the same number on another computer that shares the folder. */
        static final String US = ProcessHandle.current().pid() + "-"
                + Integer.toHexString(ThreadLocalRandom.current().nextInt());

        static final Pattern NAME = Pattern.compile("\\..+\\.((\\d{1,18})-[0-9a-f]+)(-\\d+)?" + Pattern.quote(ENDING));
    }

    /** What Linux and others say of folders that can never be forced: EINVAL, ENOTSUP, EISDIR, EACCES. */
    private static final Pattern CANNOT =
            Pattern.compile("(?i)invalid argument|not supported|is a directory|permission|denied");

    /** What Linux and others say of a disk that is mounted so: EROFS. */
    private static final String READ_ONLY = "Read-only file system";

    private final Disk disk;
    private final Path library;

    /**
     * On a disk.
     *
     * @param library the folder out of which no link is followed
     */
    SafeFile(Disk disk, Path library) {
        this.disk = disk;
        this.library = library;
    }

    /**
     * Replaces or makes a file.
     *
     * @param file its name; a symbolic link is followed within the library, and replaced by what is only kept quickly
     * @param bytes what it holds then
     * @param mayReplace asked at the last moment about what is there now
     * @param durability whether to wait for the medium
     */
    SaveOutcome save(Path file, byte[] bytes, Predicate<Fingerprint> mayReplace, Durability durability) {
        return save(file, bytes, mayReplace, durability, file);
    }

    /**
     * The same, of a file that is new.
     *
     * @param model the file whose mode a new one has
     */
    SaveOutcome save(Path file, byte[] bytes, Predicate<Fingerprint> mayReplace, Durability durability, Path model) {
        synchronized (TURN) {
            try {
                return replace(file, bytes, mayReplace, durability, model);
            } catch (IOException trouble) {
                return new SaveOutcome.NotSaved(file, sentence(trouble));
            }
        }
    }

    /** Saves a text, unless what is there is neither empty nor holds the mark of texts that are made this way. */
    SaveOutcome saveMade(Path path, String text, String mark, Path model) {
        Path folder = path.toAbsolutePath().getParent();
        if (folder != null && !disk.exists(folder)) {
            return new SaveOutcome.NotSaved(
                    path, "There is no folder " + folder + ". Create it first, or choose another name.");
        }
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Fingerprint there = Fingerprint.NO_FILE;
        if (disk.exists(path)) {
            try {
                byte[] old = FileBytes.read(disk, path);
                if (old.length > 0 && !new String(old, StandardCharsets.UTF_8).contains(mark)) {
                    return new SaveOutcome.NotSaved(path, "A file of another kind has this name. Choose another name.");
                }
                there = Fingerprint.of(old);
            } catch (BadFile unreadable) {
                return new SaveOutcome.NotSaved(
                        path, "It cannot be replaced: " + unreadable.problem() + ". Choose another name.");
            }
        }
        return save(path, bytes, there::equals, Durability.FORCED, model);
    }

    private Path target(Path file, Durability durability) throws IOException {
        Path here = file.toAbsolutePath();
        Path target = durability == Durability.QUICK ? here : disk.follow(here);
        if (!target.equals(here) && !disk.isInside(target, library)) {
            throw new NotAFileException(
                    "It is a link that leads out of the library, to " + target + ". Save under another name.");
        }
        return target;
    }

    private SaveOutcome replace(
            Path file, byte[] bytes, Predicate<Fingerprint> mayReplace, Durability durability, Path model)
            throws IOException {
        Path target = target(file, durability);
        Path folder = target.getParent();
        disk.makeFolder(folder);
        clean(target);
        boolean there = disk.exists(target);
        if (there && !disk.isWritable(target)) {
            throw new AccessDeniedException(target.toString());
        }
        Path temporary = target.resolveSibling(temporaryName(target));
        try {
            Optional<Path> like =
                    there ? Optional.of(target) : Optional.of(model).filter(each -> !each.equals(file));
            disk.create(temporary, like.filter(disk::exists));
            disk.write(temporary, bytes);
            if (durability == Durability.FORCED) {
                disk.force(temporary);
            }
            Optional<Disk.Turn> turn = durability == Durability.FORCED ? turn(target, like) : Optional.of(NO_TURN);
            if (turn.isEmpty()) {
                disk.delete(temporary);
                return new SaveOutcome.NotSaved(file, "Another program is saving this file. Save again.");
            }
            try {
                if (!mayReplace.test(fingerprint(target))) {
                    disk.delete(temporary);
                    return new SaveOutcome.ChangedOnDisk(file);
                }
                disk.move(temporary, target);
            } finally {
                boolean isGone = isGivenBack(turn.get());
                if (!isGone) {
                    isGivenBack(turn.get()); // a second time, or the next to save waits
                }
            }
        } catch (IOException trouble) {
            deleteAfter(temporary, trouble);
            throw trouble;
        }
        if (durability == Durability.FORCED) {
            forceFolder(folder);
        }
        return new SaveOutcome.Saved(file, Fingerprint.of(bytes));
    }

    /**
     * Waits until no other program is between looking at the file and replacing it, and keeps others waiting by a file
     * that only one can make. What a program leaves that ended there is taken over after {@link #PATIENCE}.
     *
     * @param like the file whose mode it has, so that whoever may save may take it over
     * @return to be given back; empty where another program does not end
     */
    private Optional<Disk.Turn> turn(Path target, Optional<Path> like) throws IOException {
        Path turn = target.resolveSibling(prefix(target) + "turn" + ENDING);
        Optional<Instant> made = Optional.empty();
        Optional<Disk.Turn> ours = Optional.empty();
        int since = 0;
        for (int tried = 0; tried < 3 * PATIENCE && ours.isEmpty(); tried++) {
            try {
                disk.create(turn, like.filter(disk::exists));
                ours = made(turn);
            } catch (FileAlreadyExistsException another) {
                Optional<Instant> now = modified(turn);
                if (!now.equals(made)) {
                    made = now;
                    since = tried;
                } else if (tried - since > PATIENCE) {
                    ours = leftOver(turn);
                    since = tried;
                }
                disk.pause();
            }
        }
        return ours;
    }

    private Optional<Disk.Turn> made(Path turn) throws IOException {
        try {
            return disk.hold(turn);
        } catch (IOException trouble) {
            deleteAfter(turn, trouble);
            throw trouble;
        }
    }

    /** What only another may open, and leaves, keeps nobody from saving. */
    private Optional<Disk.Turn> leftOver(Path turn) {
        try {
            return disk.hold(turn);
        } catch (IOException notForUs) {
            return Optional.of(NO_TURN);
        }
    }

    private static boolean isGivenBack(Disk.Turn turn) {
        try {
            turn.giveBack();
            return true;
        } catch (IOException trouble) {
            return false;
        }
    }

    private Optional<Instant> modified(Path file) {
        try {
            return Optional.of(disk.modified(file));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    private Fingerprint fingerprint(Path target) throws IOException {
        return disk.exists(target) ? Fingerprint.of(disk.read(target, JsonTree.LARGEST_FILE + 1)) : Fingerprint.NO_FILE;
    }

    /** A file system that cannot force a folder at all is no reason to call a file unsaved; one that fails is. */
    private void forceFolder(Path folder) throws IOException {
        try {
            disk.forceFolder(folder);
        } catch (IOException trouble) {
            if (!CANNOT.matcher(String.valueOf(trouble.getMessage())).find()) {
                throw new IOException(
                        trouble.getMessage() + "; the file is written, but may be lost if the power goes", trouble);
            }
        }
    }

    private void deleteAfter(Path temporary, IOException trouble) {
        try {
            disk.delete(temporary);
        } catch (IOException more) {
            trouble.addSuppressed(more);
        }
    }

    /** Takes away what a program that was stopped in the middle of saving has left behind. */
    private void clean(Path target) throws IOException {
        for (Path each : disk.list(target.getParent())) {
            if (isLeftover(target, each)) {
                disk.delete(each);
            }
        }
    }

    private static String prefix(Path target) {
        return "." + target.getFileName() + ".";
    }

    private static String temporaryName(Path target) {
        return prefix(target) + Temporary.US + "-" + COUNTER.incrementAndGet() + ENDING;
    }

    private boolean isLeftover(Path target, Path file) {
        String name = file.getFileName().toString();
        Matcher matcher = Temporary.NAME.matcher(name);
        if (!matcher.matches() || !name.startsWith(prefix(target))) {
            return false;
        }
        return matcher.group(1).equals(Temporary.US)
                || (ProcessHandle.of(Long.parseLong(matcher.group(2))).isEmpty() && isOld(file));
    }

    private boolean isOld(Path file) {
        return modified(file)
                .filter(made -> made.isBefore(Instant.now().minus(LONGEST_SAVING)))
                .isPresent();
    }

    /** The trouble as a sentence. */
    static String sentence(IOException trouble) {
        if (trouble instanceof AccessDeniedException) {
            return "The file or its folder is write-protected. Ask its owner for the permission, or save under another"
                    + " name or in another library.";
        }
        if (trouble instanceof NotAFileException) {
            return Quoted.plain(trouble.getMessage());
        }
        if (trouble instanceof FileSystemLoopException) {
            return "The file is a link that leads back to itself. Save under another name.";
        }
        String reason = trouble instanceof FileSystemException system && system.getReason() != null
                ? system.getReason()
                : String.valueOf(trouble.getMessage());
        return reason.contains(READ_ONLY)
                ? "Nothing can be written on this disk: it is read-only. Use a folder on another one."
                : "The disk reports: " + Quoted.plain(reason) + ". Make room, or save in another place.";
    }
}
