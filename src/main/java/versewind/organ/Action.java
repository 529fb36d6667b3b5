package versewind.organ;

import java.util.Locale;

/** The action between key and pallet, as far as it decides what couplers do. Common practice, no source. */
public enum Action {
    /** Couplers move the coupled keys, and so whatever is coupled to those. */
    MECHANICAL,
    /** Couplers do not move the coupled keys. */
    ELECTRIC;

    /** In words: "mechanical". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
