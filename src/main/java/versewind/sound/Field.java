package versewind.sound;

/** How sound comes to the listener. */
public enum Field {
    /** From the front alone, as out of doors. */
    FREE,
    /** From all sides alike, as far from the organ in a church. */
    DIFFUSE
}
