package versewind.organ;

import java.util.Locale;

/** How a key reaches the pallet, as far as it decides what a coupler carries along. Common practice, no source. */
public enum Action {
    /** A coupler moves the keys, or what hangs on them, of the other keyboard, and with them what is coupled to it. */
    MECHANICAL,
    /** A coupler reads the keys that are played, and carries nothing along. */
    ELECTRIC;

    /** In words: "mechanical". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
