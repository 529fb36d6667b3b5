package versewind.schema;

import java.util.List;
import java.util.Optional;
import versewind.calibration.CalibratedOrgan;
import versewind.calibration.Calibration;
import versewind.calibration.Experience;
import versewind.calibration.FeedbackUpdate;
import versewind.calibration.Fit;
import versewind.calibration.MeterReading;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.organ.Trims;
import versewind.plan.Verse;
import versewind.sound.OrganSound;

/**
 * An instrument as its file has it, and what is known of it by readings and by ear.
 *
 * @param instrument with the trims of its calibration
 * @param calibration what these rest on
 * @param experience what its organist knows without a meter
 * @param former what its parts were called before
 */
public record KnownOrgan(Instrument instrument, Calibration calibration, Experience experience, FormerNames former) {

    /** An instrument of which nothing is known yet, and of which nothing ever had another name. */
    public static KnownOrgan of(Instrument instrument) {
        return new KnownOrgan(instrument, Calibration.NONE, Experience.NONE, FormerNames.NONE);
    }

    /** With what its organist now knows without a meter. */
    public KnownOrgan with(Experience other) {
        return new KnownOrgan(instrument, calibration, other, former);
    }

    /** As it was before any reading, opened for listening. */
    public OrganSound soundBeforeReadings() {
        return OrganSound.open(calibration.before().orElse(Trims.of(instrument)).on(instrument));
    }

    /** Fitted to these readings instead of those it rests on; to none, it is as it was before any. */
    public KnownOrgan fittedTo(List<MeterReading> readings) {
        OrganSound before = soundBeforeReadings();
        if (readings.isEmpty()) {
            return new KnownOrgan(before.organ(), Calibration.NONE, experience, former);
        }
        Fit fit = Fit.of(before, readings);
        return new KnownOrgan(fit.instrument(), fit.calibration(), experience, former);
    }

    /** Opened for estimates, together with what is known of it. */
    public CalibratedOrgan calibrated() {
        return CalibratedOrgan.of(calibration.soundOf(instrument), calibration, experience);
    }

    /**
     * A verse beside the usual registration nearest to it, in a few words: "2 dB above your usual".
     *
     * @param experience what is usual on the organ
     * @param sound the organ, opened
     * @param verse the verse
     * @param people at the service
     * @return empty where no usual registration applies, or one of them is silent
     */
    public static Optional<String> fromUsual(Experience experience, OrganSound sound, Verse verse, int people) {
        return experience.nearest(verse, verse.people().orElse(people)).flatMap(usual -> sound.step(
                        usual.verse(), verse, people)
                .map(step -> level(step.db()) + experience.called(usual)));
    }

    private static String level(double db) {
        long whole = Math.round(Math.abs(db));
        return whole == 0 ? "as loud as " : whole + " dB " + (db > 0 ? "above " : "below ");
    }

    /**
     * Opens it for estimates.
     *
     * @throws IllegalArgumentException with a sentence, if its room names a material that the table of absorption does
     *     not have
     */
    public OrganSound sound() {
        return new FeedbackUpdate(calibration.soundOf(instrument), experience.all()).sound();
    }
}
