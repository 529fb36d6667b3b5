package versewind.sound;

import org.apache.commons.numbers.gamma.Erfc;

/**
 * The normal distribution: its tail, and the probability between two edges.
 *
 * <p>Source: the definitions; the error function is that of commons-numbers.
 *
 * <p>Checked against: {@code NormalDistributionTest}, numerical integration.
 */
public final class NormalDistribution {

    private static final double ROOT_OF_2 = Math.sqrt(2);

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
}
