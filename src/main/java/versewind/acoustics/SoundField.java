package versewind.acoustics;

/** Incidence of sound at the listener. */
public enum SoundField {
    /** From the front only, as outdoors. */
    FREE,
    /** Equally from all sides, as far from the organ in a church. */
    DIFFUSE
}
