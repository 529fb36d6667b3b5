package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class BarronRevisedTheoryTest {

    /** By hand from the formulas of the source: 100/400, 31200 * 2/10000 * exp(-0.4), split at exp(-0.555). */
    @Test
    void a_hall_of_10000_m3_and_2_s_has_6_5_db_of_strength_at_20_m() {
        BarronRevisedTheory field = BarronRevisedTheory.at(10_000, 2, 1, 20);

        assertThat(field.direct()).isEqualTo(0.25, within(1e-12));
        assertThat(field.early()).isEqualTo(1.78157, within(1e-5));
        assertThat(field.late()).isEqualTo(2.40123, within(1e-5));
        assertThat(field.strengthDb()).isEqualTo(6.4668, within(1e-4));
        assertThat(field.levelDb(100)).isEqualTo(75.4668, within(1e-4));
        assertThat(field.clarityDb()).isEqualTo(-0.7260, within(1e-4));
    }

    /** The classical theory is G = 10 lg(100/r^2 + 31200 T/V); Barron's must meet it where there is no delay. */
    @Test
    void at_the_source_the_reflected_part_is_the_classical_one() {
        BarronRevisedTheory field = BarronRevisedTheory.at(6000, 3, 1, 1e-9);
        double classical = DiffuseField.reverberantPerM2(Reverberation.absorptionM2(6000, 3)) * 4 * Math.PI * 100;

        assertThat(10 * Math.log10((field.early() + field.late()) / classical)).isEqualTo(0, within(0.01));
    }

    @Test
    void with_distance_the_level_falls_below_the_classical_one() {
        double absorptionM2 = Reverberation.absorptionM2(6000, 3);
        double near = DiffuseField.levelDb(100, 1, 10, absorptionM2)
                - BarronRevisedTheory.at(6000, 3, 1, 10).levelDb(100);
        double far = DiffuseField.levelDb(100, 1, 40, absorptionM2)
                - BarronRevisedTheory.at(6000, 3, 1, 40).levelDb(100);

        assertThat(near).isBetween(0.0, 1.0);
        // 0.04 * 40/3 * 10 lg e, less the little of direct sound that is alike in both
        assertThat(far).isEqualTo(2.3, within(0.1));
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatThrownBy(() -> BarronRevisedTheory.at(0, 2, 1, 20)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BarronRevisedTheory.at(6000, 0, 1, 20)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BarronRevisedTheory.at(6000, 2, 1, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
