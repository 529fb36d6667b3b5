package versewind.store;

import versewind.organ.Instrument;
import versewind.sound.Calibration;
import versewind.sound.OrganSound;

/**
 * An instrument as its file has it, and what is known of it by readings.
 *
 * @param instrument with the trims of its calibration
 * @param calibration what these rest on
 */
public record KnownOrgan(Instrument instrument, Calibration calibration) {

    /** An instrument that was never calibrated. */
    public static KnownOrgan of(Instrument instrument) {
        return new KnownOrgan(instrument, Calibration.NONE);
    }

    /**
     * Opens it for listening.
     *
     * @throws IllegalArgumentException with a sentence, if its room names a material that the table of absorption does
     *     not have
     */
    public OrganSound sound() {
        return OrganSound.open(instrument, calibration);
    }
}
