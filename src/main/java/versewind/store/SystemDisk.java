package versewind.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.GroupPrincipal;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The disk of this computer. */
final class SystemDisk implements Disk {
    private static final int MOST_LINKS = 40;

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
    public void create(Path file, Optional<Path> like) throws IOException {
        Files.createFile(file);
        if (like.isPresent() && Files.getFileStore(file).supportsFileAttributeView(PosixFileAttributeView.class)) {
            PosixFileAttributes old = Files.readAttributes(like.get(), PosixFileAttributes.class);
            keepGroup(file, old.group());
            Files.setPosixFilePermissions(file, old.permissions());
        }
    }

    private static void keepGroup(Path file, GroupPrincipal group) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (!view.readAttributes().group().equals(group)) {
            try {
                view.setGroup(group);
            } catch (IOException notAllowed) {
                // Only a member of the group may give a file to it; the file is the writer's own then, as any new one.
                return;
            }
        }
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
        }
    }

    @Override
    public void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        if (!Files.getFileStore(folder).supportsFileAttributeView(PosixFileAttributeView.class)) {
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
}
