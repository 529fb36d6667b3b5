package versewind.proposal;

import versewind.organ.IndexSet;
import versewind.rules.BetweenVerses;
import versewind.rules.StopChanges;

/**
 * What can be moved between two verses, and what it costs. What is not heard in the verse before can be drawn there
 * already, and what is not heard in the verse after may stay drawn: both are nearly free.
 *
 * @param seconds the time there is
 * @param moveS the time that a hand needs for a knob, or a foot for a box
 */
record ChangeTime(double seconds, double moveS) {

    private static final double A_KNOB = 0.06;
    private static final double UNHEARD = 0.01;
    private static final double A_BOX = 0.05;
    private static final double A_PISTON = 0.2;

    /** What a change costs at least that does not fit into the breath. */
    static final double TOO_LATE = 7;

    private static final double TOO_LATE_FOR_EACH = 0.15;

    /**
     * The moves of a change.
     *
     * @param knobs stops, couplers and tremulants that are heard
     * @param unheard those that nobody hears
     * @param boxes boxes that are heard
     */
    record Moves(int knobs, int unheard, int boxes) {

        /** The moves from one candidate to another. Boxes that are not heard afterwards are left as they are. */
        static Moves between(Candidate from, Candidate to) {
            StopChanges change =
                    StopChanges.between(from.draft().registration(), to.draft().registration());
            IndexSet stops = from.heard().stops().and(to.heard().stops());
            IndexSet couplers = from.heard().couplers().and(to.heard().couplers());
            int unheard = change.stopsDrawn().minus(stops).size()
                    + change.stopsPutIn().minus(stops).size()
                    + change.couplersDrawn().minus(couplers).size()
                    + change.couplersPutIn().minus(couplers).size();
            int boxes = (int) change.boxes().stream()
                    .filter(box -> to.heard().boxes().contains(box.division())
                            && from.heard().boxes().contains(box.division()))
                    .count();
            return new Moves(change.count() - change.boxes().size() - unheard, unheard, boxes);
        }
    }

    double byHand(Moves moves) {
        double cost = A_KNOB * moves.knobs() + UNHEARD * moves.unheard() + A_BOX * moves.boxes();
        return isInTime(moves.knobs(), moves.boxes()) ? cost : cost + TOO_LATE + TOO_LATE_FOR_EACH * moves.knobs();
    }

    double byPiston(Moves moves) {
        return A_PISTON + A_BOX * moves.boxes() + (isInTime(0, moves.boxes()) ? 0 : TOO_LATE);
    }

    private boolean isInTime(int knobs, int boxes) {
        return BetweenVerses.neededS(knobs, boxes, moveS) <= seconds;
    }
}
