package versewind.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import versewind.organ.Quoted;

/** Reads the bytes of a file, as many as can be read as JSON and one more, or says why that cannot be. */
final class FileBytes {
    private FileBytes() {}

    static byte[] read(Disk disk, Path file) throws BadFile {
        if (Files.isDirectory(file)) {
            throw BadFile.whole(file, "this is a folder", "Name a file in it.");
        }
        boolean link = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        if (Files.notExists(file) && (link || !disk.exists(file))) {
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

    /** Reads what comes from elsewhere than a file. */
    static byte[] read(InputStream in, Path name) throws BadFile {
        try {
            return in.readNBytes(JsonTree.LARGEST_FILE + 1);
        } catch (IOException trouble) {
            throw BadFile.whole(
                    name, "it could not be read: " + Quoted.plain(String.valueOf(trouble.getMessage())), "Try again.");
        }
    }

    /** The text of a file in UTF-8, without a mark of the order of its bytes. */
    static String text(Path file, byte[] bytes) throws BadFile {
        if (bytes.length > JsonTree.LARGEST_FILE) {
            throw BadFile.whole(file, "this is far too large for a plan", "Take one plan at a time.");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith(JsonTree.BYTE_ORDER_MARK) ? text.substring(1) : text;
        } catch (CharacterCodingException notUtf8) {
            throw BadFile.whole(file, "this is not UTF-8", "Save it as CSV in UTF-8.");
        }
    }
}
