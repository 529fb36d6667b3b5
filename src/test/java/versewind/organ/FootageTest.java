package versewind.organ;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

final class FootageTest {

    private static final int BOTTOM_C = 36;
    private static final int MIDDLE_C = 60;

    @ParameterizedTest
    @CsvFileSource(resources = "/published/pitch_lengths.csv", useHeadersInDisplayName = true)
    void every_length_of_the_table_sounds_its_published_pitch(
            String written,
            double feet,
            double harmonic,
            double bottomCHz,
            double middleCHz,
            double semitones,
            double cents) {
        Footage footage = Footage.parse(written).orElseThrow();

        assertThat(footage).hasToString(written);
        assertThat(footage.feet()).isEqualTo(feet, within(5e-7));
        assertThat(footage.harmonic()).isEqualTo(harmonic, within(1e-12));
        assertThat(footage.frequencyHz(BOTTOM_C)).isEqualTo(bottomCHz, within(5.01e-5));
        assertThat(footage.frequencyHz(MIDDLE_C)).isEqualTo(middleCHz, within(5.01e-5));
        assertThat(footage.semitones()).isEqualTo(semitones, within(5.01e-5));
        double centsOverTempered = 100 * (footage.semitones() - Math.rint(footage.semitones()));
        assertThat(centsOverTempered).isEqualTo(cents, within(5.01e-3));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/pitch_lengths.csv", useHeadersInDisplayName = true)
    void the_fraction_of_every_length_is_exact(String written, double feet, double harmonic) {
        Footage footage = Footage.parse(written).orElseThrow();

        // The harmonics of the table are multiples of 1/8: 8/feet = 8 denominator / numerator, without rounding.
        long eighths = Math.round(8 * harmonic);
        assertThat(64L * footage.denominator()).isEqualTo(eighths * footage.numerator());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "65", "2 3/2", "1/0", "0/3", "2 2", "-8", "8ft", "1/9", "2  2/3"})
    void what_is_no_footage_is_not_read(String written) {
        assertThat(Footage.parse(written)).isEmpty();
    }

    @Test
    void a_fraction_is_kept_in_its_lowest_terms() {
        assertThat(new Footage(16, 6)).isEqualTo(new Footage(8, 3)).hasToString("2 2/3");
    }

    @Test
    void a_pipe_without_length_is_refused() {
        assertThatThrownBy(() -> new Footage(0, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void longer_pipes_stand_first() {
        assertThat(Footage.of(16)).isLessThan(Footage.of(8));
        assertThat(new Footage(8, 3)).isLessThan(Footage.of(2));
    }
}
