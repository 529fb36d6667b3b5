package versewind.store;

import java.io.InputStream;
import java.nio.file.Path;

/**
 * Reads a new plan from a spreadsheet in UTF-8, for an instrument of a library. Nothing is written until it is saved.
 */
public final class Spreadsheet {

    private Spreadsheet() {}

    /** From a file. */
    public static OpenPlan read(Path file, Library library) throws BadFile, BadRows {
        return read(file, FileBytes.read(new SystemDisk(), file), library);
    }

    /** From elsewhere than a file. */
    public static OpenPlan read(InputStream in, Library library) throws BadFile, BadRows {
        Path name = Path.of("standard input");
        return read(name, FileBytes.read(in, name), library);
    }

    private static OpenPlan read(Path file, byte[] bytes, Library library) throws BadFile, BadRows {
        PlanCsv.Read read = PlanCsv.read(
                FileBytes.text(file, bytes), id -> library.openOrgan(id).organ());
        String id = library.freePlanId(read.plan().heading().title());
        return library.newPlan(id, read.plan(), read.organ());
    }
}
