package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AirTableTest {

    private final AirTable table = AirTable.load();

    /** EN 12354-6:2003, Table 1: first, middle and last octave of every row, in 0.001 Np/m. */
    @ParameterizedTest
    @CsvSource({
        "10, 40, 0.1, 1.1, 29.0",
        "10, 60, 0.1, 0.8, 21.1",
        "10, 80, 0.1, 0.7, 15.8",
        "20, 40, 0.1, 1.0, 20.3",
        "20, 60, 0.1, 1.0, 13.5",
        "20, 80, 0.1, 1.1, 10.6"
    })
    void the_rows_are_the_standards(double temperatureC, double humidity, double at125, double at1000, double at8000) {
        double[] attenuation = table.attenuationPerM(temperatureC, humidity);

        assertThat(attenuation).hasSize(7);
        assertThat(attenuation[0]).isEqualTo(at125 / 1000, within(1e-12));
        assertThat(attenuation[3]).isEqualTo(at1000 / 1000, within(1e-12));
        assertThat(attenuation[6]).isEqualTo(at8000 / 1000, within(1e-12));
    }

    @Test
    void half_way_between_the_temperatures_the_air_is_half_way() {
        assertThat(table.attenuationPerM(15, 60)[6]).isEqualTo(0.0173, within(1e-12));
    }

    @Test
    void the_driest_and_the_dampest_air_belong_to_the_table() {
        assertThat(table.attenuationPerM(10, 30)[6]).isEqualTo(0.029, within(1e-12));
        assertThat(table.attenuationPerM(10, 90)[6]).isEqualTo(0.0158, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"9.9, 50", "20.1, 50", "15, 29", "15, 91", "NaN, 50", "15, NaN"})
    void air_beyond_the_table_is_refused(double temperatureC, double humidity) {
        assertThatThrownBy(() -> table.attenuationPerM(temperatureC, humidity))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the table of air goes from 10 to 20 C");
    }
}
