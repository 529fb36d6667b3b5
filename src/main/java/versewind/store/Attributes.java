package versewind.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.UserDefinedFileAttributeView;

/**
 * What a file has beside its contents: mode, owner, group, and the extended attributes of its user. Java knows no POSIX
 * access lists, so these are not kept.
 */
final class Attributes {

    private Attributes() {}

    /** True if the file system has modes and groups. */
    static boolean arePosix(Path file) throws IOException {
        return Files.getFileStore(file).supportsFileAttributeView(PosixFileAttributeView.class);
    }

    /** Gives a file the attributes of another, as far as its writer may; the other may be reached through a link. */
    static void copy(Path from, Path to) throws IOException {
        if (!arePosix(to)) {
            return;
        }
        PosixFileAttributes model = Files.readAttributes(from, PosixFileAttributes.class);
        if (!model.isRegularFile()) {
            throw new NotAFileException("It is no ordinary file. Save under another name.");
        }
        PosixFileAttributeView view =
                Files.getFileAttributeView(to, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        PosixFileAttributes now = view.readAttributes();
        if (!now.group().equals(model.group())) {
            ifAllowed(() -> view.setGroup(model.group()));
        }
        if (!now.owner().equals(model.owner())) {
            ifAllowed(() -> view.setOwner(model.owner()));
        }
        copyExtended(from, to);
        view.setPermissions(model.permissions());
    }

    private static void copyExtended(Path from, Path to) throws IOException {
        UserDefinedFileAttributeView there = Files.getFileAttributeView(from, UserDefinedFileAttributeView.class);
        UserDefinedFileAttributeView here = Files.getFileAttributeView(to, UserDefinedFileAttributeView.class);
        if (there == null || here == null) {
            return;
        }
        ifAllowed(() -> {
            for (String name : there.list()) {
                ByteBuffer value = ByteBuffer.allocate(there.size(name));
                there.read(name, value);
                here.write(name, value.flip());
            }
        });
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
