package versewind.sound;

/**
 * How surely the {@link Parameters} are known, together: the covariance C of a normal distribution, in dB2.
 *
 * <p>Kept as D - sum of u u', with D the variances before anything was read and one vector u for each reading: a quantity
 * whose gradient is g has the variance g' C g, reckoned in as many steps as there are unknowns, times one more than there
 * are readings. An immutable value; {@link #variance} allocates nothing.
 *
 * <p>A reading of a quantity with gradient h and noise of variance R gives u = C h / (h' C h + R)^0.5.
 *
 * <p>Source: R. E. Kalman, A New Approach to Linear Filtering and Prediction Problems, J. Basic Eng. 82 (1960) 35, the
 * update of the covariance; formula from memory.
 *
 * <p>Checked against: {@code FitTest}, the inverse of the dense normal matrix by a library of linear algebra.
 */
final class Covariance {

    private final double[] variance;
    private final double[][] removed;

    private Covariance(double[] variance, double[][] removed) {
        this.variance = variance;
        this.removed = removed;
    }

    /** Before anything was read. */
    static Covariance before(Parameters unknowns) {
        double[] variance = new double[unknowns.count()];
        for (int place = 0; place < variance.length; place++) {
            variance[place] = unknowns.sdDb(place) * unknowns.sdDb(place);
        }
        return new Covariance(variance, new double[0][]);
    }

    /** After a reading of a quantity with this gradient, whose noise has this standard deviation in dB. */
    Covariance after(double[] gradient, double noiseSdDb) {
        return afterPart(gradient, noiseSdDb, 1);
    }

    /**
     * After a reading that tells less than its value.
     *
     * @param share how much of the variance that the value would take away is taken, 0 to 1
     */
    Covariance afterPart(double[] gradient, double noiseSdDb, double share) {
        double[] moved = times(gradient);
        double scale = Math.sqrt(share / (inner(gradient, moved) + noiseSdDb * noiseSdDb));
        for (int place = 0; place < moved.length; place++) {
            moved[place] *= scale;
        }
        double[][] more = new double[removed.length + 1][];
        System.arraycopy(removed, 0, more, 0, removed.length);
        more[removed.length] = moved;
        return new Covariance(variance, more);
    }

    /** C g, a new vector. */
    double[] times(double[] gradient) {
        double[] product = new double[variance.length];
        for (int place = 0; place < product.length; place++) {
            product[place] = variance[place] * gradient[place];
        }
        for (double[] each : removed) {
            double share = inner(each, gradient);
            for (int place = 0; place < product.length; place++) {
                product[place] -= share * each[place];
            }
        }
        return product;
    }

    /** g' C g in dB2, 0 or more. */
    double variance(double[] gradient) {
        double sum = 0;
        for (int place = 0; place < variance.length; place++) {
            sum += variance[place] * gradient[place] * gradient[place];
        }
        for (double[] each : removed) {
            double share = inner(each, gradient);
            sum -= share * share;
        }
        return Math.max(0, sum);
    }

    /** Standard deviation in dB of a quantity with this gradient. */
    double sdDb(double[] gradient) {
        return Math.sqrt(variance(gradient));
    }

    static double inner(double[] one, double[] other) {
        double sum = 0;
        for (int place = 0; place < one.length; place++) {
            sum += one[place] * other[place];
        }
        return sum;
    }
}
