package versewind.screen.toolkit;

/** How large the letters of stops and verses are. */
public enum Letters {
    /** A cell each. */
    USUAL,
    /** Several cells each, to be read from two metres ({@link Enlarged}). */
    LARGE;

    public Letters other() {
        return this == USUAL ? LARGE : USUAL;
    }
}
