package versewind.organ;

/**
 * Parts of an instrument that do not fit together, and which of them is at fault; the message is a sentence without
 * stop.
 */
public final class IncompleteInstrument extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final Part part;
    private final int index;

    /** What can be at fault. */
    public enum Part {
        INSTRUMENT,
        DIVISION,
        STOP,
        COUPLER,
        TREMULANT,
        PISTONS
    }

    IncompleteInstrument(Part part, int index, String sentence) {
        super(sentence);
        this.part = part;
        this.index = index;
    }

    /** What is at fault. */
    public Part part() {
        return part;
    }

    /** Its index in the instrument, of a stop in {@link Instrument#stops()}; 0 where there is only one such part. */
    public int index() {
        return index;
    }
}
