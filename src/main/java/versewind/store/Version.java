package versewind.store;

import java.nio.file.Path;
import java.time.Instant;

/**
 * An earlier version of a plan.
 *
 * @param file where it is kept
 * @param saved when it was saved
 */
public record Version(Path file, Instant saved) {}
