package versewind.store;

import java.nio.file.Path;
import java.time.Instant;

/**
 * A plan's file before it is read.
 *
 * @param id its name, without its ending
 * @param path the file, which may not be there if only unsaved work is
 * @param unsavedWork whether work is kept beside it that is not in the file
 * @param edited when it, or the work beside it, was last written
 */
public record PlanFile(String id, Path path, boolean unsavedWork, Instant edited) {}
