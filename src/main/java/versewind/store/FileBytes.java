package versewind.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Reads the bytes of a file, as many as can be read as JSON and one more, or says why that cannot be. */
final class FileBytes {
    private FileBytes() {}

    static byte[] read(Disk disk, Path file) throws BadFile {
        if (Files.isDirectory(file)) {
            throw BadFile.whole(file, "this is a folder", "Name a file in it.");
        }
        if (Files.notExists(file)) {
            boolean link = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
            throw BadFile.whole(
                    file,
                    link ? "this link leads to no file" : "there is no such file",
                    "Look for it in another folder, or restore it from a copy.");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw BadFile.whole(file, "this is a device, not a file", "Name a file.");
        }
        try {
            return disk.read(file, JsonTree.LARGEST_FILE + 1);
        } catch (AccessDeniedException denied) {
            throw BadFile.whole(file, "the file may not be read", "Ask its owner for the permission to read it.");
        } catch (IOException trouble) {
            throw BadFile.whole(
                    file,
                    "the file could not be read: " + Quoted.plain(String.valueOf(trouble.getMessage())),
                    "Try again, or restore it from a copy.");
        }
    }
}
