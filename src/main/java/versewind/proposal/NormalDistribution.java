package versewind.proposal;

/** The standard normal distribution. */
final class NormalDistribution {

    private static final double ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double TAIL = 0.2316419;
    private static final double[] COEFFICIENTS = {0.319381530, -0.356563782, 1.781477937, -1.821255978, 1.330274429};

    private NormalDistribution() {}

    /** The density at z. */
    static double density(double z) {
        return Math.exp(-z * z / 2) / ROOT_OF_TWO_PI;
    }

    /**
     * The probability of a value above z, by a polynomial.
     *
     * <p>Range: off by 7.5e-8 at most. Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.2.17;
     * coefficients from memory.
     *
     * <p>Checked against: {@code TargetTest}, integrated numerically.
     */
    static double above(double z) {
        if (z < 0) {
            return 1 - above(-z);
        }
        double t = 1 / (1 + TAIL * z);
        double sum = 0;
        for (int i = COEFFICIENTS.length - 1; i >= 0; i--) {
            sum = t * (COEFFICIENTS[i] + sum);
        }
        return density(z) * sum;
    }

    /** Mean of how far a value lies above z, 0 where it does not: density(z) - z above(z). */
    static double beyond(double z) {
        return density(z) - z * above(z);
    }
}
