package versewind.calibration;

import java.util.List;
import versewind.organ.Trims;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Verse;
import versewind.sound.Covariance;
import versewind.sound.Margin;
import versewind.sound.NormalDistribution;
import versewind.sound.Offsets;
import versewind.sound.OrganSound;
import versewind.sound.Parameters;
import versewind.sound.Thresholds;

/**
 * The update of an organ by feedback after a service: too soft, right, too strong.
 *
 * <p>Feedback is an ordered observation: the felt margin, which is the true margin plus an error of 3 dB, lay below, in
 * or above the band that is right. The margin is linear in the {@link Parameters}; each verse in turn replaces the
 * normal distribution of the felt margin by that distribution truncated at the edges of the band, and that by the
 * normal distribution of the same mean and variance. The edges are those of {@link Thresholds}; a voice or a melody is
 * right up to 10 dB above its edge, beyond which the organ beneath it is too soft (an estimate).
 *
 * <p>Range: feedback that contradicts the estimate counts for less than it should, since margins are bounded.
 *
 * <p>Source: ordered probit with assumed-density filtering, as in T. Minka, A family of algorithms for approximate
 * Bayesian inference, MIT (2001), ch. 3; formulas from memory.
 *
 * <p>Checked against: {@code FeedbackUpdateTest}.
 */
public final class FeedbackUpdate {

    /** Standard deviation in dB of the felt margin about the true one. An estimate. */
    private static final double FELT_SD_DB = 3;

    private static final double RIGHT_BAND_DB = 10;

    private FeedbackUpdate() {}

    /** The band in dB of margin that some feedback points to. */
    record Band(double fromDb, double toDb) {

        static Band of(Verse verse, HeardAs heard) {
            Thresholds thresholds = Thresholds.of(verse.mode());
            double rightFromDb = thresholds.goodDb();
            double rightToDb = thresholds.tooStrongDb().orElse(rightFromDb + RIGHT_BAND_DB);
            // the words of a voice stand out less, the stronger the organ
            HeardAs organ = thresholds.kind() == Margin.Kind.VOICE ? opposite(heard) : heard;
            return switch (organ) {
                case TOO_SOFT -> new Band(Double.NEGATIVE_INFINITY, rightFromDb);
                case RIGHT -> new Band(rightFromDb, rightToDb);
                case TOO_STRONG -> new Band(rightToDb, Double.POSITIVE_INFINITY);
            };
        }

        private static HeardAs opposite(HeardAs heard) {
            return switch (heard) {
                case TOO_SOFT -> HeardAs.TOO_STRONG;
                case RIGHT -> HeardAs.RIGHT;
                case TOO_STRONG -> HeardAs.TOO_SOFT;
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
            Margin margin = sound.margin(verse, feedback.present(), gradient);
            if (margin.db().isEmpty()) {
                continue;
            }
            Band band = Band.of(verse, feedback.heard());
            double expectedDb = margin.db().getAsDouble() + Covariance.inner(gradient, found);
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
