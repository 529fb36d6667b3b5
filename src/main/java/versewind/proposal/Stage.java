package versewind.proposal;

import java.util.List;
import java.util.Optional;

/**
 * A verse in a {@link Chain}.
 *
 * @param candidates what may be drawn; one at least
 * @param breath the time before it; empty where there is all the time, or nothing before
 * @param likeness whether it counts that it sounds as the verse before does
 */
record Stage(List<Candidate> candidates, Optional<Breath> breath, Likeness likeness) {

    Stage {
        candidates = List.copyOf(candidates);
        if (candidates.isEmpty()) {
            throw new IllegalArgumentException("a verse has one candidate at least");
        }
    }

    /** Whether it counts that neighbours sound alike. */
    enum Likeness {
        COUNTS,
        IS_WELCOME
    }

    /**
     * What may be drawn.
     *
     * @param draft the registration, and how it is played
     * @param points what it costs by itself
     * @param heard bits of the divisions that sound, whose boxes therefore matter
     */
    record Candidate(Draft draft, double points, long heard) {

        boolean hears(int division) {
            return (heard & 1L << division) != 0;
        }

        Setting setting() {
            return Setting.of(draft.registration());
        }
    }
}
