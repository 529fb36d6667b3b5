package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import versewind.acoustics.Speech.Effort;

class SpeechTest {

    /** ANSI S3.5-1997: overall level at 1 m of each vocal effort in dB, as read through the same implementation. */
    @ParameterizedTest
    @CsvSource({"NORMAL, 62.35", "RAISED, 68.34", "LOUD, 74.85", "SHOUT, 82.30"})
    void all_third_octaves_together_have_the_standards_overall_level(Effort effort, double overallDb) {
        double[] spectrumDb = Speech.spectrumDb(effort, AudibilityProcedure.THIRD_OCTAVE);
        double power = 0;
        for (int band = 0; band < spectrumDb.length; band++) {
            power += ThirdOctaves.dbToPower(
                    spectrumDb[band] + ThirdOctaves.bandwidthDb(band + BandAudibility.FIRST_THIRD_OCTAVE));
        }
        assertThat(ThirdOctaves.powerToDb(power)).isEqualTo(overallDb, within(0.1));
    }

    @ParameterizedTest
    @MethodSource("versewind.acoustics.Speech#materials")
    void what_the_bands_are_worth_adds_up_to_one(String material) {
        for (AudibilityProcedure procedure : AudibilityProcedure.values()) {
            Speech.importance(material, procedure)
                    .ifPresent(worth -> assertThat(DoubleStream.of(worth).sum()).isEqualTo(1, within(6e-4)));
        }
    }

    @Test
    void the_equal_bands_are_for_average_speech_alone() {
        assertThat(Speech.materials()).hasSize(7).contains("short passages");
        assertThat(Speech.importance("short passages", AudibilityProcedure.EQUALLY_CONTRIBUTING))
                .isEmpty();
        assertThat(Speech.importance("short passages", AudibilityProcedure.OCTAVE))
                .isPresent();
        assertThat(Speech.importance("psalms", AudibilityProcedure.OCTAVE)).isEmpty();
    }

    /** The octave of 250 Hz takes the third octave of 160 Hz as well, for nothing of the octaves lies below it. */
    @ParameterizedTest
    @CsvSource({"words of CID W-22", "words of NU-6"})
    void an_octave_of_words_is_worth_its_third_octaves(String material) {
        double[] octaves =
                Speech.importance(material, AudibilityProcedure.OCTAVE).orElseThrow();
        double[] thirds =
                Speech.importance(material, AudibilityProcedure.THIRD_OCTAVE).orElseThrow();
        double sum = 0;
        int octave = 0;
        for (int band = 0; band < thirds.length; band++) {
            sum += thirds[band];
            boolean isLast = (band % 3 == 0 && band > 0) || band == thirds.length - 1;
            if (isLast) {
                assertThat(octaves[octave]).isEqualTo(sum, within(2e-4));
                octave++;
                sum = 0;
            }
        }
    }

    /** ANSI S3.5-1997, Table B.2, band of 500 Hz. */
    @Test
    void short_passages_want_their_vowels() {
        assertThat(Speech.importance("short passages", AudibilityProcedure.OCTAVE)
                        .orElseThrow()[1])
                .isEqualTo(0.2551);
    }

    @Test
    void a_spectrum_given_away_can_be_written_on() {
        Speech.spectrumDb(Effort.LOUD, AudibilityProcedure.OCTAVE)[0] = 0;

        assertThat(Speech.spectrumDb(Effort.LOUD, AudibilityProcedure.OCTAVE)[0])
                .isEqualTo(41.55);
    }
}
