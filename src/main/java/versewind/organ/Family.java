package versewind.organ;

/** The tonal family of a stop. Common practice, no source. */
public enum Family implements Worded {
    /** Open diapasons, montres, prestants, octaves: the chorus. */
    PRINCIPAL(Pipe.OPEN),
    /** Open, stopped, harmonic and tapered flutes. */
    FLUTE(Pipe.OPEN),
    /** Gambas, violas, salicionals. */
    STRING(Pipe.OPEN),
    /** A string or flute tuned a little sharp, drawn with its partner. */
    CELESTE(Pipe.OPEN),
    /** Twelfth, nazard, tierce, larigot: one rank at a fifth, third or seventh. */
    MUTATION(Pipe.OPEN),
    /** Several high ranks that break back toward the treble. */
    MIXTURE(Pipe.OPEN),
    /** A wide compound stop used for melody. */
    CORNET(Pipe.OPEN),
    /** Trumpet, trombone, cornopean, bombarde. */
    CHORUS_REED(Pipe.CONICAL_REED),
    /** Oboe, clarinet, cromorne, vox humana. */
    SOLO_REED(Pipe.CONICAL_REED);

    private final Pipe usualPipe;

    Family(Pipe usualPipe) {
        this.usualPipe = usualPipe;
    }

    /** The kind of pipe a stop of this family usually has. */
    public Pipe usualPipe() {
        return usualPipe;
    }

    /** True for the two families of reeds. */
    public boolean isReed() {
        return this == CHORUS_REED || this == SOLO_REED;
    }

    /** True for stops of several ranks with a composition. */
    public boolean isCompound() {
        return this == MIXTURE || this == CORNET;
    }
}
