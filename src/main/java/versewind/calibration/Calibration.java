package versewind.calibration;

import java.util.List;
import java.util.Optional;
import versewind.organ.Instrument;
import versewind.organ.Trims;
import versewind.sound.Covariance;
import versewind.sound.Offsets;
import versewind.sound.OrganSound;

/**
 * The readings behind the trims of a calibrated instrument.
 *
 * @param before the trims before any reading; empty if the instrument was never calibrated
 * @param offsets of the singers and the room, as fitted
 * @param kept all readings used, in the order they were taken
 */
public record Calibration(Optional<Trims> before, Offsets offsets, List<Kept> kept) {

    /** The calibration of an instrument that was never calibrated. */
    public static final Calibration NONE = new Calibration(Optional.empty(), Offsets.NONE, List.of());

    public Calibration {
        kept = List.copyOf(kept);
    }

    /**
     * A reading and the levels expected of it.
     *
     * @param reading the reading
     * @param beforeDba level in dB(A) expected before any reading
     * @param afterDba level in dB(A) expected after the fit
     */
    public record Kept(MeterReading reading, double beforeDba, double afterDba) {

        /** The reading minus the level expected after the fit, in dB. */
        public double residualDb() {
            return reading.dba() - afterDba;
        }
    }

    /** The readings alone. */
    public List<MeterReading> readings() {
        return kept.stream().map(Kept::reading).toList();
    }

    /** True for an instrument that was never calibrated. */
    public boolean isNone() {
        return kept.isEmpty();
    }

    /**
     * The sound of an instrument with the certainty that the readings give it.
     *
     * @param instrument with the trims of this calibration
     * @throws IllegalArgumentException with a sentence, if its room names a material missing from the absorption table
     */
    public OrganSound soundOf(Instrument instrument) {
        OrganSound sound = OrganSound.open(instrument, offsets);
        return isNone() ? sound : sound.with(covariance(sound, readings()));
    }

    /** The covariance after readings, linearised about the levels that an organ has now. */
    static Covariance covariance(OrganSound sound, List<MeterReading> readings) {
        Covariance covariance = sound.covariance();
        double[] gradient = new double[sound.parameters().count()];
        for (MeterReading reading : readings) {
            reading.shownDba(sound, gradient);
            covariance = covariance.after(gradient, MeterReading.NOISE_SD_DB);
        }
        return covariance;
    }
}
