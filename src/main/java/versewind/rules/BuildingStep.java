package versewind.rules;

/**
 * The steps in which a registration is built up, the softest first; it is taken off in the opposite order. An organ has
 * those of them for which it has stops. Common practice, no source.
 */
public enum BuildingStep {
    FLUTE_8("flute 8"),
    FLUTES_8_4("flutes 8 4"),
    PRINCIPAL_8("principal 8 with flute 4"),
    PRINCIPALS_8_4("principals 8 4"),
    PRINCIPALS_8_4_2("principals 8 4 2"),
    SECOND_CHORUS("second chorus coupled"),
    MIXTURES("mixtures"),
    ENCLOSED_REEDS("reeds in the box"),
    MAIN_REEDS("reeds"),
    DOUBLES("manual 16 ft and second principals"),
    THIRTY_TWO_FEET("octave coupler and 32 ft");

    private final String word;

    BuildingStep(String word) {
        this.word = word;
    }

    /** Its usual name: "principals 8 4". */
    public String word() {
        return word;
    }
}
