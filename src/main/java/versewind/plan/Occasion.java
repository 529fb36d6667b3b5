package versewind.plan;

import versewind.organ.Worded;

/** The occasion of a service, and what suits it. A suggestion; common practice, no source. */
public enum Occasion implements Worded {
    FESTAL("strong singing is likely; let the last hymn rise to the full chorus and its reeds"),
    JOYFUL("bright sounds suit it; keep the reeds for one or two verses"),
    ORDINARY("each hymn by its own words; full organ seldom"),
    EXPECTANT("clear and held back; let the service grow toward its last hymn"),
    PENITENTIAL("foundations without reeds and mixtures; the box more closed than open"),
    SOLEMN("as little as still leads; manuals only where the words are gravest"),
    WEDDING("warm and bright; few of those present may sing, so the organ carries the tune"),
    FUNERAL("quiet foundations; few may sing, so a clear tune at a moderate level");

    private final String suggestion;

    Occasion(String suggestion) {
        this.suggestion = suggestion;
    }

    /** True where everything is gentle of which the plan says nothing. */
    public boolean isHeldBack() {
        return switch (this) {
            case PENITENTIAL, SOLEMN, FUNERAL -> true;
            case FESTAL, JOYFUL, ORDINARY, EXPECTANT, WEDDING -> false;
        };
    }

    /** Its meaning for the organ, in a few words without a full stop. */
    public String suggestion() {
        return suggestion;
    }
}
