package versewind.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import versewind.organ.Quoted;

/** A plain text from a file or from standard input. */
public final class PlainText {

    private static final Charset OLD_PAGES = Charset.forName("windows-1252");

    private PlainText() {}

    /**
     * The text of a file, in UTF-8 or UTF-16, or where it is neither in the letters of older pages, Windows-1252.
     *
     * @throws BadFile if it is not there, cannot be read, is far too long, or is not text
     */
    public static String of(String file) throws BadFile {
        try {
            Path path = Path.of(file);
            return text(file, FileBytes.read(new SystemDisk(), path));
        } catch (InvalidPathException impossible) {
            throw BadFile.whole(Quoted.plain(file), "no file can have this name", "Check the name.");
        }
    }

    /** The text that is piped in. */
    public static String of(InputStream piped) throws BadFile {
        String place = "the standard input";
        try {
            return text(place, piped.readNBytes(JsonTree.LARGEST_FILE + 1));
        } catch (IOException trouble) {
            throw BadFile.whole(
                    place, "it could not be read: " + Quoted.plain(String.valueOf(trouble.getMessage())), "Try again.");
        }
    }

    private static String text(String place, byte[] bytes) throws BadFile {
        if (bytes.length > JsonTree.LARGEST_FILE) {
            throw BadFile.whole(place, "it is far too long", "Delete what does not belong there.");
        }
        String text = decoded(bytes);
        if (text.indexOf('\0') >= 0) {
            throw BadFile.whole(place, "it is not text", "Save it as plain text (UTF-8).");
        }
        return text;
    }

    private static String decoded(byte[] bytes) {
        if (isMarked(bytes, 0xFE, 0xFF) || isMarked(bytes, 0xFF, 0xFE)) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        if (bytes.length > 3 && bytes[0] != 0 && bytes[1] == 0 && bytes[3] == 0) {
            return new String(bytes, StandardCharsets.UTF_16LE);
        }
        if (bytes.length > 3 && bytes[0] == 0 && bytes[1] != 0 && bytes[2] == 0) {
            return new String(bytes, StandardCharsets.UTF_16BE);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException noUtf8) {
            return new String(bytes, OLD_PAGES);
        }
    }

    /** True if a text begins with a byte order mark. */
    private static boolean isMarked(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }
}
