package versewind.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * A file that one process holds: locked, so that nobody can take it from an owner who is slow, while the system lets go
 * of it when the process ends, however it ends. It carries its owner's mark, by which an owner knows it from a file of
 * the same name that another has made; on a disk without locks that is all there is.
 *
 * <p>What was opened stays open until the turn is given back, since closing any of it drops the lock, as with what
 * {@link SystemDisk} holds for a journal.
 */
final class LockedTurn implements Disk.Turn {

    private static final Set<OpenOption> WRITTEN = Set.of(StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    private static final Set<OpenOption> READ = Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);

    private final Path file;
    private final ByteBuffer mark;
    private final List<FileChannel> open = new ArrayList<>();

    private LockedTurn(Path file) {
        this.file = file;
        UUID random = UUID.randomUUID();
        this.mark = ByteBuffer.allocate(2 * Long.BYTES)
                .putLong(random.getMostSignificantBits())
                .putLong(random.getLeastSignificantBits())
                .flip()
                .asReadOnlyBuffer();
    }

    /** Takes a file that is there; empty where another process holds it, or it is gone. */
    static Optional<Disk.Turn> at(Path file) throws IOException {
        LockedTurn turn = new LockedTurn(file);
        boolean isTaken = false;
        try {
            isTaken = turn.isTaken();
        } finally {
            if (!isTaken) {
                turn.close();
            }
        }
        return isTaken ? Optional.of(turn) : Optional.empty();
    }

    private boolean isTaken() throws IOException {
        try {
            FileChannel channel = opened(WRITTEN);
            if (!isLocked(channel)) {
                return false;
            }
            ByteBuffer rest = mark.duplicate();
            while (rest.hasRemaining()) {
                channel.write(rest, rest.position());
            }
            return isOurs(); // another may have given it back between the opening and the lock
        } catch (NoSuchFileException gone) {
            return false;
        }
    }

    /** Locks what lies behind the mark, since some systems let nobody read what is locked. */
    private boolean isLocked(FileChannel channel) {
        try {
            return channel.tryLock(mark.limit(), 1, false) != null;
        } catch (OverlappingFileLockException ours) {
            return false;
        } catch (IOException noLocksHere) {
            return true;
        }
    }

    private boolean isOurs() throws IOException {
        try {
            FileChannel channel = opened(READ);
            ByteBuffer there = ByteBuffer.allocate(mark.limit());
            int read = 0;
            while (there.hasRemaining() && read >= 0) {
                read = channel.read(there, there.position());
            }
            return there.flip().equals(mark);
        } catch (NoSuchFileException gone) {
            return false;
        }
    }

    private FileChannel opened(Set<OpenOption> how) throws IOException {
        FileChannel channel = FileChannel.open(file, how);
        open.add(channel);
        return channel;
    }

    @Override
    public void giveBack() throws IOException {
        try {
            if (isOurs()) {
                Files.deleteIfExists(file);
            }
        } finally {
            close();
        }
    }

    private void close() throws IOException {
        for (FileChannel channel : open) {
            channel.close();
        }
        open.clear();
    }
}
