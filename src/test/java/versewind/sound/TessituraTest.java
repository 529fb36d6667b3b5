package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Means and standard deviations as counted in the JSB Chorales data set, to the tenth that is given. */
class TessituraTest {

    private static final int LONG_PEDAL_TOP = 67;

    private static double mean(Tessitura tessitura, VoicePart part) {
        double mean = 0;
        for (int key = Tessitura.LOWEST_KEY; key <= tessitura.highestKey(); key++) {
            mean += key * tessitura.share(part, key);
        }
        return mean;
    }

    private static double deviation(Tessitura tessitura, VoicePart part) {
        double mean = mean(tessitura, part);
        double square = 0;
        for (int key = Tessitura.LOWEST_KEY; key <= tessitura.highestKey(); key++) {
            square += (key - mean) * (key - mean) * tessitura.share(part, key);
        }
        return Math.sqrt(square);
    }

    @ParameterizedTest
    @CsvSource({
        "SOPRANO, 70.4, 3.7",
        "ALTO, 65.0, 3.2",
        "TENOR, 59.5, 3.3",
        "BASS_IN_HAND, 50.7, 4.7",
        "BASS_ON_PEDAL, 50.7, 4.7"
    })
    void every_part_lies_where_it_was_counted(VoicePart part, double mean, double deviation) {
        Tessitura tessitura = Tessitura.overPedalTo(LONG_PEDAL_TOP);
        assertThat(mean(tessitura, part)).isCloseTo(mean, within(0.05));
        assertThat(deviation(tessitura, part)).isCloseTo(deviation, within(0.05));
    }

    @ParameterizedTest
    @EnumSource(VoicePart.class)
    void the_shares_of_a_part_are_its_whole_time(VoicePart part) {
        Tessitura tessitura = Tessitura.overPedalTo(LONG_PEDAL_TOP);
        double sum = 0;
        for (int key = Tessitura.LOWEST_KEY; key <= tessitura.highestKey(); key++) {
            sum += tessitura.share(part, key);
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
    }

    @Test
    void a_bass_above_the_top_of_a_short_pedal_is_played_an_octave_lower() {
        Tessitura whole = Tessitura.overPedalTo(LONG_PEDAL_TOP);
        Tessitura cut = Tessitura.overPedalTo(55);
        assertThat(cut.share(VoicePart.BASS_ON_PEDAL, 57)).isZero();
        assertThat(cut.share(VoicePart.BASS_ON_PEDAL, 45))
                .isCloseTo(
                        whole.share(VoicePart.BASS_ON_PEDAL, 45) + whole.share(VoicePart.BASS_ON_PEDAL, 57),
                        within(1e-12));
        assertThat(cut.share(VoicePart.BASS_IN_HAND, 57)).isEqualTo(whole.share(VoicePart.BASS_IN_HAND, 57));
    }
}
