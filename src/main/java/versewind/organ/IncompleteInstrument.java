package versewind.organ;

/** Parts of an instrument that do not fit together; the message says what is wrong, without a full stop. */
public final class IncompleteInstrument extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient Completeness.Fault fault;

    /** What can be at fault. */
    public enum Part {
        INSTRUMENT,
        DIVISION,
        STOP,
        COUPLER,
        TREMULANT,
        PISTONS
    }

    IncompleteInstrument(Completeness.Fault fault) {
        super(fault.problem());
        this.fault = fault;
    }

    /** What is at fault. */
    public Part part() {
        return fault.part();
    }

    /** Its index in the instrument, of a stop in {@link Instrument#stops()}; 0 where there is only one such part. */
    public int index() {
        return fault.index();
    }

    /** What to do, a sentence. */
    public String remedy() {
        return fault.remedy();
    }
}
