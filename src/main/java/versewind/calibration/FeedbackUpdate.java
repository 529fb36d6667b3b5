package versewind.calibration;

import java.util.List;
import java.util.Optional;
import versewind.organ.Trims;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Verse;
import versewind.sound.ClearShare;
import versewind.sound.Covariance;
import versewind.sound.NormalDistribution;
import versewind.sound.Offsets;
import versewind.sound.OrganSound;
import versewind.sound.Parameters;

/**
 * The update of an organ by feedback after a service: too soft, right, too strong.
 *
 * <p>Feedback is an ordered observation of the share: the level of the organ as felt, which is its true level plus an
 * error of 3 dB, lay below, in or above the {@link ClearShare.RightBand} of the verse. The level of the organ over the
 * singing, or of the melody over its accompaniment, is linear in the {@link Parameters}; each verse in turn replaces
 * the normal distribution of the felt level by that distribution truncated at the edges of the band, and that by the
 * normal distribution of the same mean and variance.
 *
 * <p>Source: ordered probit with assumed-density filtering, as in T. Minka, A family of algorithms for approximate
 * Bayesian inference, MIT (2001), ch. 3; formulas from memory.
 *
 * <p>Checked against: {@code FeedbackUpdateTest}.
 */
public final class FeedbackUpdate {

    /** Standard deviation in dB of the felt level about the true one. An estimate. */
    private static final double FELT_SD_DB = 3;

    private FeedbackUpdate() {}

    /** The levels in dB above the estimate that some feedback points to. */
    record Band(double fromDb, double toDb) {

        static Band of(ClearShare.RightBand right, HeardAs heard) {
            return switch (heard) {
                case TOO_SOFT -> new Band(Double.NEGATIVE_INFINITY, right.fromDb());
                case RIGHT -> new Band(right.fromDb(), right.toDb());
                case TOO_STRONG -> new Band(right.toDb(), Double.POSITIVE_INFINITY);
            };
        }
    }

    /**
     * An organ after what was heard, one registration after the other; the same organ if there is nothing.
     *
     * @param sound the organ as expected before
     * @param heard registrations of this organ
     */
    public static OrganSound of(OrganSound sound, List<HeardRegistration> heard) {
        List<Verse> answered = heard.stream().map(HeardRegistration::verse).toList();
        if (answered.isEmpty()) {
            return sound;
        }
        Parameters parameters = sound.parameters();
        double[] found = new double[parameters.count()];
        double[] gradient = new double[found.length];
        Covariance covariance = sound.covariance();
        for (Verse verse : answered) {
            Feedback feedback = verse.answer().orElseThrow();
            Optional<ClearShare.RightBand> right = sound.rightBand(verse, feedback.present());
            if (right.isEmpty()) {
                continue;
            }
            Band band = Band.of(right.get(), feedback.heard());
            sound.gradient(verse, feedback.present(), gradient);
            double expectedDb = Covariance.inner(gradient, found);
            double[] gain = covariance.times(gradient);
            double variance = Covariance.inner(gradient, gain) + FELT_SD_DB * FELT_SD_DB;
            NormalDistribution.Moments felt =
                    NormalDistribution.truncated(expectedDb, Math.sqrt(variance), band.fromDb(), band.toDb());
            Covariance.addScaled(found, gain, (felt.mean() - expectedDb) / variance);
            covariance = covariance.afterPart(gradient, FELT_SD_DB, 1 - felt.variance() / variance);
        }
        Offsets offsets = sound.offsets().plus(parameters.offsets(found));
        return sound.with(parameters.trims(Trims.of(sound.organ()), found), offsets)
                .with(covariance);
    }
}
