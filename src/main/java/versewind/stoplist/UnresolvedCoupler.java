package versewind.stoplist;

import versewind.organ.Coupler;

/**
 * A coupler as it was read, before the divisions of the whole list are known.
 *
 * @param text what stood there
 * @param source the division whose stops sound
 * @param keyboard the division that it is played from
 * @param kind at which pitch
 */
record UnresolvedCoupler(String text, End source, End keyboard, Coupler.Kind kind) {

    /** One of the two divisions that a coupler joins. */
    sealed interface End permits Named, Implied {}

    /**
     * A division that is named.
     *
     * @param word its name
     */
    record Named(DivisionWord word) implements End {}

    /** A division that is implied and not named. */
    enum Implied implements End {
        /** The main division. */
        MAIN,
        /** The next manual after the main one. */
        SECOND,
        /** Every manual but the main one. */
        OTHERS,
        /** The pedal. */
        PEDAL,
        /** The division under whose heading the coupler stands. */
        HERE
    }

    UnresolvedCoupler with(Coupler.Kind other) {
        return new UnresolvedCoupler(text, source, keyboard, other);
    }
}
