package versewind.organ;

import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A piston on one memory level: a general, which sets the whole organ, or a divisional, which sets one division.
 *
 * @param level memory level, from 1
 * @param division index of the division; empty for a general
 * @param number its number, from 1
 */
public record Piston(int level, OptionalInt division, int number) {

    /** Written out, like {@link #equals}: a record's own cost milliseconds at the start of the program. */
    @Override
    public int hashCode() {
        return 31 * (31 * level + division.orElse(-1)) + number;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Piston piston
                && level == piston.level
                && number == piston.number
                && division.equals(piston.division);
    }

    /** A general. */
    public static Piston general(int level, int number) {
        return new Piston(level, OptionalInt.empty(), number);
    }

    /** A divisional. */
    public static Piston of(int level, int division, int number) {
        return new Piston(level, OptionalInt.of(division), number);
    }

    /** True for a general. */
    public boolean isGeneral() {
        return division.isEmpty();
    }

    /** Its label: "G4"; "Swell 2". */
    public String label(Instrument organ) {
        return isGeneral() ? "G" + number : organ.divisionNames().get(division.getAsInt()) + " " + number;
    }

    /** Memory level and label, as plans write them: "2/G4"; on the first level "G4". */
    public String name(Instrument organ) {
        return (level == 1 ? "" : level + "/") + label(organ);
    }

    /**
     * The knobs that it sets: of a divisional the stops and tremulants of its division, and its couplers where the
     * organ's divisionals set them.
     */
    public Knobs reach(Instrument organ) {
        if (isGeneral()) {
            return Knobs.all(organ);
        }
        int home = division.getAsInt();
        String name = organ.divisionNames().get(home);
        return new Knobs(
                IndexSet.of(IntStream.range(0, organ.stops().size())
                        .filter(stop -> organ.stops().get(stop).division() == home)),
                IndexSet.of(IntStream.range(0, organ.couplers().size())
                        .filter(coupler -> organ.pistons().setsCouplers()
                                && organ.couplers().get(coupler).keyboard().equals(name))),
                IndexSet.of(IntStream.range(0, organ.tremulants().size())
                        .filter(tremulant ->
                                organ.tremulants().get(tremulant).division().equals(name))));
    }
}
