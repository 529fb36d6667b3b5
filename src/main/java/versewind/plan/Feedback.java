package versewind.plan;

import java.util.Optional;
import versewind.organ.Registration;

/**
 * Feedback on a verse after the service.
 *
 * @param heard the judgement
 * @param present number of people present, 1 to 50000
 * @param played what was drawn then, if not as planned
 */
public record Feedback(HeardAs heard, int present, Optional<Registration> played) {

    /** Feedback on what was planned. */
    public Feedback(HeardAs heard, int present) {
        this(heard, present, Optional.empty());
    }

    public Feedback {
        if (present < 1 || present > Verse.MOST_PEOPLE) {
            throw new IllegalArgumentException("the people present are 1 to 50000");
        }
    }
}
