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
     * The text of a file, in UTF-8, or where it is none in the letters of older pages, Windows-1252.
     *
     * @throws BadFile if it is not there, cannot be read, or is far too long
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
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException noUtf8) {
            return new String(bytes, OLD_PAGES);
        }
    }
}
