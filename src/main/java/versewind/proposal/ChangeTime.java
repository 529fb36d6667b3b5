package versewind.proposal;

import java.util.List;
import versewind.organ.Knobs;
import versewind.rules.BetweenVerses;
import versewind.rules.StopChanges;

/**
 * The cost of a change between two verses in the time there is. What is not heard in the verse before can be drawn
 * there already, and what is not heard in the verse after may stay drawn: both are nearly free.
 *
 * @param seconds the time there is
 * @param moveS the time that a hand needs for a knob, or a foot for a box
 * @param pistons what can be set at once: everything by a general, or each division by a divisional of its own
 */
record ChangeTime(double seconds, double moveS, List<Knobs> pistons) {

    /** A knob for each hand. */
    private static final double A_KNOB = 0.06;

    private static final int HANDS = 2;

    /** A further one, which fits in the breath but leaves no hand to spare. */
    private static final double ANOTHER_KNOB = 0.25;

    private static final double UNHEARD = 0.01;
    private static final double A_BOX = 0.05;
    private static final double A_PISTON = 0.2;

    /** Least cost of a change that does not fit into the breath. */
    static final double TOO_LATE = 30;

    private static final double TOO_LATE_FOR_EACH = 0.15;

    /**
     * The moves of a change.
     *
     * @param knobs stops, couplers and tremulants that are heard
     * @param unheard those that nobody hears
     * @param boxes boxes that are heard
     * @param presses pistons that are pressed to set what they can
     * @param besides knobs that are heard and that no piston sets
     */
    record Moves(int knobs, int unheard, int boxes, int presses, int besides) {}

    /** The moves from one candidate to another. Boxes that are not heard afterwards are left as they are. */
    Moves moves(Candidate from, Candidate to) {
        StopChanges change =
                StopChanges.between(from.draft().registration(), to.draft().registration());
        Knobs heard = new Knobs(
                change.stopsDrawn()
                        .plus(change.stopsPutIn())
                        .and(from.heard().stops())
                        .and(to.heard().stops()),
                change.couplersDrawn()
                        .plus(change.couplersPutIn())
                        .and(from.heard().couplers())
                        .and(to.heard().couplers()),
                change.tremulantsDrawn().plus(change.tremulantsPutIn()));
        int boxes = (int) change.boxes().stream()
                .filter(box -> to.heard().boxes().contains(box.division())
                        && from.heard().boxes().contains(box.division()))
                .count();
        int presses = 0;
        int besides = heard.size();
        for (Knobs reach : pistons) {
            int set = heard.and(reach).size();
            presses += set > 0 ? 1 : 0;
            besides -= set;
        }
        return new Moves(heard.size(), change.knobs() - heard.size(), boxes, presses, besides);
    }

    ChangeTime {
        pistons = List.copyOf(pistons);
    }

    double byHand(Moves all) {
        double cost = ofKnobs(all.knobs()) + UNHEARD * all.unheard() + A_BOX * all.boxes();
        return isInTime(all.knobs(), all.boxes()) ? cost : cost + TOO_LATE + TOO_LATE_FOR_EACH * all.knobs();
    }

    double byPiston(Moves all) {
        int hands = all.besides() + Math.max(0, all.presses() - 1);
        double cost = A_PISTON * Math.max(1, all.presses()) + ofKnobs(all.besides()) + A_BOX * all.boxes();
        return isInTime(hands, all.boxes()) ? cost : cost + TOO_LATE;
    }

    private static double ofKnobs(int knobs) {
        return A_KNOB * Math.min(HANDS, knobs) + ANOTHER_KNOB * Math.max(0, knobs - HANDS);
    }

    private boolean isInTime(int knobs, int boxes) {
        return BetweenVerses.neededS(knobs, boxes, moveS) <= seconds;
    }
}
