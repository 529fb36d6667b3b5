package versewind.plan;

import java.util.Optional;

/** Which part of the hymn a verse is. */
public enum VerseKind {
    /** The playover. */
    INTRODUCTION("introduction", "Intro"),
    VERSE("verse", "V"),
    REFRAIN("refrain", "Refr"),
    /** The organ alone between verses. */
    INTERLUDE("interlude", "Inter"),
    LAST_VERSE("last verse", "Last"),
    AMEN("Amen", "Amen");

    private final String word;
    private final String usualLabel;

    VerseKind(String word, String usualLabel) {
        this.word = word;
        this.usualLabel = usualLabel;
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** The usual label of this kind of verse; a plain verse adds its number. */
    public String usualLabel() {
        return usualLabel;
    }

    /** True if the organ plays alone. */
    public boolean isOrganAlone() {
        return this == INTRODUCTION || this == INTERLUDE;
    }

    /** The kind with this keyword, if there is one. */
    public static Optional<VerseKind> ofWord(String word) {
        return Keywords.find(values(), VerseKind::word, word);
    }
}
