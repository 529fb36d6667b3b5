package versewind.organ;

/** Parts of an instrument that do not fit together: what is wrong, which part is at fault, and what to do. */
public final class IncompleteInstrument extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final Part part;
    private final int index;
    private final String remedy;

    /** What can be at fault. */
    public enum Part {
        INSTRUMENT,
        DIVISION,
        STOP,
        COUPLER,
        TREMULANT,
        PISTONS
    }

    IncompleteInstrument(Part part, int index, String problem, String remedy) {
        super(problem);
        this.part = part;
        this.index = index;
        this.remedy = remedy;
    }

    /** What is at fault. */
    public Part part() {
        return part;
    }

    /** Its index in the instrument, of a stop in {@link Instrument#stops()}; 0 where there is only one such part. */
    public int index() {
        return index;
    }

    /** What to do, a sentence. */
    public String remedy() {
        return remedy;
    }
}
