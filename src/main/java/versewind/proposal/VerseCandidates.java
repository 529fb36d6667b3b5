package versewind.proposal;

import java.util.List;

/**
 * A verse in a {@link ServiceOptimizer}.
 *
 * @param candidates what may be drawn; one at least
 * @param transition how it follows the verse before
 */
record VerseCandidates(List<Candidate> candidates, Transition transition) {

    VerseCandidates {
        candidates = List.copyOf(candidates);
        if (candidates.isEmpty()) {
            throw new IllegalArgumentException("a verse has one candidate at least");
        }
    }
}
