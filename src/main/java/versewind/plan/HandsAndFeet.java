package versewind.plan;

import versewind.organ.Worded;

/**
 * The layout of hands and feet.
 *
 * @param layout which part is played by which hand or by the feet
 * @param right index of the division on whose keyboard the right hand plays
 * @param left index of the division on whose keyboard the left hand plays
 */
public record HandsAndFeet(Layout layout, int right, int left) {

    /** Which part is played by which hand or by the feet. */
    public enum Layout implements Worded {
        /** Soprano and alto in the right hand, tenor in the left, bass on the pedal. */
        FOUR_PARTS,
        /** Soprano and alto in the right hand, tenor and bass in the left; the feet rest. */
        MANUALS_ONLY,
        /** As four parts, but the feet play a manual through its coupler, and no pedal stop is needed. */
        PEDAL_BY_COUPLER,
        /** Soprano alone in the right hand, alto and tenor in the left, bass on the pedal. */
        MELODY_SOLOED,
        /** Soprano alone in the right hand, alto, tenor and bass in the left; the feet rest. */
        SOLOED_WITHOUT_PEDAL;

        /** In words. */
        @Override
        public String word() {
            return this == SOLOED_WITHOUT_PEDAL ? "solo without pedal" : Worded.super.word();
        }

        /** True if the feet play. */
        public boolean usesPedal() {
            return this != withoutPedal();
        }

        /** True if the right hand plays the melody alone. */
        public boolean isSoloed() {
            return this == MELODY_SOLOED || this == SOLOED_WITHOUT_PEDAL;
        }

        /** The same parts with the hands only. */
        public Layout withoutPedal() {
            return isSoloed() ? SOLOED_WITHOUT_PEDAL : MANUALS_ONLY;
        }
    }

    /** Written out, like {@link #equals}: a record's own cost milliseconds at the start of the program. */
    @Override
    public int hashCode() {
        return 31 * (31 * layout.hashCode() + right) + left;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof HandsAndFeet hands
                && layout == hands.layout
                && right == hands.right
                && left == hands.left;
    }

    /** Both hands on one keyboard. */
    public static HandsAndFeet on(Layout layout, int division) {
        return new HandsAndFeet(layout, division, division);
    }

    /** With another layout. */
    public HandsAndFeet withLayout(Layout other) {
        return new HandsAndFeet(other, right, left);
    }
}
