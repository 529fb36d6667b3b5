package versewind.store;

import java.nio.file.Path;
import versewind.organ.Instrument;
import versewind.schema.FileFormat;
import versewind.schema.Found;
import versewind.schema.KnownOrgan;
import versewind.schema.OrganFields;
import versewind.schema.OrganNames;
import versewind.schema.Refused;

/** Reads and writes the file of an instrument. */
final class InstrumentJson {

    private InstrumentJson() {}

    /**
     * Reads an instrument and what its trims rest on.
     *
     * @param file its name, for the sentence if it is wrong
     * @param bytes what is in it
     */
    static KnownOrgan read(Path file, byte[] bytes) throws BadFile {
        try {
            Found root = JsonTree.read(file, bytes);
            FileFormat.require(root);
            return OrganFields.TABLE.read(root, OrganNames.NONE);
        } catch (Refused wrong) {
            throw BadFile.of(file, wrong);
        }
    }

    /** The bytes of the file. */
    static byte[] bytes(KnownOrgan organ) {
        return JsonText.bytes(OrganFields.TABLE, organ, OrganNames.of(organ.instrument()));
    }

    /** The bytes of the file of an instrument that was never calibrated. */
    static byte[] bytes(Instrument instrument) {
        return bytes(KnownOrgan.of(instrument));
    }
}
