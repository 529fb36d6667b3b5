package versewind.store;

import java.nio.file.Path;
import versewind.schema.KnownOrgan;

/**
 * An instrument as it was read from its file, or is going to be written to it.
 *
 * @param organ the instrument and what is known of it
 * @param path its file
 * @param fingerprint what the file held
 */
public record OpenOrgan(KnownOrgan organ, Path path, Fingerprint fingerprint) {

    /** With other trims or readings, to be written to the same file. */
    public OpenOrgan with(KnownOrgan other) {
        return new OpenOrgan(other, path, fingerprint);
    }
}
