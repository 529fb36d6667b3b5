package versewind.plan;

import versewind.organ.Worded;

/** Which part of the hymn a verse is. */
public enum VerseKind implements Worded {
    /** The playover. */
    INTRODUCTION("Intro"),
    VERSE("V"),
    REFRAIN("Refr"),
    /** The organ alone between verses. */
    INTERLUDE("Inter"),
    LAST_VERSE("Last"),
    AMEN("Amen");

    private final String usualLabel;

    VerseKind(String usualLabel) {
        this.usualLabel = usualLabel;
    }

    /** In words. */
    @Override
    public String word() {
        return this == AMEN ? "Amen" : Worded.super.word();
    }

    /** The usual label of this kind of verse; a plain verse adds its number. */
    public String usualLabel() {
        return usualLabel;
    }

    /** True if the organ plays alone. */
    public boolean isOrganAlone() {
        return this == INTRODUCTION || this == INTERLUDE;
    }
}
