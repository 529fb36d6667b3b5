package versewind.organ;

/**
 * Knobs of an instrument, without its swell boxes.
 *
 * @param stops indices of stops
 * @param couplers indices of couplers
 * @param tremulants indices of tremulants
 */
public record Knobs(IndexSet stops, IndexSet couplers, IndexSet tremulants) {

    /** None. */
    public static final Knobs NONE = new Knobs(IndexSet.EMPTY, IndexSet.EMPTY, IndexSet.EMPTY);

    /** Written out, like {@link #equals}: a record's own cost milliseconds at the start of the program. */
    @Override
    public int hashCode() {
        return 31 * (31 * stops.hashCode() + couplers.hashCode()) + tremulants.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Knobs knobs
                && stops.equals(knobs.stops)
                && couplers.equals(knobs.couplers)
                && tremulants.equals(knobs.tremulants);
    }

    /** Those that are drawn. */
    public static Knobs drawn(Registration registration) {
        return new Knobs(registration.stops(), registration.couplers(), registration.tremulants());
    }

    /** All that an instrument has. */
    public static Knobs all(Instrument organ) {
        return new Knobs(
                IndexSet.range(organ.stops().size()),
                IndexSet.range(organ.couplers().size()),
                IndexSet.range(organ.tremulants().size()));
    }

    /** Those that are among others too. */
    public Knobs and(Knobs others) {
        return new Knobs(stops.and(others.stops), couplers.and(others.couplers), tremulants.and(others.tremulants));
    }

    /** These and others. */
    public Knobs plus(Knobs others) {
        return new Knobs(stops.plus(others.stops), couplers.plus(others.couplers), tremulants.plus(others.tremulants));
    }

    /** How many. */
    public int size() {
        return stops.size() + couplers.size() + tremulants.size();
    }
}
