package versewind.acoustics;

/** How sound comes to the listener. */
public enum SoundField {
    /** From the front alone, as out of doors. */
    FREE,
    /** From all sides alike, as far from the organ in a church. */
    DIFFUSE
}
