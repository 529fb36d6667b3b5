package versewind.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;

/** What a file has beside its contents: mode, owner, group, access list and extended attributes. */
final class Attributes {

    private Attributes() {}

    /** True if the file system has modes and groups. */
    static boolean arePosix(Path file) throws IOException {
        return Files.getFileStore(file).supportsFileAttributeView(PosixFileAttributeView.class);
    }

    /**
     * Makes an empty file with the attributes of another, as far as its writer may; the other may be reached through a
     * link. It is copied whole, since Java has no other way to an access list.
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
                        file, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING, LinkOption.NOFOLLOW_LINKS)
                .close();
    }

    private interface Step {
        void take() throws IOException;
    }

    /** Only a member of a group may give it a file, and only root to another owner; else the file is the writer's. */
    private static void ifAllowed(Step step) {
        try {
            step.take();
        } catch (IOException | UnsupportedOperationException notAllowed) {
            return;
        }
    }
}
