package versewind.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import versewind.rules.OrganFacts;

/** The search for one verse: exact on small organs if it may go on to the end, climbing on others. */
final class VerseSearch {

    /** The most proposals for a verse. */
    static final int MOST_PROPOSALS = 5;

    /** By how many knobs proposals differ at least; playing the same otherwise counts as one. */
    static final int UNLIKE = 3;

    private final OrganFacts organ;
    private final SearchSpace space;
    private final ScoreFunction scoring;
    private final DraftAnalysis sounding;

    VerseSearch(OrganFacts organ, ScoreFunction scoring) {
        this.organ = organ;
        this.scoring = scoring;
        space = new SearchSpace(organ, scoring.requirement());
        sounding = new DraftAnalysis(organ);
    }

    /** How many points worse than the best a proposal may be. */
    static final double WITHIN = 5;

    SearchSpace space() {
        return space;
    }

    ScoreFunction scoring() {
        return scoring;
    }

    /** A draft as a candidate of a chain. */
    VerseCandidates.Candidate candidate(Draft draft) {
        double points = scoring.points(draft, Double.POSITIVE_INFINITY);
        double marginDb = scoring.marginDb(draft);
        sounding.look(draft);
        long heard = 0;
        for (int division = 0; division < draft.registration().boxes().size(); division++) {
            heard |= sounding.isHeard(division) ? 1L << division : 0;
        }
        ScoreFunction.Likeness likeness = new ScoreFunction.Likeness(draft, sounding.shade());
        return new VerseCandidates.Candidate(likeness, points, marginDb, heard, sounding.withinEarshot());
    }

    /** Everything that a climb scores, the best first. */
    List<HillClimb.Scored> climbed(HillClimb.Effort effort, BooleanSupplier goOn) {
        return new HillClimb(organ, space, scoring, sounding, goOn).search(effort);
    }

    /** The best, then the best of those that are unlike it, and so on. */
    List<Draft> best(BooleanSupplier goOn) {
        List<HillClimb.Scored> climbed = climbed(HillClimb.Effort.USUAL, goOn);
        return organ.stops() <= BranchAndBound.MOST_STOPS
                ? exact(climbed, goOn)
                : unlike(near(climbed), MOST_PROPOSALS, UNLIKE);
    }

    /** Those that are not much worse than the best. */
    private static List<HillClimb.Scored> near(List<HillClimb.Scored> ranked) {
        return ranked.isEmpty()
                ? ranked
                : ranked.stream()
                        .filter(each -> each.points() <= ranked.get(0).points() + WITHIN)
                        .toList();
    }

    private List<Draft> exact(List<HillClimb.Scored> climbed, BooleanSupplier goOn) {
        List<Draft> chosen = new ArrayList<>();
        double worst = Double.POSITIVE_INFINITY;
        while (chosen.size() < MOST_PROPOSALS) {
            double within = climbed.stream()
                    .filter(each -> isUnlike(each.draft(), chosen, UNLIKE))
                    .mapToDouble(HillClimb.Scored::points)
                    .findFirst()
                    .orElse(Double.POSITIVE_INFINITY);
            Optional<Draft> next =
                    BranchAndBound.best(organ, space, scoring, sounding, chosen, UNLIKE, Math.min(within, worst), goOn);
            if (next.isEmpty()) {
                break;
            }
            if (chosen.isEmpty()) {
                worst = scoring.points(next.get(), Double.POSITIVE_INFINITY) + WITHIN;
            }
            chosen.add(next.get());
        }
        return goOn.getAsBoolean() ? chosen : unlike(near(climbed), MOST_PROPOSALS, UNLIKE);
    }

    /** The first so many that are not much worse than the best and differ in more than a box. */
    static List<HillClimb.Scored> distinct(List<HillClimb.Scored> ranked, int most) {
        List<HillClimb.Scored> chosen = new ArrayList<>();
        for (HillClimb.Scored each : near(ranked)) {
            boolean isNew = chosen.stream().allMatch(other -> other.draft().knobsFrom(each.draft()) > 0);
            if (chosen.size() < most && isNew) {
                chosen.add(each);
            }
        }
        return chosen;
    }

    /** The first so many that differ from one another. */
    static List<Draft> unlike(List<HillClimb.Scored> ranked, int most, int distance) {
        List<Draft> chosen = new ArrayList<>();
        for (HillClimb.Scored each : ranked) {
            if (chosen.size() < most && isUnlike(each.draft(), chosen, distance)) {
                chosen.add(each.draft());
            }
        }
        return chosen;
    }

    private static boolean isUnlike(Draft draft, List<Draft> others, int distance) {
        return others.stream().allMatch(other -> other.knobsFrom(draft) >= distance);
    }
}
