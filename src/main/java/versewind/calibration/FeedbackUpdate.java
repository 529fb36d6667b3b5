package versewind.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.Trims;
import versewind.plan.HeardAs;
import versewind.plan.Verse;
import versewind.sound.ClearShare;
import versewind.sound.Covariance;
import versewind.sound.NormalDistribution;
import versewind.sound.Offsets;
import versewind.sound.OrganSound;
import versewind.sound.Parameters;

/**
 * The update of an organ by what was heard: usual registrations, and answers after a service.
 *
 * <p>Each is an ordered observation of the share: the level of the organ as felt lay below, in or above the {@link
 * ClearShare.RightBand} of what was played. The felt level is the true level, plus the organist's taste, which is
 * common to everything that one organist hears, plus an error of 3 dB of its own. The level of the organ over the
 * singing, or of the melody over its accompaniment, is linear in the {@link Parameters}; each observation in turn
 * replaces the normal distribution of the felt level by that distribution truncated at the edges of the band, and that
 * by the normal distribution of the same mean and variance.
 *
 * <p>Source: ordered probit with assumed-density filtering, as in T. Minka, A family of algorithms for approximate
 * Bayesian inference, MIT (2001), ch. 3; formulas from memory.
 *
 * <p>Checked against: {@code FeedbackUpdateTest}.
 */
public final class FeedbackUpdate {

    /** Standard deviation in dB of the felt level about the true one, besides taste. An estimate. */
    private static final double FELT_SD_DB = 3;

    /** What all others make less likely than this contradicts them. An estimate. */
    private static final double CONTRADICTING = 0.05;

    private final OrganSound sound;
    private final List<Observation> observations = new ArrayList<>();

    /**
     * Prepares an update.
     *
     * @param sound the organ as expected before
     * @param heard registrations of this organ
     */
    public FeedbackUpdate(OrganSound sound, List<HeardRegistration> heard) {
        this.sound = sound;
        Parameters parameters = sound.parameters();
        for (HeardRegistration each : heard) {
            Verse verse = each.verse();
            Optional<ClearShare.RightBand> right = sound.rightBand(verse, each.people());
            if (right.isPresent()) {
                double[] gradient = new double[parameters.count()];
                sound.gradient(verse, each.people(), gradient);
                gradient[parameters.taste()] = 1;
                observations.add(new Observation(each, gradient, Band.of(right.get(), each.heard())));
            }
        }
    }

    /** The levels in dB above the estimate to which a judgement points. */
    private record Band(double fromDb, double toDb) {

        static Band of(ClearShare.RightBand right, HeardAs heard) {
            return switch (heard) {
                case TOO_SOFT -> new Band(Double.NEGATIVE_INFINITY, right.fromDb());
                case RIGHT -> new Band(right.fromDb(), right.toDb());
                case TOO_STRONG -> new Band(right.toDb(), Double.POSITIVE_INFINITY);
            };
        }
    }

    /** A registration that was heard, the derivative of the felt level by the parameters, and where that lay. */
    private static final class Observation {
        private final HeardRegistration heard;
        private final double[] gradient;
        private final Band band;

        Observation(HeardRegistration heard, double[] gradient, Band band) {
            this.heard = heard;
            this.gradient = gradient;
            this.band = band;
        }
    }

    /** What is believed of the parameters: values in dB and their covariance. */
    private static final class Belief {
        private final double[] found;
        private Covariance covariance;

        Belief(OrganSound sound) {
            found = new double[sound.parameters().count()];
            covariance = sound.covariance();
        }

        double expectedDb(Observation each) {
            return Covariance.inner(each.gradient, found);
        }

        double sdDb(Observation each) {
            return Math.sqrt(covariance.variance(each.gradient) + FELT_SD_DB * FELT_SD_DB);
        }

        void learn(Observation each) {
            double expectedDb = expectedDb(each);
            double sdDb = sdDb(each);
            NormalDistribution.Moments felt =
                    NormalDistribution.truncated(expectedDb, sdDb, each.band.fromDb(), each.band.toDb());
            double variance = sdDb * sdDb;
            Covariance.addScaled(found, covariance.times(each.gradient), (felt.mean() - expectedDb) / variance);
            covariance = covariance.afterPart(each.gradient, FELT_SD_DB, 1 - felt.variance() / variance);
        }

        double probability(Observation each) {
            return NormalDistribution.between(expectedDb(each), sdDb(each), each.band.fromDb(), each.band.toDb());
        }
    }

    /** The organ after what was heard, one registration after the other; the same organ if there is nothing. */
    public OrganSound sound() {
        if (observations.isEmpty()) {
            return sound;
        }
        Belief belief = new Belief(sound);
        observations.forEach(belief::learn);
        Parameters parameters = sound.parameters();
        Offsets offsets = sound.offsets().plus(parameters.offsets(belief.found));
        return sound.with(parameters.trims(Trims.of(sound.organ()), belief.found), offsets)
                .with(belief.covariance);
    }

    /** Those of the registrations heard that contradict all others together. */
    public List<HeardRegistration> contradicting() {
        return IntStream.range(0, observations.size())
                .filter(index -> without(index).probability(observations.get(index)) < CONTRADICTING)
                .mapToObj(index -> observations.get(index).heard)
                .toList();
    }

    private Belief without(int one) {
        Belief belief = new Belief(sound);
        for (int index = 0; index < observations.size(); index++) {
            if (index != one) {
                belief.learn(observations.get(index));
            }
        }
        return belief;
    }
}
