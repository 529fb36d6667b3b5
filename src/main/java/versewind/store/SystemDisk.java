package versewind.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/** The disk of this computer. */
final class SystemDisk implements Disk {
    private static final int MOST_LINKS = 40;
    private static final Set<OpenOption> NEW = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    private static final Set<OpenOption> APPENDED =
            Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, StandardOpenOption.APPEND);
    private static final Set<OpenOption> WRITTEN = Set.of(StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);

    @Override
    public boolean exists(Path file) {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    @Override
    public boolean isWritable(Path file) {
        return Files.isWritable(file);
    }

    @Override
    public byte[] read(Path file, int limit) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new NotAFileException("It is no ordinary file.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(limit);
        }
    }

    @Override
    public Instant modified(Path file) throws IOException {
        return Files.getLastModifiedTime(file).toInstant();
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        Files.createDirectories(folder);
    }

    @Override
    public Path follow(Path file) throws IOException {
        Path at = file;
        for (int links = 0; Files.isSymbolicLink(at); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemLoopException(file.toString());
            }
            at = at.resolveSibling(Files.readSymbolicLink(at));
        }
        return at;
    }

    @Override
    public boolean isInside(Path file, Path folder) {
        try {
            Path parent = file.toAbsolutePath().normalize().getParent();
            return parent.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException missing) {
            return false;
        }
    }

    @Override
    public void create(Path file, Optional<Path> like) throws IOException {
        if (like.isPresent() && Attributes.arePosix(like.get())) {
            Attributes.createLike(like.get(), file);
        } else {
            FileChannel.open(file, NEW).close();
        }
    }

    /** A file is never more open than its model, not even before its attributes are set. */
    private static FileAttribute<?>[] attributesOf(Optional<Path> like) throws IOException {
        if (like.isEmpty() || !Attributes.arePosix(like.get())) {
            return new FileAttribute<?>[0];
        }
        return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(Files.getPosixFilePermissions(like.get()))};
    }

    @Override
    public Appending append(Path file, Optional<Path> like) throws IOException {
        return new HeldFile(file, FileChannel.open(file, APPENDED, attributesOf(like)));
    }

    @Override
    public Optional<Turn> hold(Path file) throws IOException {
        return LockedTurn.at(file);
    }

    @Override
    public void pause() {
        LockSupport.parkNanos(1_000_000);
    }

    @Override
    public boolean isHeld(Path file) {
        return HeldFile.isHeld(file);
    }

    @Override
    public byte[] readOwn(Path file, int limit) throws IOException {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new NotAFileException("It is no ordinary file.");
        }
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return in.readNBytes(limit);
        }
    }

    @Override
    public String owner(Path file) {
        try {
            return Files.getOwner(file, LinkOption.NOFOLLOW_LINKS).getName();
        } catch (IOException | UnsupportedOperationException noOwner) {
            return "";
        }
    }

    @Override
    public long sizeOfOwn(Path file) {
        try {
            BasicFileAttributes found =
                    Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            return found.isRegularFile() ? found.size() : 0;
        } catch (IOException gone) {
            return 0;
        }
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, WRITTEN)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
        }
    }

    @Override
    public void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, WRITTEN)) {
            channel.force(true);
        }
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        if (!Attributes.arePosix(folder)) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    @Override
    public void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }

    /** What a file has beside its contents: mode, owner, group, access list and extended attributes. */
    private static final class Attributes {

        private Attributes() {}

        /** True if the file system has modes and groups. */
        static boolean arePosix(Path file) throws IOException {
            return Files.getFileStore(file).supportsFileAttributeView(PosixFileAttributeView.class);
        }

        /**
         * Makes an empty file with the attributes of another, as far as its writer may; the other may be reached
         * through a link. It is copied whole, since Java has no other way to an access list.
         */
        static void createLike(Path model, Path file) throws IOException {
            PosixFileAttributes wanted = Files.readAttributes(model, PosixFileAttributes.class);
            if (!wanted.isRegularFile()) {
                throw new NotAFileException("It is no ordinary file. Save under another name.");
            }
            Files.copy(model, file, StandardCopyOption.COPY_ATTRIBUTES);
            PosixFileAttributeView view =
                    Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
            PosixFileAttributes now = view.readAttributes();
            if (!now.group().equals(wanted.group())) {
                ifAllowed(() -> view.setGroup(wanted.group()));
            }
            if (!now.owner().equals(wanted.owner())) {
                ifAllowed(() -> view.setOwner(wanted.owner()));
            }
            view.setPermissions(wanted.permissions());
            FileChannel.open(
                            file,
                            StandardOpenOption.WRITE,
                            StandardOpenOption.TRUNCATE_EXISTING,
                            LinkOption.NOFOLLOW_LINKS)
                    .close();
        }

        private interface Step {
            void take() throws IOException;
        }

        /**
         * Only a member of a group may give it a file, and only root to another owner; else the file is the writer's.
         */
        private static void ifAllowed(Step step) {
            try {
                step.take();
            } catch (IOException | UnsupportedOperationException notAllowed) {
                return;
            }
        }
    }

    /**
     * A file that is appended to, and locked as long: the system drops the lock when the process ends, however it ends.
     *
     * <p>Such a file must not be opened again by the process that holds it, since closing it would drop the lock.
     * Source: POSIX.1-2017, fcntl, "all locks associated with a file for a given process shall be removed when a file
     * descriptor for that file is closed by that process".
     */
    private static final class HeldFile implements Disk.Appending {

        private static final Set<Path> OURS = ConcurrentHashMap.newKeySet();

        private final Path name;
        private final FileChannel channel;

        HeldFile(Path file, FileChannel channel) {
            this.name = file.toAbsolutePath().normalize();
            this.channel = channel;
            OURS.add(name);
            lock();
        }

        /**
         * Some network disks have no locks; the file then seems to be nobody's, and its work is offered as left over.
         */
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
}
