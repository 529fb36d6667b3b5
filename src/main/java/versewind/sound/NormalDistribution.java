package versewind.sound;

/**
 * The normal distribution: its tail, and the probability between two edges.
 *
 * <p>Source: the definitions; the tail by J. F. Hart's quotient of polynomials (Computer Approximations, 1968, no.
 * 5666), as printed by G. West, Better approximations to cumulative normal functions, 2005. The coefficients are from
 * memory.
 *
 * <p>Checked against: {@code NormalDistributionTest}, numerical integration and the error function of
 * Apache Commons Math.
 */
public final class NormalDistribution {

    /** Beyond so many standard deviations the quotient gives way to a continued fraction. */
    private static final double FAR = 5 * Math.sqrt(2);

    /** Beyond so many nothing is left that a double could hold. */
    private static final double NOTHING = 37;

    /** Coefficients of the numerator, that of the highest power first. */
    private static final double[] ABOVE_LINE = {
        0.0352624965998911,
        0.700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };

    /** Those of the denominator. */
    private static final double[] BELOW_LINE = {
        0.0883883476483184,
        1.75566716318264,
        16.064177579207,
        86.7807322029461,
        296.564248779674,
        637.333633378831,
        793.826512519948,
        440.413735824752
    };

    private NormalDistribution() {}

    /** Probability of a value more than z standard deviations above the mean. */
    static double above(double z) {
        double far = Math.abs(z);
        double tail = far > NOTHING ? 0 : Math.exp(-far * far / 2) * (far < FAR ? quotient(far) : fraction(far));
        return z > 0 ? tail : 1 - tail;
    }

    private static double quotient(double z) {
        return polynomial(ABOVE_LINE, z) / polynomial(BELOW_LINE, z);
    }

    private static double polynomial(double[] coefficients, double z) {
        double sum = 0;
        for (double each : coefficients) {
            sum = sum * z + each;
        }
        return sum;
    }

    /** 1 / (z + 1 / (z + 2 / (z + 3 / (z + 4 / (z + 0.65))))), over the root of 2 pi. */
    private static double fraction(double z) {
        double below = z + 0.65;
        for (int step = 4; step > 0; step--) {
            below = z + step / below;
        }
        return 1 / (below * Math.sqrt(2 * Math.PI));
    }

    /** Probability of a value between two edges; the upper is not below the lower. */
    public static double between(double mean, double sd, double from, double to) {
        return above((from - mean) / sd) - above((to - mean) / sd);
    }

    /** Mean and variance of a distribution. */
    public record Moments(double mean, double variance) {}
}
