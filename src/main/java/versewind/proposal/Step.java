package versewind.proposal;

import java.util.Optional;

/**
 * The step from the verse before.
 *
 * @param succession how the verse follows it
 * @param before what is drawn there, if anything
 * @param hasPiston whether a piston sets what follows
 */
record Step(Succession succession, Optional<Candidate> before, boolean hasPiston) {

    /** Adds what speaks against a candidate here. */
    void add(Candidate candidate, Rows rows) {
        before.ifPresent(from -> succession.add(from, candidate, hasPiston, rows));
    }

    /** The points of that. */
    double points(Candidate candidate) {
        Rows.Sum sum = new Rows.Sum();
        add(candidate, sum);
        return sum.points();
    }
}
