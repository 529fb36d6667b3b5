package versewind.store;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A plan in the list of plans; only the head of its file was read.
 *
 * @param id name of its file, without its ending
 * @param path its file
 * @param title its title; the id where the file has none that can be read
 * @param date the day, if set
 * @param unsavedWork whether work is kept beside it that is not in the file
 */
public record PlanEntry(String id, Path path, String title, Optional<LocalDate> date, boolean unsavedWork) {}
