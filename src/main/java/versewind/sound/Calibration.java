package versewind.sound;

import java.util.List;
import java.util.Optional;
import versewind.organ.Trims;

/**
 * What the trims of a calibrated instrument rest on.
 *
 * @param before the trims that it had before any reading; empty where it was never calibrated
 * @param offsets what was found of the singers and the room
 * @param kept all readings that were used, in the order they were taken
 */
public record Calibration(Optional<Trims> before, Offsets offsets, List<Kept> kept) {

    /**
     * A reading, and what was to be expected of it.
     *
     * @param reading the reading
     * @param beforeDba the level in dB(A) that was expected before any reading
     * @param afterDba the level in dB(A) that is expected since
     */
    public record Kept(MeterReading reading, double beforeDba, double afterDba) {

        /** What was read less what is expected since, in dB. */
        public double residualDb() {
            return reading.dba() - afterDba;
        }
    }

    /** An instrument that was never calibrated. */
    public static final Calibration NONE = new Calibration(Optional.empty(), Offsets.NONE, List.of());

    public Calibration {
        kept = List.copyOf(kept);
    }

    /** The readings alone. */
    public List<MeterReading> readings() {
        return kept.stream().map(Kept::reading).toList();
    }

    /** Whether the instrument was never calibrated. */
    public boolean isNone() {
        return kept.isEmpty();
    }
}
