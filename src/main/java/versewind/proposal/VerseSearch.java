package versewind.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import versewind.rules.OrganFacts;

/** The drafts of one verse, judged. */
final class VerseSearch {

    /** The most proposals for a verse. */
    static final int MOST_PROPOSALS = 5;

    /** How many points worse than the best a proposal may be. */
    static final double WITHIN = 10;

    /** Points by which a candidate of a chain may be worse than the best: about those of a change too late. */
    static final double WITHIN_IN_CHAIN = ChangeTime.TOO_LATE;

    /** Candidates that a chain is given, and how many of them of one sound. */
    private static final int MOST_CANDIDATES = 50;

    private static final int MOST_OF_A_SOUND = 3;

    static final Comparator<Candidate> BEST_FIRST =
            Comparator.comparingDouble(Candidate::points).thenComparing(Candidate::draft, Draft.ORDER);

    private final List<Sketch> sketches;
    private final ScoreFunction scoring;

    VerseSearch(OrganFacts organ, ScoreFunction scoring) {
        this.scoring = scoring;
        sketches = VerseDrafts.of(organ, scoring.requirement());
    }

    ScoreFunction scoring() {
        return scoring;
    }

    /**
     * All that may be near to the best, the best first; what tastes alone put farther off is not listened to.
     *
     * @param within how many points worse than the best
     * @param goOn whether to go on
     */
    List<Candidate> ranked(double within, BooleanSupplier goOn) {
        List<Tasted> tasted = sketches.stream()
                .map(sketch -> new Tasted(sketch, scoring.taste(sketch)))
                .sorted(Comparator.comparingDouble(Tasted::points))
                .toList();
        List<Candidate> candidates = new ArrayList<>();
        double best = Double.POSITIVE_INFINITY;
        for (Tasted each : tasted) {
            boolean isHopeless = each.points() > best + within;
            if (isHopeless || (!candidates.isEmpty() && !goOn.getAsBoolean())) {
                break;
            }
            Candidate candidate = scoring.candidate(each.sketch());
            best = Math.min(best, candidate.points());
            candidates.add(candidate);
        }
        candidates.sort(BEST_FIRST);
        return candidates;
    }

    private record Tasted(Sketch sketch, double points) {}

    /** The best so many for a chain, of several sounds. */
    static List<Candidate> varied(List<Candidate> ranked) {
        List<Candidate> chosen = new ArrayList<>();
        for (Candidate each : ranked) {
            Sound sound = each.sketch().sound();
            long alike = chosen.stream()
                    .filter(other -> other.sketch().sound().isLike(sound)
                            && (sound.voice() == Voice.NONE
                                    || other.draft().hands().equals(each.draft().hands())))
                    .count();
            boolean isNear = each.points() <= ranked.get(0).points() + WITHIN_IN_CHAIN;
            if (isNear && alike < MOST_OF_A_SOUND && chosen.size() < MOST_CANDIDATES) {
                chosen.add(each);
            }
        }
        return chosen;
    }

    /** The best, then the best of those that are another sound, and so on; none with a fault that the best has not. */
    static List<Candidate> unlike(List<Candidate> ranked) {
        List<Candidate> chosen = new ArrayList<>();
        for (Candidate each : ranked) {
            Candidate best = ranked.get(0);
            boolean isNear = each.points() <= best.points() + WITHIN && (each.isSound() || !best.isSound());
            boolean isNew = chosen.stream().noneMatch(each::isLike);
            if (isNear && isNew && chosen.size() < MOST_PROPOSALS) {
                chosen.add(each);
            }
        }
        return chosen;
    }
}
