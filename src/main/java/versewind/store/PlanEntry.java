package versewind.store;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A plan in the list of plans; only the head of its file was read.
 *
 * @param file its file
 * @param title its title; the id where the file has none that can be read
 * @param date the day, if set
 * @param instrument name of the instrument's file, without its ending; blank where the file does not say
 */
public record PlanEntry(PlanFile file, String title, Optional<LocalDate> date, String instrument) {

    /** True if the head of the file is that of a plan; the rest may still be wrong. */
    public boolean hasHead() {
        return !instrument.isBlank();
    }
}
