package versewind.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Trims;
import versewind.sound.Covariance;
import versewind.sound.Offsets;
import versewind.sound.OrganSound;
import versewind.sound.Parameters;

/**
 * The fit of an organ to readings: the most likely trims of the organ, its ranks and boxes, and offsets of singers and
 * room, given the prior of {@link Parameters}.
 *
 * <p>The parameters x minimise x' D^-1 x + sum of (reading - expected(x))^2 / R, with D the prior variances and R the
 * variance of a reading, {@link MeterReading#NOISE_SD_DB} squared: weighted least squares by Gauss-Newton steps, until
 * no parameter moves by 0.01 dB.
 *
 * <p>A reading is an outlier if it lies more than 3 standard deviations from the level that all other readings predict.
 * With residual e and variance h' C h of the fitted level that distance is e / (R - h' C h)^0.5 standard deviations.
 *
 * <p>Range: trims within 20 dB; wider ones are cut there.
 *
 * <p>Source: Gauss-Newton steps as in textbooks of least squares, from memory; a residual has the variance R (1 - h)
 * with the leverage h, and divided by 1 - h it is the deleted one, as in the manual of the R package api2lm.
 *
 * <p>Checked against: {@code FitTest}, a dense solution by a library of linear algebra, and {@code CalibrationTest},
 * random organs.
 */
public final class Fit {

    /** A reading farther from the others than this many standard deviations is an outlier. */
    public static final double OUTLIER_SDS = 3;

    private static final int MAX_STEPS = 30;
    private static final double CONVERGED_DB = 0.01;
    private static final double LEAST_VARIANCE = 1e-9;

    private final OrganSound before;
    private final OrganSound after;
    private final List<MeterReading> readings;
    private final double[] found;

    private Fit(OrganSound before, OrganSound after, List<MeterReading> readings, double[] found) {
        this.before = before;
        this.after = after;
        this.readings = readings;
        this.found = found;
    }

    /**
     * A reading beside the fit.
     *
     * @param kept the reading and the levels expected of it
     * @param distanceSds distance from the level that all other readings predict, in standard deviations
     */
    public record Judged(Calibration.Kept kept, double distanceSds) {

        /** True for a reading that disagrees with all others. */
        public boolean isOutlier() {
            return Math.abs(distanceSds) > OUTLIER_SDS;
        }
    }

    /**
     * Fits an organ to readings.
     *
     * @param before the organ with its trims before any reading
     * @param readings one at least, of registrations that sound
     */
    public static Fit of(OrganSound before, List<MeterReading> readings) {
        Parameters parameters = before.parameters();
        Trims trims = Trims.of(before.organ());
        double[] found = new double[parameters.count()];
        OrganSound now = before;
        double movedDb = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MAX_STEPS && movedDb >= CONVERGED_DB; step++) {
            double[] next = step(now, readings, found);
            movedDb = farthest(next, found);
            found = next;
            now = before.with(parameters.trims(trims, found), parameters.offsets(found));
        }
        OrganSound after = now.with(Calibration.covariance(now, readings));
        return new Fit(before, after, List.copyOf(readings), found);
    }

    private static double farthest(double[] one, double[] other) {
        return IntStream.range(0, one.length)
                .mapToDouble(place -> Math.abs(one[place] - other[place]))
                .max()
                .orElse(0);
    }

    /** One Gauss-Newton step: the fit of the expected levels, linearised about the parameters found so far. */
    private static double[] step(OrganSound now, List<MeterReading> readings, double[] found) {
        Covariance covariance = Covariance.prior(now.parameters());
        double[] next = new double[found.length];
        double[] gradient = new double[found.length];
        for (MeterReading reading : readings) {
            double expected = reading.shownDba(now, gradient).orElseThrow()
                    + found[now.parameters().device()];
            double surprise =
                    reading.dba() - expected + Covariance.inner(gradient, found) - Covariance.inner(gradient, next);
            double[] gain = covariance.times(gradient);
            double variance = Covariance.inner(gradient, gain) + MeterReading.NOISE_VARIANCE;
            Covariance.addScaled(next, gain, surprise / variance);
            covariance = covariance.after(gradient, MeterReading.NOISE_SD_DB);
        }
        return next;
    }

    /** Indices of the readings that disagree with all others. */
    public static List<Integer> outliers(OrganSound before, List<MeterReading> readings) {
        if (readings.isEmpty()) {
            return List.of();
        }
        List<Judged> judged = of(before, readings).judged();
        return IntStream.range(0, judged.size())
                .filter(i -> judged.get(i).isOutlier())
                .boxed()
                .toList();
    }

    /** Values of the parameters at the fit, in dB; not a copy. */
    double[] found() {
        return found;
    }

    /** The organ after the fit. */
    public OrganSound after() {
        return after;
    }

    /** The instrument with the fitted trims, in tenths of a dB. */
    public Instrument instrument() {
        Trims trims = Trims.of(after.organ());
        return new Trims(
                        tenths(trims.organDb()),
                        trims.stopsDb().stream().map(Fit::tenths).toList(),
                        trims.boxesDb().stream().map(Fit::tenths).toList())
                .on(after.organ());
    }

    private static double tenths(double db) {
        return Math.rint(10 * db) / 10;
    }

    /** The calibration that {@link #instrument} rests on, in tenths of a dB. */
    public Calibration calibration() {
        Offsets offsets = before.parameters().offsets(found);
        return new Calibration(
                Optional.of(Trims.of(before.organ())),
                new Offsets(tenths(offsets.singersDb()), tenths(offsets.roomDb())),
                judged().stream()
                        .map(Judged::kept)
                        .map(kept ->
                                new Calibration.Kept(kept.reading(), tenths(kept.beforeDba()), tenths(kept.afterDba())))
                        .toList());
    }

    /** Every reading beside the fit, in their order. */
    public List<Judged> judged() {
        double[] gradient = new double[found.length];
        List<Judged> judged = new ArrayList<>();
        for (MeterReading reading : readings) {
            double beforeDba = reading.expectedDba(before).orElseThrow();
            double afterDba = reading.shownDba(after, gradient).orElseThrow();
            double free = MeterReading.NOISE_VARIANCE - after.covariance().variance(gradient);
            double shownDba = afterDba + found[after.parameters().device()];
            double distanceSds = (reading.dba() - shownDba) / Math.sqrt(Math.max(LEAST_VARIANCE, free));
            judged.add(new Judged(new Calibration.Kept(reading, beforeDba, afterDba), distanceSds));
        }
        return judged;
    }
}
