package versewind.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A file that is appended to, and locked as long: the system drops the lock when the process ends, however it ends.
 *
 * <p>Such a file must not be opened again by the process that holds it, since closing it would drop the lock.
 * Source: POSIX.1-2017, fcntl, "all locks associated with a file for a given process shall be removed when a file
 * descriptor for that file is closed by that process".
 */
final class HeldFile implements Disk.Appending {

    private static final Set<Path> OURS = ConcurrentHashMap.newKeySet();

    private final Path name;
    private final FileChannel channel;

    HeldFile(Path file, FileChannel channel) {
        this.name = file.toAbsolutePath().normalize();
        this.channel = channel;
        OURS.add(name);
        lock();
    }

    /** Some network disks have no locks; the file then seems to be nobody's, and its work is offered as left over. */
    private void lock() {
        try {
            channel.tryLock();
        } catch (IOException noLocksHere) {
            return;
        }
    }

    static boolean isHeld(Path file) {
        if (OURS.contains(file.toAbsolutePath().normalize())) {
            return true;
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try (FileChannel there = FileChannel.open(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
                FileLock lock = there.tryLock(0, Long.MAX_VALUE, true)) {
            return lock == null;
        } catch (OverlappingFileLockException ours) {
            return true;
        } catch (AccessDeniedException someoneElses) {
            return true;
        } catch (IOException noLocksHere) {
            return false;
        }
    }

    @Override
    public void append(byte[] bytes) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
            channel.write(rest);
        }
    }

    @Override
    public void cut(long length) throws IOException {
        channel.truncate(length);
    }

    @Override
    public void force() throws IOException {
        channel.force(true);
    }

    @Override
    public void close() throws IOException {
        channel.close();
        OURS.remove(name);
    }
}
