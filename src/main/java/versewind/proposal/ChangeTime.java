package versewind.proposal;

import java.util.function.IntPredicate;
import versewind.organ.IndexSet;
import versewind.rules.BetweenVerses;
import versewind.rules.StopChanges;

/**
 * What can be moved between two verses, and what it costs.
 *
 * @param seconds the time there is
 * @param moveS the time that a hand needs for a knob, or a foot for a box
 * @param piston whether what comes has a piston
 */
record ChangeTime(double seconds, double moveS, Piston piston) {

    /** Whether a registration is set by a piston. */
    enum Piston {
        /** A piston is there for it. */
        SET,
        /** It may be put on a piston. */
        TO_BE_HAD,
        /** Everything is moved by hand. */
        NONE
    }

    private static final double A_KNOB = 0.06;
    private static final double A_BOX = 0.05;
    private static final double A_PISTON = 0.2;
    private static final double A_PISTON_TO_BE_SET = 0.35;
    private static final double EARLIER = 0.8;

    /** What a change costs at least that does not fit into the breath. */
    static final double TOO_LATE = 7;

    private static final double TOO_LATE_FOR_EACH = 0.15;

    ChangeTime with(Piston other) {
        return new ChangeTime(seconds, moveS, other);
    }

    /**
     * What a change costs: a little for every knob, and much where it does not fit into the breath. What is not heard
     * in the verse before can be drawn there already, and what is not heard in the verse after can be put in there.
     *
     * @param change what is moved
     * @param unheard how many of its knobs that are
     * @param isHeard whether a division sounds afterwards; boxes of others are left as they are
     * @param tally where it is added
     */
    void add(StopChanges change, int unheard, IntPredicate isHeard, Tally tally) {
        int boxes = (int) change.boxes().stream()
                .filter(box -> isHeard.test(box.division()))
                .count();
        int knobs = change.count() - change.boxes().size();
        double byHand = byHand(knobs, unheard, boxes);
        double byPiston = byPiston(boxes);
        if (byHand <= byPiston) {
            String words = isInTime(knobs, boxes)
                    ? A_FEW_KNOBS
                    : isInTime(knobs - unheard, boxes) ? IN_GOOD_TIME : TOO_MANY_KNOBS;
            tally.add(byHand, words);
        } else {
            tally.add(byPiston, piston == Piston.SET ? BY_PISTON : WANTS_PISTON);
        }
    }

    /**
     * How many stops of a change can be moved where nobody hears it.
     *
     * @param change what is moved
     * @param before all stops of the divisions that sound in the verse before
     * @param after all stops of the divisions that sound in the verse after
     */
    static int unheard(StopChanges change, IndexSet before, IndexSet after) {
        return change.stopsDrawn().minus(before).size()
                + change.stopsPutIn().minus(after).size();
    }

    private static final String IN_GOOD_TIME =
            "what the change wants has to be moved in part where it is not heard yet, or not any more";
    private static final String A_FEW_KNOBS = "the change from the verse before fits in the breath";
    private static final String TOO_MANY_KNOBS = "the change from the verse before does not fit in the breath";
    private static final String BY_PISTON = "a piston makes the change from the verse before";
    private static final String WANTS_PISTON = "the change from the verse before wants a piston";

    private boolean isInTime(int knobs, int boxes) {
        return BetweenVerses.neededS(knobs, boxes, moveS) <= seconds;
    }

    private double byHand(int knobs, int unheard, int boxes) {
        double cost = A_KNOB * knobs + A_BOX * boxes;
        if (isInTime(knobs, boxes)) {
            return cost;
        }
        return isInTime(knobs - unheard, boxes) ? cost + EARLIER : cost + TOO_LATE + TOO_LATE_FOR_EACH * knobs;
    }

    private double byPiston(int boxes) {
        double push =
                switch (piston) {
                    case SET -> A_PISTON;
                    case TO_BE_HAD -> A_PISTON_TO_BE_SET;
                    case NONE -> Double.POSITIVE_INFINITY;
                };
        return push + A_BOX * boxes + (isInTime(0, boxes) ? 0 : TOO_LATE);
    }
}
