package versewind.sound;

import java.util.Arrays;

/**
 * The covariance C of the {@link Parameters} as a normal distribution, in dB2: it gives the standard deviation of every
 * estimate. An immutable value.
 *
 * <p>Stored as D - sum of s u u', with D the prior variances, and for each observation one vector u and a sign s, 1 or,
 * for what makes it less certain, -1. A quantity with gradient g has the variance g' C g, which takes parameters times
 * (observations + 1) steps and allocates nothing.
 *
 * <p>An observation of a quantity with gradient h and noise variance R adds u = C h / (h' C h + R)^0.5.
 *
 * <p>Source: R. E. Kalman, A New Approach to Linear Filtering and Prediction Problems, J. Basic Eng. 82 (1960) 35, the
 * update of the covariance; formula from memory.
 *
 * <p>Checked against: {@code FitTest}, the inverse of the dense normal matrix by a library of linear algebra.
 */
public final class Covariance {

    private final double[] prior;
    private final double[][] removed;
    private final double[] signs;

    private Covariance(double[] prior, double[][] removed, double[] signs) {
        this.prior = prior;
        this.removed = removed;
        this.signs = signs;
    }

    /** Before any observation. */
    public static Covariance prior(Parameters parameters) {
        double[] variance = new double[parameters.count()];
        for (int index = 0; index < variance.length; index++) {
            variance[index] = parameters.sdDb(index) * parameters.sdDb(index);
        }
        return new Covariance(variance, new double[0][], new double[0]);
    }

    /** After an observation of a quantity with this gradient and a noise of this standard deviation in dB. */
    public Covariance after(double[] gradient, double noiseSdDb) {
        return afterPart(gradient, noiseSdDb, 1);
    }

    /**
     * After an observation that tells less than a value would.
     *
     * @param share of the variance that the value would remove, up to 1; below 0 if it adds to the variance
     */
    public Covariance afterPart(double[] gradient, double noiseSdDb, double share) {
        double[] gain = times(gradient);
        double[] u = new double[gain.length];
        addScaled(u, gain, Math.sqrt(Math.abs(share) / (inner(gradient, gain) + noiseSdDb * noiseSdDb)));
        double[][] more = Arrays.copyOf(removed, removed.length + 1);
        double[] moreSigns = Arrays.copyOf(signs, more.length);
        more[removed.length] = u;
        moreSigns[removed.length] = Math.signum(share);
        return new Covariance(prior, more, moreSigns);
    }

    /**
     * Of the mixture of this distribution and the one that it was made from by observations.
     *
     * @param before the distribution before the observations
     * @param share of this one, 0 to 1
     * @param moved the mean of this one minus that of the one before, in dB
     */
    public Covariance mixed(Covariance before, double share, double[] moved) {
        int kept = before.removed.length;
        double[][] more = Arrays.copyOf(removed, removed.length + 1);
        double[] moreSigns = Arrays.copyOf(signs, more.length);
        for (int each = kept; each < removed.length; each++) {
            more[each] = scaled(removed[each], Math.sqrt(share));
        }
        more[removed.length] = scaled(moved, Math.sqrt(share * (1 - share)));
        moreSigns[removed.length] = -1;
        return new Covariance(prior, more, moreSigns);
    }

    private static double[] scaled(double[] vector, double factor) {
        double[] scaled = new double[vector.length];
        addScaled(scaled, vector, factor);
        return scaled;
    }

    /** C g, a new vector. */
    public double[] times(double[] gradient) {
        double[] product = new double[prior.length];
        for (int index = 0; index < product.length; index++) {
            product[index] = prior[index] * gradient[index];
        }
        for (int each = 0; each < removed.length; each++) {
            addScaled(product, removed[each], -signs[each] * inner(removed[each], gradient));
        }
        return product;
    }

    /** g' C g in dB2, 0 or more. */
    public double variance(double[] gradient) {
        return Math.max(0, of(gradient, gradient));
    }

    /** g' C h in dB2. */
    public double of(double[] gradient, double[] other) {
        double sum = 0;
        for (int index = 0; index < prior.length; index++) {
            sum += prior[index] * gradient[index] * other[index];
        }
        for (int each = 0; each < removed.length; each++) {
            sum -= signs[each] * inner(removed[each], gradient) * inner(removed[each], other);
        }
        return sum;
    }

    /** Standard deviation in dB of a quantity with this gradient. */
    public double sdDb(double[] gradient) {
        return Math.sqrt(variance(gradient));
    }

    /** Inner product of two vectors of the same length. */
    public static double inner(double[] one, double[] other) {
        double sum = 0;
        for (int index = 0; index < one.length; index++) {
            sum += one[index] * other[index];
        }
        return sum;
    }

    /** Adds a multiple of one vector to another. */
    public static void addScaled(double[] sum, double[] vector, double factor) {
        for (int index = 0; index < sum.length; index++) {
            sum[index] += factor * vector[index];
        }
    }
}
