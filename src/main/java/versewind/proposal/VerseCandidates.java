package versewind.proposal;

import java.util.List;

/**
 * A verse in a {@link ServiceOptimizer}.
 *
 * @param candidates what may be drawn; one at least
 * @param succession how it follows the verse before
 */
record VerseCandidates(List<Candidate> candidates, Succession succession) {

    VerseCandidates {
        candidates = List.copyOf(candidates);
        if (candidates.isEmpty()) {
            throw new IllegalArgumentException("a verse has one candidate at least");
        }
    }
}
