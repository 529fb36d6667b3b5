package versewind.proposal;

import versewind.rules.BuildingStep;

/**
 * A sound that an organist would call by one name: a step of the order of building up on a keyboard, or a colour beside
 * it. Drafts of one sound differ in their boxes, their feet, or stops of the same step.
 *
 * @param keyboard the division on whose keyboard the tune is played
 * @param step the step of the order, of the other parts where the tune has a manual of its own
 * @param colour what sets it apart from the step itself; blank for the step
 * @param voice what sings the tune
 * @param words its name: "principals 8 4 2"
 * @param place where it stands in the order: "step 5 of 10"; blank for a colour
 * @param rung how far up the order it stands, counted from 0
 */
record Sound(int keyboard, BuildingStep step, String colour, Voice voice, String words, String place, int rung) {

    /** The colour of a step to which the 8 and 4 ft of another manual are coupled. */
    static final String TWO_MANUALS = "two manuals";

    /** True if two are one to the ear. */
    boolean isLike(Sound other) {
        boolean isOneStep = step == other.step || voice != Voice.NONE;
        return keyboard == other.keyboard && isOneStep && colour.equals(other.colour);
    }

    /** True if it stands lower in the order than another on the same keyboard. */
    boolean isBelow(Sound other) {
        return keyboard == other.keyboard && isOfOrder() && other.isOfOrder() && height() < other.height();
    }

    private boolean isOfOrder() {
        return colour.isEmpty() || colour.equals(TWO_MANUALS);
    }

    private int height() {
        return 2 * rung + (colour.isEmpty() ? 0 : 1);
    }
}
