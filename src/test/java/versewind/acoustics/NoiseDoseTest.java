package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.Published;
import versewind.acoustics.NoiseDose.EuropeanValue;
import versewind.acoustics.NoiseDose.Exposure;

final class NoiseDoseTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/niosh.csv", useHeadersInDisplayName = true)
    void the_recommended_minutes_are_nioshs(double levelDbA, double minutes) {
        assertThat(NoiseDose.nioshMinutes(levelDbA)).isEqualTo(minutes, within(1e-9));
        assertThat(NoiseDose.nioshShare(List.of(new Exposure(levelDbA, minutes))))
                .isEqualTo(1, within(1e-12));
    }

    @Test
    void shares_of_the_dose_add_up() {
        List<Exposure> day = List.of(new Exposure(94, 30), new Exposure(88, 60));

        assertThat(NoiseDose.nioshShare(day)).isEqualTo(0.75, within(1e-12));
        assertThat(NoiseDose.nioshShare(List.of())).isZero();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/iso9612.csv", useHeadersInDisplayName = true)
    void the_days_of_the_standard_have_its_levels(
            String example, String levels, String hours, double dayDbA, double tolerance) {
        double[] levelsDbA = Published.numbers(levels);
        double[] lengthsH = Published.numbers(hours);
        List<Exposure> day = new ArrayList<>();
        for (int part = 0; part < levelsDbA.length; part++) {
            day.add(new Exposure(levelsDbA[part], 60 * lengthsH[part]));
        }

        assertThat(NoiseDose.dayLevelDbA(day)).isEqualTo(dayDbA, within(tolerance));
    }

    @Test
    void eight_hours_at_a_level_are_that_level() {
        assertThat(NoiseDose.dayLevelDbA(List.of(new Exposure(85, 480)))).isEqualTo(85, within(1e-12));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/eu_2003_10.csv", useHeadersInDisplayName = true)
    void the_european_values_are_the_directives(EuropeanValue value, double levelDbA) {
        assertThat(value.levelDbA()).isEqualTo(levelDbA);
        assertThat(EuropeanValue.reachedBy(levelDbA)).contains(value);
    }

    @Test
    void below_the_lower_action_value_none_is_reached() {
        assertThat(EuropeanValue.reachedBy(79.9)).isEmpty();
        assertThat(EuropeanValue.reachedBy(84.9)).contains(EuropeanValue.LOWER_ACTION);
        assertThat(EuropeanValue.reachedBy(110)).contains(EuropeanValue.LIMIT);
    }

    @Test
    void a_day_without_sound_has_no_level() {
        assertThatThrownBy(() -> NoiseDose.dayLevelDbA(List.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {140, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void an_exposure_that_cannot_be_is_refused(double levelDbA) {
        assertThatThrownBy(() -> new Exposure(levelDbA, 10)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0", "-5", "NaN"})
    void an_exposure_of_no_length_is_refused(double minutes) {
        assertThatThrownBy(() -> new Exposure(80, minutes))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the length of an exposure is more than nothing");
    }
}
