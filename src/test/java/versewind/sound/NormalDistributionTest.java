package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
}
