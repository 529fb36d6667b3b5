package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.special.Erf;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NormalDistributionTest {

    private static final int STEPS = 400_000;

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

    /** Source: the error function of Apache Commons Math. */
    @Test
    void both_tails_are_those_of_the_error_function() {
        for (double z = -9; z <= 9; z += 0.001) {
            double tail = Erf.erfc(z / Math.sqrt(2)) / 2;
            assertThat(NormalDistribution.above(z)).isCloseTo(tail, Percentage.withPercentage(1e-6));
        }
        assertThat(NormalDistribution.above(40)).isZero();
        assertThat(NormalDistribution.above(-40)).isOne();
    }
}
