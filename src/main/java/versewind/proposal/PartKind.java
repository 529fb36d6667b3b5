package versewind.proposal;

import java.util.Locale;

/** Of what a row of a score is. */
public enum PartKind {
    /** How far the balance lies from where the verse wants it. */
    BALANCE,
    /** The verdict on the balance, where it is not the best. */
    VERDICT,
    /** A rule that nobody breaks. */
    FAULT,
    /** A rule that a teacher would mention. */
    RULE,
    /** A step of the order that suits other words. */
    ORDER,
    /** Where the hands play, and with or without the feet; the boxes. */
    PLAYING,
    /** Stops and couplers. */
    ECONOMY,
    /** The change from the verse before. */
    CHANGES,
    /** How it stands to its neighbours. */
    HYMN;

    /** In words: "balance". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
