package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Published;

final class ReverberationTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/reverberation.csv", useHeadersInDisplayName = true)
    void the_published_rooms_have_their_published_times(
            String room,
            String method,
            double volumeM3,
            String areas,
            String alphas,
            double airPerKm,
            double timeS,
            double tolerance) {
        double[] areasM2 = Published.numbers(areas);
        double[] coefficients = Published.numbers(alphas);
        double absorptionM2 = Reverberation.surfaceAbsorptionM2(areasM2, coefficients);
        double airM2 = Reverberation.airAbsorptionM2(volumeM3, airPerKm / 1000);

        double found =
                switch (method) {
                    case "Sabine" -> Reverberation.sabineS(volumeM3, absorptionM2 + airM2);
                    case "Eyring" -> Reverberation.eyringS(volumeM3, sum(areasM2), absorptionM2, airM2);
                    default -> Reverberation.millingtonS(volumeM3, areasM2, coefficients, airM2);
                };

        assertThat(found).isEqualTo(timeS, within(tolerance));
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/absorption_area.csv", useHeadersInDisplayName = true)
    void the_rooms_of_the_standard_have_its_absorption_area(
            String room, String areas, String coefficients, double absorptionM2) {
        assertThat(Reverberation.surfaceAbsorptionM2(Published.numbers(areas), Published.numbers(coefficients)))
                .isEqualTo(absorptionM2, within(0.005));
    }

    /** EN 12354-6:2003, Annex E, case 1: air of 20 C and 50 to 70 % takes 0.12 m2 at 1 kHz; read as the other cases. */
    @Test
    void the_air_of_the_standards_room_takes_an_eighth_of_a_square_metre() {
        double perM = AirTable.load().attenuationPerM(20, 60)[3];

        assertThat(Reverberation.airAbsorptionM2(29.75, perM)).isEqualTo(0.12, within(0.005));
    }

    /** 24 ln 10 / 343, as a public implementation has it. */
    @Test
    void the_constant_of_sabine_is_0_161() {
        assertThat(Reverberation.SABINE_S_M).isEqualTo(0.16111382574885452, within(1e-15));
    }

    @Test
    void absorption_and_time_turn_into_each_other() {
        double absorptionM2 = Reverberation.absorptionM2(6000, 3.0);

        assertThat(absorptionM2).isEqualTo(322.2, within(0.05));
        assertThat(Reverberation.sabineS(6000, absorptionM2)).isEqualTo(3.0, within(1e-12));
    }

    @Test
    void eyring_and_millington_are_alike_where_all_surfaces_are() {
        double eyring = Reverberation.eyringS(120, 158, 47.4, 0);
        double millington = Reverberation.millingtonS(120, new double[] {100, 58}, new double[] {0.3, 0.3}, 0);

        assertThat(millington).isEqualTo(eyring, within(1e-12));
    }

    @Test
    void sabine_is_longer_than_eyring_and_nearly_the_same_where_little_is_absorbed() {
        assertThat(Reverberation.sabineS(120, 47.4)).isGreaterThan(Reverberation.eyringS(120, 158, 47.4, 0));
        assertThat(Reverberation.eyringS(120, 158, 0.158, 0) / Reverberation.sabineS(120, 0.158))
                .isEqualTo(1, within(1e-3));
    }

    @Test
    void air_makes_every_time_shorter() {
        assertThat(Reverberation.eyringS(120, 158, 31.6, 2)).isLessThan(Reverberation.eyringS(120, 158, 31.6, 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -6000, Double.NaN, Double.POSITIVE_INFINITY})
    void a_room_without_volume_is_refused(double volumeM3) {
        assertThatThrownBy(() -> Reverberation.sabineS(volumeM3, 300))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("a room's volume is more than nothing");
    }

    @ParameterizedTest
    @CsvSource({"158", "200"})
    void surfaces_that_absorb_more_than_they_are_leave_no_reverberation(double absorptionM2) {
        assertThatThrownBy(() -> Reverberation.eyringS(120, 158, absorptionM2, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("such a room has no reverberation");
    }

    @Test
    void what_adds_sound_is_no_absorption() {
        assertThatThrownBy(() -> Reverberation.surfaceAbsorptionM2(new double[] {10}, new double[] {-0.1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Reverberation.airAbsorptionM2(100, -0.001))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Reverberation.sabineS(100, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Reverberation.absorptionM2(100, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_surface_without_its_coefficient_is_refused() {
        assertThatThrownBy(() -> Reverberation.surfaceAbsorptionM2(new double[] {10, 20}, new double[] {0.1}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("every surface needs its absorption coefficient");
    }
}
