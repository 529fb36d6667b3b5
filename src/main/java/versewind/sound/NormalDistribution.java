package versewind.sound;

import org.apache.commons.numbers.gamma.Erfc;
import org.apache.commons.numbers.gamma.Erfcx;

/**
 * The normal distribution: tail, and the moments between two edges.
 *
 * <p>Source: the definitions; the error function is that of commons-numbers. The moments of a truncated normal
 * distribution are from memory.
 *
 * <p>Checked against: {@code NormalDistributionTest}, numerical integration.
 */
public final class NormalDistribution {

    private static final double ROOT_OF_2 = Math.sqrt(2);
    private static final double ROOT_OF_2_PI = Math.sqrt(2 * Math.PI);
    private static final double LEAST_SHARE_OF_VARIANCE = 1e-9;

    private NormalDistribution() {}

    /** Probability of a value more than z standard deviations above the mean. */
    static double above(double z) {
        return Erfc.value(z / ROOT_OF_2) / 2;
    }

    /** Probability of a value between two edges; the upper is not below the lower. */
    public static double between(double mean, double sd, double from, double to) {
        return above((from - mean) / sd) - above((to - mean) / sd);
    }

    /** Mean and variance of a distribution. */
    public record Moments(double mean, double variance) {}

    /**
     * Moments of a normal distribution truncated at two edges; accurate far out in the tails too.
     *
     * @param mean of the whole distribution
     * @param sd its standard deviation, more than 0
     * @param from lower edge, negative infinity for none
     * @param to upper edge, infinity for none
     */
    public static Moments truncated(double mean, double sd, double from, double to) {
        double low = (from - mean) / sd;
        double high = (to - mean) / sd;
        if (low > 0) {
            // the upper tail is the mirror image of the lower one
            Moments mirrored = truncated(-mean, sd, -to, -from);
            return new Moments(-mirrored.mean(), mirrored.variance());
        }
        double atLow = scaledDensity(low, high);
        double atHigh = scaledDensity(high, high);
        double between = scaledBetween(low, high);
        double shift = (atLow - atHigh) / between;
        double spread = (finite(low) * atLow - finite(high) * atHigh) / between;
        return new Moments(mean + sd * shift, sd * sd * Math.max(LEAST_SHARE_OF_VARIANCE, 1 + spread - shift * shift));
    }

    private static double finite(double edge) {
        return Double.isInfinite(edge) ? 0 : edge;
    }

    /** Density at an edge, times exp(high^2/2) if high is below 0, which keeps it from vanishing in the tail. */
    private static double scaledDensity(double edge, double high) {
        return Double.isInfinite(edge) ? 0 : Math.exp((scale(high) - edge * edge) / 2) / ROOT_OF_2_PI;
    }

    /** Probability between the edges, scaled likewise. */
    private static double scaledBetween(double low, double high) {
        if (high >= 0) {
            return above(low) - above(high);
        }
        double scaledLow = Double.isInfinite(low)
                ? 0
                : Erfcx.value(-low / ROOT_OF_2) / 2 * Math.exp((scale(high) - low * low) / 2);
        return Erfcx.value(-high / ROOT_OF_2) / 2 - scaledLow;
    }

    private static double scale(double high) {
        return high < 0 ? high * high : 0;
    }
}
