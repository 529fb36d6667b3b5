package versewind.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Trims;

/**
 * What readings of an organ tell of it: the most likely trims of the organ, its ranks and boxes, and offsets of singers
 * and room, given what was to be expected before.
 *
 * <p>The unknowns x minimise x' D^-1 x + sum of (read - expected(x))^2 / R, with D and R the variances of {@link Parameters}
 * and {@link MeterReading#NOISE_SD_DB}: weighted least squares, by Gauss and Newton's steps until no unknown moves by 0.01 dB.
 *
 * <p>A reading fits nothing where it lies more than 3 standard deviations from what all others make expect. With residual
 * e of the fit and variance h' C h of the fitted level that distance is e / (R - h' C h)^0.5 standard deviations.
 *
 * <p>Range: trims to 20 dB either way; farther ones are cut there.
 *
 * <p>Source: Gauss-Newton and deleted residuals as in textbooks of least squares; formulas from memory.
 *
 * <p>Checked against: {@code FitTest}, a dense solution by a library of linear algebra, and {@code CalibrationTest},
 * organs drawn at random.
 */
public final class Fit {

    /** How many standard deviations from all else a reading may lie. */
    public static final double FITS_NOTHING_SDS = 3;

    private static final int MOST_STEPS = 30;
    private static final double STILL_DB = 0.01;

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
     * A reading and what the fit makes of it.
     *
     * @param kept the reading and what was to be expected of it
     * @param distanceSds how many standard deviations it lies from what all other readings make expect
     */
    public record Judged(Calibration.Kept kept, double distanceSds) {

        /** Whether it fits nothing else. */
        public boolean fitsNothing() {
            return Math.abs(distanceSds) > FITS_NOTHING_SDS;
        }
    }

    /**
     * Fits an organ to readings.
     *
     * @param before the organ with the trims that it had before any reading
     * @param readings one at least, of registrations that sound
     */
    public static Fit of(OrganSound before, List<MeterReading> readings) {
        Trims trims = Trims.of(before.organ());
        int count = before.unknowns().count();
        double[] found = new double[count];
        OrganSound now = before;
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] next = step(now, readings, found);
            double moved = IntStream.range(0, count)
                    .mapToDouble(place -> Math.abs(next[place] - found[place]))
                    .max()
                    .orElse(0);
            System.arraycopy(next, 0, found, 0, count);
            now = before.trimmed(
                    before.unknowns().trims(trims, found), before.unknowns().offsets(found));
            if (moved < STILL_DB) {
                break;
            }
        }
        now.learn(readings);
        return new Fit(before, now, List.copyOf(readings), found);
    }

    /** One step: the fit of the expected levels as straight lines through the unknowns found so far. */
    private static double[] step(OrganSound now, List<MeterReading> readings, double[] found) {
        Covariance known = Covariance.before(now.unknowns());
        double[] next = new double[found.length];
        double[] gradient = new double[found.length];
        for (MeterReading reading : readings) {
            double expected = now.expectedDba(reading, gradient).orElseThrow();
            double surprise =
                    reading.dba() - expected + Covariance.inner(gradient, found) - Covariance.inner(gradient, next);
            double[] moved = known.times(gradient);
            double variance = Covariance.inner(gradient, moved) + MeterReading.NOISE_SD_DB * MeterReading.NOISE_SD_DB;
            for (int place = 0; place < next.length; place++) {
                next[place] += moved[place] * surprise / variance;
            }
            known = known.after(gradient, MeterReading.NOISE_SD_DB);
        }
        return next;
    }

    /** Places of the readings that fit nothing else. */
    public static List<Integer> outliers(OrganSound before, List<MeterReading> readings) {
        if (readings.isEmpty()) {
            return List.of();
        }
        List<Judged> judged = of(before, readings).judged();
        return IntStream.range(0, judged.size())
                .filter(i -> judged.get(i).fitsNothing())
                .boxed()
                .toList();
    }

    /** The organ as it now is expected to be. */
    public OrganSound after() {
        return after;
    }

    /** The instrument with the trims found, in tenths of a dB. */
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

    /** What the trims of {@link #instrument} rest on, in tenths of a dB. */
    public Calibration calibration() {
        Offsets offsets = before.unknowns().offsets(found);
        return new Calibration(
                Optional.of(Trims.of(before.organ())),
                new Offsets(tenths(offsets.singersDb()), tenths(offsets.roomDb())),
                judged().stream()
                        .map(Judged::kept)
                        .map(kept ->
                                new Calibration.Kept(kept.reading(), tenths(kept.beforeDba()), tenths(kept.afterDba())))
                        .toList());
    }

    /** Every reading and what the fit makes of it, in their order. */
    public List<Judged> judged() {
        double[] gradient = new double[found.length];
        double noise = MeterReading.NOISE_SD_DB * MeterReading.NOISE_SD_DB;
        List<Judged> judged = new ArrayList<>();
        for (MeterReading reading : readings) {
            OptionalDouble was = before.expectedDba(reading, gradient);
            double is = after.expectedDba(reading, gradient).orElseThrow();
            double rest = Math.max(1e-9, noise - after.known().variance(gradient));
            judged.add(new Judged(
                    new Calibration.Kept(reading, was.orElseThrow(), is), (reading.dba() - is) / Math.sqrt(rest)));
        }
        return judged;
    }
}
