package versewind.plan;

import versewind.organ.Worded;

/** The character a verse should have. */
public enum Mood implements Worded {
    /** Soft colours: flutes rather than principals, no mixture, no reed. */
    GENTLE,
    /** As the hymn is usually sung. */
    PLAIN,
    /** Upperwork rather than weight. */
    BRIGHT,
    /** Mixtures, and reeds where they are wanted. */
    FESTAL;
}
