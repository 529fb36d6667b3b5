package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NormalDistributionTest {

    private static final int STEPS = 400_000;

    @ParameterizedTest
    @CsvSource({
        "0, 1, -Infinity, 0",
        "1.5, 2, -1, 4",
        "-3, 7.8, -1.5, 9",
        "20, 3, -Infinity, -1.5",
        "-20, 3, 9, Infinity",
        "-40, 3, -1.5, 9",
        "0, 2, -Infinity, Infinity"
    })
    void moments_between_two_edges_are_those_of_numerical_integration(double mean, double sd, double from, double to) {
        double low = Math.max(from, mean - 40 * sd);
        double high = Math.min(to, mean + 40 * sd);
        double nearest = Math.max(low, Math.min(high, mean));
        double all = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i < STEPS; i++) {
            double at = low + (high - low) * (i + 0.5) / STEPS;
            double keep = (nearest - mean) * (nearest - mean);
            double density = Math.exp((keep - (at - mean) * (at - mean)) / (2 * sd * sd));
            all += density;
            first += density * at;
            second += density * at * at;
        }
        NormalDistribution.Moments moments = NormalDistribution.truncated(mean, sd, from, to);
        assertThat(moments.mean()).isCloseTo(first / all, within(1e-3));
        assertThat(moments.variance()).isCloseTo(second / all - Math.pow(first / all, 2), within(2e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-6, -1.959964, -0.5, 0, 0.3, 1, 4})
    void the_tail_is_that_of_numerical_integration(double z) {
        double width = 50.0 / STEPS;
        double tail = 0;
        for (int i = 0; i < STEPS; i++) {
            double over = (i + 0.5) * width;
            tail += Math.exp(-(z + over) * (z + over) / 2) / Math.sqrt(2 * Math.PI) * width;
        }
        assertThat(NormalDistribution.above(z)).isCloseTo(tail, within(1e-8));
    }
}
