package versewind.plan;

import java.util.Locale;

/** The usual character of a service by its day in the church year. A suggestion; common practice, no source. */
public enum Occasion {
    FESTAL("strong singing is likely; let the last hymn rise to the full chorus and its reeds"),
    JOYFUL("bright sounds suit it; keep the reeds for one or two verses"),
    PLAIN("each hymn by its own words; full organ seldom"),
    EXPECTANT("clear and held back; let the service grow toward its last hymn"),
    PENITENTIAL("foundations without reeds and mixtures; the box more closed than open"),
    SOLEMN("as little as still leads; manuals only where the words are gravest");

    private final String suggestion;

    Occasion(String suggestion) {
        this.suggestion = suggestion;
    }

    /** In words: "festal". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Its meaning for the organ, in a few words without a full stop. */
    public String suggestion() {
        return suggestion;
    }
}
