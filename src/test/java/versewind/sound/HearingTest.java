package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import versewind.acoustics.ThirdOctaves;

class HearingTest {

    private final Hearing hearing = new Hearing();

    private static double[] noise(double bandDb) {
        double[] power = new double[ThirdOctaves.COUNT];
        Arrays.fill(power, ThirdOctaves.dbToPower(bandDb));
        return power;
    }

    private static double[] band(double frequencyHz, double levelDb) {
        double[] power = new double[ThirdOctaves.COUNT];
        power[ThirdOctaves.bandOf(frequencyHz).orElseThrow()] = ThirdOctaves.dbToPower(levelDb);
        return power;
    }

    private double share(double[] sound, double[] other) {
        return hearing.share(sound, other, hearing.sone(other));
    }

    @Test
    void a_sound_that_nothing_disturbs_is_all_that_is_heard() {
        assertThat(share(band(1000, 70), new double[ThirdOctaves.COUNT])).isEqualTo(1);
        assertThat(share(band(1000, 70), band(1000, 110))).isCloseTo(0, within(0.001));
        assertThat(share(new double[ThirdOctaves.COUNT], new double[ThirdOctaves.COUNT]))
                .isZero();
    }

    /** In one band powers add, and loudness grows as about the fourth root of power: 1 - 2^-0.25 is 0.16. */
    @Test
    void beside_an_equal_sound_of_the_same_pitch_a_sixth_is_its_own_and_beside_one_of_another_pitch_a_half() {
        assertThat(share(band(1000, 70), band(1000, 70))).isCloseTo(0.16, within(0.05));
        assertThat(share(band(2500, 70), band(400, 70))).isCloseTo(0.5, within(0.1));
    }

    @Test
    void words_are_weighed_by_the_importance_of_speech_and_not_by_loudness() {
        double[] voice = noise(65);
        double low = hearing.words(voice, band(200, 95));
        double high = hearing.words(voice, band(2000, 95));
        assertThat(low).isGreaterThan(high);
    }

    @Test
    void bands_beyond_the_loudness_method_are_taken_as_loud_as_it_goes() {
        assertThat(hearing.sone(band(63, 150))).isPositive().isLessThan(hearing.sone(noise(119)));
    }
}
