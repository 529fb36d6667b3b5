package versewind.calibration;

import versewind.plan.Plan;
import versewind.sound.OrganSound;

/**
 * The sound of an organ together with the calibration it rests on.
 *
 * @param sound what estimates are made with
 * @param calibration the readings used
 */
public record CalibratedOrgan(OrganSound sound, Calibration calibration) {

    /** With the feedback on a plan's verses taken into account; the calibration stays the same. */
    public CalibratedOrgan withFeedback(Plan plan) {
        return new CalibratedOrgan(FeedbackUpdate.withFeedback(sound, plan), calibration);
    }
}
