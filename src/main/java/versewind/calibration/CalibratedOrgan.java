package versewind.calibration;

import versewind.sound.OrganSound;

/**
 * The sound of an organ together with what it rests on.
 *
 * @param sound what estimates are made with
 * @param calibration the readings used
 * @param experience what its organist knows without a meter
 */
public record CalibratedOrgan(OrganSound sound, Calibration calibration, Experience experience) {}
