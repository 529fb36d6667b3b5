package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DiffuseFieldTest {

    /** Ahnert and Tennhardt in the Handbook for Sound Engineers, p. 167: LW + 10 lg T - 10 lg V + 14, printed whole. */
    @ParameterizedTest
    @CsvSource({"6000, 3", "200, 1", "20000, 7"})
    void far_from_the_source_the_level_is_the_handbooks(double volumeM3, double timeS) {
        double absorptionM2 = Reverberation.absorptionM2(volumeM3, timeS);
        double expectedDb = 100 + 10 * Math.log10(timeS) - 10 * Math.log10(volumeM3) + 14;

        assertThat(DiffuseField.levelDb(100, 1, 1e6, absorptionM2)).isEqualTo(expectedDb, within(0.06));
    }

    /** In the open 1 m from a source, 10 lg(4 pi) = 10.99 dB below its power level. */
    @Test
    void near_the_source_only_the_direct_sound_counts() {
        assertThat(DiffuseField.levelDb(100, 1, 1, 1e9)).isEqualTo(100 - 10.99, within(0.005));
    }

    @Test
    void at_the_critical_distance_both_parts_are_alike() {
        double distanceM = DiffuseField.criticalDistanceM(2, 300);

        assertThat(DiffuseField.directPerM2(2, distanceM)).isEqualTo(DiffuseField.reverberantPerM2(300), within(1e-15));
        assertThat(distanceM).isEqualTo(3.45, within(0.005));
    }

    @Test
    void a_place_or_a_room_that_cannot_be_is_refused() {
        assertThatThrownBy(() -> DiffuseField.directPerM2(1, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("a distance is more than nothing");
        assertThatThrownBy(() -> DiffuseField.reverberantPerM2(-3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DiffuseField.directPerM2(0, 5)).isInstanceOf(IllegalArgumentException.class);
    }
}
