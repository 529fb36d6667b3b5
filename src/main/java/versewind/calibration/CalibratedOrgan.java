package versewind.calibration;

import java.util.List;
import versewind.sound.OrganSound;

/**
 * The sound of an organ together with what it rests on.
 *
 * @param sound what estimates are made with
 * @param calibration the readings used
 * @param experience what its organist knows without a meter
 * @param contradicting what of this contradicts all the rest
 */
public record CalibratedOrgan(
        OrganSound sound, Calibration calibration, Experience experience, List<HeardRegistration> contradicting) {

    public CalibratedOrgan {
        contradicting = List.copyOf(contradicting);
    }
}
