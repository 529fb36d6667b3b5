package versewind.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import versewind.organ.Action;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;
import versewind.plan.Singing;
import versewind.sound.OrganSound;
import versewind.sound.RandomOrgans;
import versewind.sound.Seat;
import versewind.sound.TrialOrgan;

class FitTest {

    private final Instrument organ = TrialOrgan.instrument(Action.ELECTRIC);
    private final OrganSound estimated = OrganSound.open(organ);
    private final RandomOrgans random = new RandomOrgans(3);

    private MeterReading reading(double dba, int... stops) {
        Registration drawn = Registration.silent(organ).withStops(IndexSet.of(stops));
        HandsAndFeet hands = HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, TrialOrgan.GREAT);
        return new MeterReading("2026-03-01", drawn, hands, Seat.NAVE, 0, Optional.empty(), dba);
    }

    private double expected(MeterReading reading) {
        return reading.expectedDba(estimated).orElseThrow();
    }

    private List<MeterReading> some(int number) {
        List<MeterReading> readings = new ArrayList<>();
        OrganSound truth = random.truth(estimated);
        while (readings.size() < number) {
            MeterReading blind = new MeterReading(
                    "", random.registration(organ), random.hands(organ), Seat.CHOIR, 0, Optional.empty(), 70);
            blind.expectedDba(truth)
                    .ifPresent(level -> readings.add(new MeterReading(
                            "",
                            blind.registration(),
                            blind.hands(),
                            blind.seat(),
                            0,
                            Optional.empty(),
                            level + MeterReading.NOISE_SD_DB * random.gaussian())));
        }
        return readings;
    }

    /** The normal equations at the fit, solved densely by a library: the fit must stand still there. */
    @Test
    void it_is_the_least_squares_solution_of_the_levels_as_straight_lines_about_it() {
        List<MeterReading> readings = some(7);
        Fit fit = Fit.of(estimated, readings);
        OrganSound after = fit.after();
        int count = after.parameters().count();
        RealMatrix normal = new Array2DRowRealMatrix(count, count);
        RealVector right = new ArrayRealVector(count);
        double noise = MeterReading.NOISE_SD_DB * MeterReading.NOISE_SD_DB;
        double[] found = fit.found();
        for (int place = 0; place < count; place++) {
            normal.setEntry(place, place, 1 / Math.pow(after.parameters().sdDb(place), 2));
        }
        for (MeterReading reading : readings) {
            double[] gradient = new double[count];
            double level = reading.shownDba(after, gradient).orElseThrow()
                    + found[after.parameters().device()];
            RealVector g = new ArrayRealVector(gradient);
            normal = normal.add(g.outerProduct(g).scalarMultiply(1 / noise));
            double target = reading.dba() - level + g.dotProduct(new ArrayRealVector(found));
            right = right.add(g.mapMultiply(target / noise));
        }
        CholeskyDecomposition dense = new CholeskyDecomposition(normal);
        double[] solution = dense.getSolver().solve(right).toArray();
        for (int place = 0; place < count; place++) {
            assertThat(solution[place]).isCloseTo(found[place], within(0.02));
        }
        RealMatrix covariance = dense.getSolver().solve(MatrixUtils.createRealIdentityMatrix(count));
        double[] ones = new double[count];
        java.util.Arrays.fill(ones, 0.3);
        RealVector any = new ArrayRealVector(ones);
        assertThat(after.covariance().variance(ones)).isCloseTo(any.dotProduct(covariance.operate(any)), within(1e-9));
    }

    @Test
    void a_reading_as_expected_moves_nothing() {
        Fit fit = Fit.of(estimated, List.of(reading(expected(reading(70, 1, 3)), 1, 3)));
        assertThat(fit.after().organ()).isEqualTo(organ);
        assertThat(fit.judged().get(0).distanceSds()).isCloseTo(0, within(1e-9));
    }

    @Test
    void one_stop_alone_moves_its_own_trim_as_its_variance_bears_to_the_whole() {
        double more = 7;
        Fit fit = Fit.of(estimated, List.of(reading(expected(reading(70, 1)) + more, 1)));
        double[] gradient = new double[estimated.parameters().count()];
        reading(70, 1).expectedDba(estimated, gradient);
        double room = gradient[estimated.parameters().taste() - 1];
        double all = 16 + 9 + room * room + 4 + 1;
        Trims trims = Trims.of(fit.after().organ());
        assertThat(trims.organDb()).isCloseTo(more * 16 / all, within(0.05));
        assertThat(trims.stopsDb().get(1)).isCloseTo(more * 9 / all, within(0.02));
        assertThat(fit.after().offsets().roomDb()).isCloseTo(more * room / all, within(0.02));
        assertThat(fit.judged().get(0).kept().residualDb()).isCloseTo(more * 5 / all, within(0.05));
        assertThat(trims.stopsDb().get(2)).isZero();
    }

    @Test
    void a_reading_of_singing_alone_is_put_down_to_the_singers_and_the_room() {
        MeterReading singing = new MeterReading(
                "",
                Registration.silent(organ),
                HandsAndFeet.on(HandsAndFeet.Layout.FOUR_PARTS, 0),
                Seat.NAVE,
                200,
                Optional.of(new MeterReading.Sung(160, Singing.ORDINARY)),
                70);
        double expected = expected(singing);
        Fit fit = Fit.of(
                estimated,
                List.of(new MeterReading(
                        "", singing.registration(), singing.hands(), Seat.NAVE, 200, singing.sung(), expected + 5)));
        assertThat(fit.after().offsets().singersDb()).isCloseTo(5 * 9 / 14.0, within(0.3));
        assertThat(Trims.of(fit.after().organ())).isEqualTo(Trims.of(organ));
    }

    @Test
    void a_reading_that_fits_nothing_else_is_named() {
        List<MeterReading> readings = new ArrayList<>(List.of(
                reading(expected(reading(70, 1)) + 2, 1),
                reading(expected(reading(70, 3)) + 2, 3),
                reading(expected(reading(70, 1, 3)) + 2, 1, 3)));
        assertThat(Fit.of(estimated, readings).judged()).noneMatch(Fit.Judged::isOutlier);
        readings.set(2, reading(expected(reading(70, 1, 3)) - 12, 1, 3));
        assertThat(Fit.of(estimated, readings).judged().stream().map(Fit.Judged::isOutlier))
                .last()
                .isEqualTo(true);
    }

    @Test
    void a_reading_stands_as_far_from_all_others_as_it_would_from_a_fit_without_it() {
        List<MeterReading> readings = some(5);
        double[] gradient = new double[estimated.parameters().count()];
        Fit.Judged last = Fit.of(estimated, readings).judged().get(4);
        Fit four = Fit.of(estimated, readings.subList(0, 4));
        OrganSound without = four.after();
        double expected = readings.get(4).shownDba(without, gradient).orElseThrow()
                + four.found()[estimated.parameters().device()];
        double sd = Math.sqrt(without.covariance().variance(gradient) + MeterReading.NOISE_VARIANCE);
        assertThat(last.distanceSds()).isCloseTo((readings.get(4).dba() - expected) / sd, within(0.3));
    }
}
