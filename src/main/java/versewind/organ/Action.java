package versewind.organ;

/** The action between key and pallet, as far as it decides what couplers do. Common practice, no source. */
public enum Action implements Worded {
    /** Couplers move the coupled keys, and so whatever is coupled to those. */
    MECHANICAL,
    /** Couplers do not move the coupled keys. */
    ELECTRIC;
}
