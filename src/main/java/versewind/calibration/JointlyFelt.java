package versewind.calibration;

import java.util.List;
import versewind.sound.Covariance;
import versewind.sound.NormalDistribution;

/**
 * The felt levels of several verses together, each of which tells of all others: for each verse the normal distribution
 * that stands for its answers, found by expectation propagation. Their order does not matter.
 *
 * <p>A verse's answers are replaced by a factor exp(-t F^2 / 2 + v F) of its felt level F, such that mean and variance
 * are those of the answers themselves beside the factors of all others; verse by verse, again and again, until no mean
 * or standard deviation moves by 0.01 dB. The precision t is below 0 where the answers deny each other and so make the
 * level less certain, but not by so much that all together could double its variance.
 *
 * <p>Source: T. Minka, A family of algorithms for approximate Bayesian inference, MIT (2001), ch. 3; C. Rasmussen and
 * C. Williams, Gaussian Processes for Machine Learning, MIT Press (2006), 3.6; formulas from memory.
 *
 * <p>Checked against: {@code JointlyFeltTest}, Bayes' rule by random draws, and {@code FeedbackUpdateTest}, on a grid.
 */
final class JointlyFelt {

    private static final int MOST_SWEEPS = 200;
    private static final double CONVERGED_DB = 0.01;
    private static final double DAMPED = 0.7;

    private final List<HeardVerse> verses;
    private final double[][] covariance;
    private final double[] means;
    private final double[] precisions;
    private final double[] shifts;
    private final double leastPrecision;
    private double logGrowth;

    /**
     * Finds the factors.
     *
     * @param prior covariance of the parameters
     * @param verses that were heard
     */
    JointlyFelt(Covariance prior, List<HeardVerse> verses) {
        int count = verses.size();
        this.verses = verses;
        covariance = new double[count][count];
        means = new double[count];
        precisions = new double[count];
        shifts = new double[count];
        for (int one = 0; one < count; one++) {
            for (int other = 0; other <= one; other++) {
                covariance[one][other] =
                        prior.of(verses.get(one).gradient(), verses.get(other).gradient());
                covariance[other][one] = covariance[one][other];
            }
            covariance[one][one] += HeardVerse.OWN_SD_DB * HeardVerse.OWN_SD_DB;
        }
        double all = 0;
        for (int verse = 0; verse < count; verse++) {
            all += covariance[verse][verse];
        }
        // the largest eigenvalue is no more than the sum of all
        leastPrecision = -1 / (2 * all);
        double movedDb = Double.POSITIVE_INFINITY;
        for (int sweep = 0; sweep < MOST_SWEEPS && movedDb >= CONVERGED_DB; sweep++) {
            movedDb = 0;
            for (int verse = 0; verse < count; verse++) {
                movedDb = Math.max(movedDb, learn(verse));
            }
        }
    }

    /** Brings one factor nearer to the answers; returns how far mean and standard deviation were from them, in dB. */
    private double learn(int verse) {
        double variance = covariance[verse][verse];
        NormalDistribution.Moments others = rest(verse);
        NormalDistribution.Moments felt = verses.get(verse).felt(others);
        double precision = Math.max(leastPrecision, 1 / felt.variance() - 1 / others.variance());
        double shift = felt.mean() * (precision + 1 / others.variance()) - others.mean() / others.variance();
        double morePrecise = DAMPED * (precision - precisions[verse]);
        double shifted = DAMPED * (shift - shifts[verse]);
        double sdDb = Math.sqrt(1 / (precision + 1 / others.variance()));
        double movedDb = Math.max(Math.abs(felt.mean() - means[verse]), Math.abs(sdDb - Math.sqrt(variance)));
        precisions[verse] += morePrecise;
        shifts[verse] += shifted;
        double[] column = covariance[verse].clone();
        double part = 1 + morePrecise * variance;
        logGrowth += Math.log(part);
        Covariance.addScaled(means, column, (shifted - morePrecise * means[verse]) / part);
        for (int row = 0; row < column.length; row++) {
            Covariance.addScaled(covariance[row], column, -morePrecise * column[row] / part);
        }
        return movedDb;
    }

    /** What all other verses make of the felt level of one: mean in dB and variance in dB2. */
    NormalDistribution.Moments rest(int verse) {
        double variance = covariance[verse][verse];
        double rest = 1 / variance - precisions[verse];
        return new NormalDistribution.Moments((means[verse] / variance - shifts[verse]) / rest, 1 / rest);
    }

    /** The natural logarithm of the probability of all answers together. */
    double logProbability() {
        double sum = (Covariance.inner(shifts, means) - logGrowth) / 2;
        for (int verse = 0; verse < verses.size(); verse++) {
            NormalDistribution.Moments rest = rest(verse);
            double variance = rest.variance();
            double part = 1 + precisions[verse] * variance;
            double shifted = rest.mean() + shifts[verse] * variance;
            double exponent = (shifted * shifted / part - rest.mean() * rest.mean()) / variance;
            sum += Math.log(verses.get(verse).probability(rest)) + (Math.log(part) - exponent) / 2;
        }
        return sum;
    }

    /** Precision of the factor of a verse, in 1/dB2; below 0 if its answers make the level less certain. */
    double precision(int verse) {
        return precisions[verse];
    }

    /** Mean of the factor of a verse in dB, times its precision. */
    double shift(int verse) {
        return shifts[verse];
    }
}
