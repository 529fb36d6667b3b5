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

    @Test
    void a_sound_that_nothing_disturbs_stands_15_dB_clear() {
        assertThat(hearing.musicDb(band(1000, 70), new double[ThirdOctaves.COUNT]))
                .isCloseTo(15, within(1e-9));
        assertThat(hearing.musicDb(band(1000, 70), band(1000, 110))).isCloseTo(-15, within(1e-9));
    }

    /** In one band alone the margin is the difference of the levels. */
    @Test
    void the_margin_of_one_band_is_how_far_it_stands_above_the_other() {
        assertThat(hearing.musicDb(band(1000, 73), band(1000, 70))).isCloseTo(3, within(0.1));
        assertThat(hearing.musicDb(band(1000, 65), band(1000, 70))).isCloseTo(-5, within(0.1));
    }

    @Test
    void a_band_counts_with_the_loudness_it_has_by_itself() {
        double[] music = band(500, 80);
        music[ThirdOctaves.bandOf(4000).orElseThrow()] = ThirdOctaves.dbToPower(50);
        double[] overTheLoudBand = band(500, 100);
        double[] overTheSoftBand = band(4000, 100);
        assertThat(hearing.musicDb(music, overTheLoudBand)).isLessThan(hearing.musicDb(music, overTheSoftBand) - 10);
    }

    @Test
    void both_thirds_that_share_a_core_loudness_together_count_once() {
        double[] music = band(200, 70);
        music[ThirdOctaves.bandOf(250).orElseThrow()] = ThirdOctaves.dbToPower(70);
        double[] other = band(250, 100);
        double half = hearing.musicDb(music, other);
        assertThat(half).isCloseTo(0, within(0.5));
    }

    @Test
    void words_are_weighed_by_the_importance_of_speech_and_not_by_loudness() {
        double[] voice = noise(65);
        double low = hearing.wordsDb(voice, band(200, 95));
        double high = hearing.wordsDb(voice, band(2000, 95));
        assertThat(low).isGreaterThan(high);
    }

    @Test
    void bands_beyond_the_loudness_method_are_taken_as_loud_as_it_goes() {
        hearing.listen(noise(119));
        double atTheEnd = hearing.sone();
        hearing.listen(band(63, 150));
        assertThat(hearing.sone()).isPositive().isLessThan(atTheEnd);
    }
}
