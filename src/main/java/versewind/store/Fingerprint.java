package versewind.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The contents of a file when it was read or written, to see whether another program has changed it since. Two are
 * equal exactly when the files were, byte for byte.
 */
public final class Fingerprint {

    /** That there was no file. */
    public static final Fingerprint NO_FILE = new Fingerprint(Optional.empty());

    private final Optional<ByteBuffer> contents;

    private Fingerprint(Optional<ByteBuffer> contents) {
        this.contents = contents;
    }

    /** Of a file with these contents. Plans are small: keeping them costs less than a hash that could be mistaken. */
    static Fingerprint of(byte[] contents) {
        return new Fingerprint(Optional.of(ByteBuffer.wrap(contents.clone())));
    }

    /** Of a file with this text; of none for "". */
    static Fingerprint ofText(String text) {
        return text.isEmpty() ? NO_FILE : of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The text of the file; "" where there was none. */
    String text() {
        return new String(bytes(), StandardCharsets.UTF_8);
    }

    /** The bytes of the file; none where there was none. */
    byte[] bytes() {
        byte[] bytes = new byte[contents.map(ByteBuffer::remaining).orElse(0)];
        contents.ifPresent(all -> all.duplicate().get(bytes));
        return bytes;
    }

    /** The contents in 64 hexadecimal figures, SHA-256; of no file "". */
    String digest() {
        return contents.map(bytes -> {
                    try {
                        MessageDigest sha = MessageDigest.getInstance("SHA-256");
                        sha.update(bytes.duplicate());
                        return HexFormat.of().formatHex(sha.digest());
                    } catch (NoSuchAlgorithmException impossible) {
                        throw new IllegalStateException("every Java has SHA-256", impossible);
                    }
                })
                .orElse("");
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fingerprint that && contents.equals(that.contents);
    }

    @Override
    public int hashCode() {
        return contents.hashCode();
    }

    @Override
    public String toString() {
        return contents.map(bytes -> bytes.remaining() + " bytes").orElse("no file");
    }
}
