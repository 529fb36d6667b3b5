package versewind.screen.toolkit;

/** How stops and verses are written. */
public enum Letters {
    /** A cell each. */
    USUAL,
    /** Several cells each, to be read from two metres ({@link Enlarged}). */
    LARGE,
    /** In words, one to a row, to be read aloud or in braille. */
    SPOKEN;

    public Letters other() {
        return this == USUAL ? LARGE : USUAL;
    }
}
