package versewind.organ;

/** The kind of pipe a stop is made of, as far as it shapes the sound. Common practice, no source. */
public enum Pipe implements Worded {
    /** Open and cylindrical, of metal or wood. */
    OPEN,
    /** Stopped or half stopped (with a chimney): weak even partials. */
    STOPPED,
    /** Of double length, blown to its octave. */
    HARMONIC,
    /** Tapering toward the top. */
    TAPERED,
    /** A reed with a conical resonator: all partials. */
    CONICAL_REED,
    /** A reed with a cylindrical resonator: weak even partials. */
    CYLINDRICAL_REED;

    /** True for reed pipes. */
    public boolean isReed() {
        return this == CONICAL_REED || this == CYLINDRICAL_REED;
    }
}
