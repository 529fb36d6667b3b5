package versewind.plan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What stands over a service.
 *
 * @param title "Harvest Thanksgiving"
 * @param date the day, if set
 * @param people number of people expected, 1 to 50000
 * @param notes notes for the desk; may be blank
 */
public record Heading(String title, Optional<LocalDate> date, int people, String notes) {

    public Heading {
        if (people < 1 || people > Verse.MOST_PEOPLE) {
            throw new IllegalArgumentException("the people expected are 1 to 50000");
        }
    }
}
