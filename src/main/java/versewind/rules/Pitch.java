package versewind.rules;

/** The octaves of which a chorus is built; fifths and thirds are none of them. */
enum Pitch {
    FEET_64,
    FEET_32,
    FEET_16,
    FEET_8,
    FEET_4,
    FEET_2,
    FEET_1,
    FEET_HALF;

    /** Feet of the pitch as written. */
    static final int UNISON_FEET = 8;

    private static final int OCTAVE_SEMITONES = 12;
    private static final int COUNT = values().length;

    /** As it stands on a knob: "4". */
    String feet() {
        return this == FEET_HALF ? "1/2" : name().substring(name().indexOf('_') + 1);
    }

    /** The bit of a pitch in semitones above 8 ft, 0 where that is no octave of it. */
    static int bitOf(int semitones) {
        int octave = Math.floorDiv(semitones, OCTAVE_SEMITONES) + FEET_8.ordinal();
        boolean isOctave = Math.floorMod(semitones, OCTAVE_SEMITONES) == 0;
        return isOctave && octave >= 0 && octave < COUNT ? 1 << octave : 0;
    }

    int bit() {
        return 1 << ordinal();
    }
}
