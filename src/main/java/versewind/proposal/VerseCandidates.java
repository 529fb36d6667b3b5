package versewind.proposal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import versewind.organ.IndexSet;

/**
 * A verse in a {@link ServiceOptimizer}.
 *
 * @param candidates what may be drawn; one at least
 * @param breath the time before it; empty where there is all the time, or nothing before
 * @param likeness whether it counts that it sounds as the verse before does
 * @param risesDb by how much its target lies above that of the verse before; empty where that does not matter
 */
record VerseCandidates(
        List<Candidate> candidates, Optional<ChangeTime> breath, Likeness likeness, OptionalDouble risesDb) {

    VerseCandidates {
        candidates = List.copyOf(candidates);
        if (candidates.isEmpty()) {
            throw new IllegalArgumentException("a verse has one candidate at least");
        }
    }

    /** What it costs how a candidate stands to one of the verse before, other than movements. */
    double standing(Candidate from, Candidate to) {
        double sameness = likeness == Likeness.COUNTS ? ScoreFunction.sameness(from.likeness(), to.likeness()) : 0;
        double rise =
                risesDb.isPresent() ? new GrowthTarget(from.marginDb(), risesDb.getAsDouble()).cost(to.marginDb()) : 0;
        return sameness + rise;
    }

    /** Whether it counts that neighbours sound alike. */
    enum Likeness {
        COUNTS,
        IS_WELCOME
    }

    /**
     * What may be drawn.
     *
     * @param likeness the registration, how it is played, and how it sounds
     * @param points what it costs by itself
     * @param marginDb its margin
     * @param heard bits of the divisions that sound, whose boxes therefore matter
     * @param withinEarshot all stops of the divisions that are played
     */
    record Candidate(
            ScoreFunction.Likeness likeness, double points, double marginDb, long heard, IndexSet withinEarshot) {

        Draft draft() {
            return likeness.draft();
        }

        boolean hears(int division) {
            return (heard & 1L << division) != 0;
        }

        GeneralSetting setting() {
            return GeneralSetting.of(draft().registration());
        }
    }
}
