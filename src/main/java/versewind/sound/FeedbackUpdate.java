package versewind.sound;

import java.util.List;
import org.apache.commons.numbers.gamma.Erf;
import org.apache.commons.numbers.gamma.Erfcx;
import versewind.organ.Trims;
import versewind.plan.Feedback;
import versewind.plan.HeardAs;
import versewind.plan.Verse;

/**
 * What the organist's answers after a service tell of an organ: too soft, right, too strong.
 *
 * <p>An answer is an ordered one: the margin as the organist felt it, the true margin and an error of 3 dB, lay below the
 * band that is right, in it, or above it. The margin is taken as a straight line through the {@link Parameters}; each answer
 * in turn replaces the normal distribution of the felt margin by that distribution cut at the band's edges, and by the
 * normal one of the same mean and variance. The edges are those of {@link Thresholds}; a voice or a melody that stands 10
 * dB above its edge has too little organ beneath it, an estimate.
 *
 * <p>Range: answers that the estimate makes unlikely count for less than they should, as the margin is bounded.
 *
 * <p>Source: ordered probit with assumed-density filtering, as in T. Minka, A family of algorithms for approximate
 * Bayesian inference, MIT (2001), 3; formulas from memory.
 *
 * <p>Checked against: {@code AnswersTest}, numerical integration.
 */
final class FeedbackUpdate {

    /** Standard deviation in dB of what an organist feels. An estimate. */
    static final double FELT_SD_DB = 3;

    private static final double RIGHT_BAND_DB = 10;

    private FeedbackUpdate() {}

    /** The band in dB of margin in which the felt margin lay. */
    record Band(double fromDb, double toDb) {

        static Band of(Margin.Kind kind, Verse verse, HeardAs heard) {
            return switch (kind) {
                case LEAD -> organ(heard, Thresholds.LEAD_DB, Thresholds.LEAD_TOO_STRONG_DB);
                case SOLO_LINE ->
                    organ(
                            heard,
                            Thresholds.SOLO_LINE_STANDS_OUT_DB,
                            Thresholds.SOLO_LINE_STANDS_OUT_DB + RIGHT_BAND_DB);
                case VOICE -> {
                    double clearDb = Thresholds.clearDb(verse.mode());
                    // the stronger the organ, the smaller the margin of the words
                    yield organ(opposite(heard), clearDb, clearDb + RIGHT_BAND_DB);
                }
                case ORGAN_ALONE -> new Band(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
            };
        }

        private static HeardAs opposite(HeardAs heard) {
            return switch (heard) {
                case TOO_SOFT -> HeardAs.TOO_STRONG;
                case RIGHT -> HeardAs.RIGHT;
                case TOO_STRONG -> HeardAs.TOO_SOFT;
            };
        }

        private static Band organ(HeardAs heard, double rightFromDb, double rightToDb) {
            return switch (heard) {
                case TOO_SOFT -> new Band(Double.NEGATIVE_INFINITY, rightFromDb);
                case RIGHT -> new Band(rightFromDb, rightToDb);
                case TOO_STRONG -> new Band(rightToDb, Double.POSITIVE_INFINITY);
            };
        }
    }

    /** A normal distribution cut at two edges: its mean, and its variance. */
    record Cut(double mean, double variance) {

        /**
         * Cuts.
         *
         * @param mean of the whole distribution
         * @param sd its standard deviation
         * @param from lower edge, negative infinity for none
         * @param to upper edge, infinity for none
         */
        static Cut of(double mean, double sd, double from, double to) {
            double low = (from - mean) / sd;
            double high = (to - mean) / sd;
            if (low > 0) {
                // in the upper tail, where the distribution is the mirror image of the lower one
                Cut mirrored = of(-mean, sd, -to, -from);
                return new Cut(-mirrored.mean(), mirrored.variance());
            }
            double atLow = ratio(low, high);
            double atHigh = ratio(high, high);
            double share = share(low, high);
            double shift = (atLow - atHigh) / share;
            double spread = (finite(low) * atLow - finite(high) * atHigh) / share;
            return new Cut(mean + sd * shift, sd * sd * Math.max(1e-9, 1 + spread - shift * shift));
        }

        private static double finite(double edge) {
            return Double.isInfinite(edge) ? 0 : edge;
        }

        /** The density at an edge, over that which keeps it from vanishing far out: exp(-top^2/2) for a top below 0. */
        private static double ratio(double edge, double top) {
            if (Double.isInfinite(edge)) {
                return 0;
            }
            double keep = top < 0 ? top * top / 2 : 0;
            return Math.exp(keep - edge * edge / 2) / Math.sqrt(2 * Math.PI);
        }

        /** What lies between the edges, over the same. */
        private static double share(double low, double high) {
            if (high >= 0) {
                return below(high) - below(low);
            }
            double keep = high * high / 2;
            double scaledHigh = Erfcx.value(-high / Math.sqrt(2)) / 2;
            double scaledLow =
                    Double.isInfinite(low) ? 0 : Erfcx.value(-low / Math.sqrt(2)) / 2 * Math.exp(keep - low * low / 2);
            return scaledHigh - scaledLow;
        }

        private static double below(double edge) {
            return (1 + Erf.value(edge / Math.sqrt(2))) / 2;
        }
    }

    /**
     * What is expected of an organ after answers, and how surely.
     *
     * @param trims of the stops and boxes
     * @param offsets of the singers and the room
     * @param known how surely
     */
    record Heeded(Trims trims, Offsets offsets, Covariance known) {}

    /**
     * Takes answers into account, one after the other.
     *
     * @param sound the organ as it was expected before
     * @param verses those that were answered
     */
    static Heeded heeded(OrganSound sound, List<Verse> verses) {
        Parameters unknowns = sound.unknowns();
        double[] found = new double[unknowns.count()];
        double[] gradient = new double[unknowns.count()];
        Covariance known = sound.known();
        for (Verse verse : verses) {
            Feedback answer = verse.answer().orElseThrow();
            Margin margin = sound.ofVerdict(verse, answer.present(), gradient);
            if (margin.db().isEmpty()) {
                continue;
            }
            Band band = Band.of(margin.kind(), verse, answer.heard());
            double expectedDb = margin.db().getAsDouble() + Covariance.inner(gradient, found);
            double[] moved = known.times(gradient);
            double variance = Covariance.inner(gradient, moved) + FELT_SD_DB * FELT_SD_DB;
            Cut cut = Cut.of(expectedDb, Math.sqrt(variance), band.fromDb(), band.toDb());
            for (int place = 0; place < found.length; place++) {
                found[place] += moved[place] * (cut.mean() - expectedDb) / variance;
            }
            known = known.afterPart(gradient, FELT_SD_DB, 1 - cut.variance() / variance);
        }
        Offsets were = sound.offsets();
        Offsets more = unknowns.offsets(found);
        return new Heeded(
                unknowns.trims(Trims.of(sound.organ()), found),
                new Offsets(were.singersDb() + more.singersDb(), were.roomDb() + more.roomDb()),
                known);
    }
}
