package versewind.sound;

/**
 * The covariance C of the {@link Parameters} as a normal distribution, in dB2: it gives the standard deviation of every
 * estimate. An immutable value.
 *
 * <p>Stored as D - sum of u u', with D the prior variances and one vector u for each observation. A quantity with
 * gradient g has the variance g' C g, which takes parameters times (observations + 1) steps and allocates nothing.
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

    private Covariance(double[] prior, double[][] removed) {
        this.prior = prior;
        this.removed = removed;
    }

    /** Before any observation. */
    public static Covariance prior(Parameters parameters) {
        double[] variance = new double[parameters.count()];
        for (int index = 0; index < variance.length; index++) {
            variance[index] = parameters.sdDb(index) * parameters.sdDb(index);
        }
        return new Covariance(variance, new double[0][]);
    }

    /** After an observation of a quantity with this gradient and a noise of this standard deviation in dB. */
    public Covariance after(double[] gradient, double noiseSdDb) {
        return afterPart(gradient, noiseSdDb, 1);
    }

    /**
     * After an observation that tells less than a value would.
     *
     * @param share of the variance that the value would remove, 0 to 1
     */
    public Covariance afterPart(double[] gradient, double noiseSdDb, double share) {
        double[] gain = times(gradient);
        double[] u = new double[gain.length];
        addScaled(u, gain, Math.sqrt(share / (inner(gradient, gain) + noiseSdDb * noiseSdDb)));
        double[][] more = new double[removed.length + 1][];
        System.arraycopy(removed, 0, more, 0, removed.length);
        more[removed.length] = u;
        return new Covariance(prior, more);
    }

    /** C g, a new vector. */
    public double[] times(double[] gradient) {
        double[] product = new double[prior.length];
        for (int index = 0; index < product.length; index++) {
            product[index] = prior[index] * gradient[index];
        }
        for (double[] each : removed) {
            addScaled(product, each, -inner(each, gradient));
        }
        return product;
    }

    /** g' C g in dB2, 0 or more. */
    public double variance(double[] gradient) {
        return Math.max(0, of(gradient, gradient));
    }

    /** g' C h in dB2. */
    double of(double[] gradient, double[] other) {
        double sum = 0;
        for (int index = 0; index < prior.length; index++) {
            sum += prior[index] * gradient[index] * other[index];
        }
        for (double[] each : removed) {
            sum -= inner(each, gradient) * inner(each, other);
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
