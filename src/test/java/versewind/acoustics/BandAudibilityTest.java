package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import versewind.Published;

final class BandAudibilityTest {

    private static final int BANDS = AudibilityProcedure.THIRD_OCTAVE.bands();
    private static final double[] FLAT_54 = filled(BANDS, 54);
    private static final double[] ANNEX_C2_NOISE = annexC2Noise();

    private static double[] filled(int count, double value) {
        double[] values = new double[count];
        Arrays.fill(values, value);
        return values;
    }

    private static double[] annexC2Noise() {
        double[] noise = new double[BANDS];
        noise[0] = 40;
        noise[1] = 30;
        noise[2] = 20;
        return noise;
    }

    private static BandAudibility thirdOctaves(double[] target, double[] noise) {
        BandAudibility audibility = new BandAudibility(AudibilityProcedure.THIRD_OCTAVE);
        audibility.compute(target, noise);
        return audibility;
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/ansi_s3_5_index.csv", useHeadersInDisplayName = true)
    void the_published_indices_are_found_to_every_printed_figure(
            String name,
            String procedure,
            String speech,
            String noise,
            String threshold,
            String importance,
            double index) {
        AudibilityProcedure bands = AudibilityProcedure.ofWord(procedure).orElseThrow();
        BandAudibility audibility = new BandAudibility(bands, Published.numbers(threshold));
        audibility.compute(Published.numbers(speech), Published.numbers(noise));
        double[] other = Published.numbers(importance);

        double found = other.length == 0 ? audibility.index() : audibility.index(other);

        assertThat(found).isEqualTo(index, within(5.1e-11));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/ansi_s3_5_masking.csv", useHeadersInDisplayName = true)
    void the_masking_is_that_of_the_published_examples(String example, int band, double maskingDb, double withinDb) {
        double[] speech = Speech.spectrumDb(Speech.Effort.NORMAL, AudibilityProcedure.THIRD_OCTAVE);
        BandAudibility audibility = example.equals("annex C.2")
                ? thirdOctaves(FLAT_54, ANNEX_C2_NOISE)
                : thirdOctaves(speech, filled(BANDS, -80));

        assertThat(audibility.maskingDb(band)).isEqualTo(maskingDb, within(withinDb));
    }

    @Test
    void in_quiet_the_internal_noise_disturbs() {
        assertThat(thirdOctaves(filled(BANDS, -80), filled(BANDS, -80)).disturbanceDb(15))
                .isEqualTo(-23.6, within(1e-12));
    }

    /** ANSI S3.5-1997, Table C.1, band of 4 kHz, level distortion as corrected by the working group. */
    @Test
    void the_level_distortion_of_annex_c1_is_the_corrected() {
        BandAudibility audibility = new BandAudibility(AudibilityProcedure.OCTAVE);
        audibility.compute(new double[] {50, 40, 40, 30, 20, 0}, new double[] {70, 65, 45, 25, 1, -15});

        assertThat(audibility.levelDistortion(4)).isEqualTo(1.00, within(0.005));
        assertThat(audibility.audibility(0)).isZero();
        assertThat(audibility.maskingDb(1)).isEqualTo(65, within(1e-9));
        assertThat(audibility.internalNoiseDb(5)).isEqualTo(-7.1);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/ansi_s3_5_tables.csv", useHeadersInDisplayName = true)
    void the_tables_are_the_standards(
            String name,
            int band,
            double centreHz,
            Double lowerHz,
            Double upperHz,
            double importance,
            double normalDb,
            double raisedDb,
            double loudDb,
            double shoutDb,
            double internalNoiseDb) {
        AudibilityProcedure procedure = AudibilityProcedure.ofWord(name).orElseThrow();

        assertThat(procedure.centreHz(band)).isEqualTo(centreHz);
        assertThat(procedure.importance()[band]).isEqualTo(importance);
        assertThat(procedure.normalSpeechDb(band)).isEqualTo(normalDb);
        assertThat(procedure.internalNoiseDb(band)).isEqualTo(internalNoiseDb);
        assertThat(Speech.spectrumDb(Speech.Effort.NORMAL, procedure)[band]).isEqualTo(normalDb);
        assertThat(Speech.spectrumDb(Speech.Effort.RAISED, procedure)[band]).isEqualTo(raisedDb);
        assertThat(Speech.spectrumDb(Speech.Effort.LOUD, procedure)[band]).isEqualTo(loudDb);
        assertThat(Speech.spectrumDb(Speech.Effort.SHOUT, procedure)[band]).isEqualTo(shoutDb);
        if (lowerHz != null && upperHz != null) {
            assertThat(procedure.lowerEdgeHz(band)).isEqualTo(lowerHz);
            assertThat(procedure.upperEdgeHz(band)).isEqualTo(upperHz);
        }
    }

    /** The seventeen equal bands are printed as 0.0588 each, which makes 0.9996. */
    @Test
    void importance_adds_up_to_one() {
        for (AudibilityProcedure procedure : AudibilityProcedure.values()) {
            double sum = 0;
            for (int band = 0; band < procedure.bands(); band++) {
                sum += procedure.importance()[band];
            }
            double printed = procedure == AudibilityProcedure.EQUALLY_CONTRIBUTING ? 0.9996 : 1;
            assertThat(sum).isEqualTo(printed, within(1e-12));
        }
    }

    /** The formula as the standard writes it, in levels and logarithms, for spectra of every kind. */
    @Test
    void the_masking_is_the_standards_formula_for_any_spectrum() {
        Random random = new Random(35);
        for (int trial = 0; trial < 500; trial++) {
            double[] target = random.doubles(BANDS, -90, 100).toArray();
            double[] noise = random.doubles(BANDS, -90, 100).toArray();
            BandAudibility audibility = thirdOctaves(target, noise);
            for (int band = 0; band < BANDS; band++) {
                assertThat(audibility.maskingDb(band)).isEqualTo(maskingDb(target, noise, band), within(1e-9));
            }
        }
    }

    private static double maskingDb(double[] target, double[] noise, int band) {
        double own = band == 0 ? Math.max(noise[0], target[0] - 24) : noise[band];
        double sum = Math.pow(10, 0.1 * own);
        for (int k = 0; k < band; k++) {
            double frequency = AudibilityProcedure.THIRD_OCTAVE.centreHz(k);
            double masker = Math.max(noise[k], target[k] - 24);
            double slope = -80 + 0.6 * (masker + 10 * Math.log10(frequency) - 6.353);
            double ratio = 0.89 * AudibilityProcedure.THIRD_OCTAVE.centreHz(band) / frequency;
            sum += Math.pow(10, 0.1 * (masker + 3.32 * slope * Math.log10(ratio)));
        }
        return 10 * Math.log10(sum);
    }

    /** Likewise with critical bands, where the slope begins at the masker's upper edge. */
    @Test
    void the_masking_of_critical_bands_is_the_standards_formula_for_any_spectrum() {
        Random random = new Random(1997);
        for (AudibilityProcedure procedure :
                List.of(AudibilityProcedure.CRITICAL_BAND, AudibilityProcedure.EQUALLY_CONTRIBUTING)) {
            for (int trial = 0; trial < 300; trial++) {
                double[] target = random.doubles(procedure.bands(), -90, 100).toArray();
                double[] noise = random.doubles(procedure.bands(), -90, 100).toArray();
                BandAudibility audibility = new BandAudibility(procedure);
                audibility.compute(target, noise);
                for (int band = 0; band < procedure.bands(); band++) {
                    assertThat(audibility.maskingDb(band))
                            .isEqualTo(criticalMaskingDb(procedure, target, noise, band), within(1e-9));
                }
            }
        }
    }

    private static double criticalMaskingDb(AudibilityProcedure procedure, double[] target, double[] noise, int band) {
        double own = band == 0 ? Math.max(noise[0], target[0] - 24) : noise[band];
        double sum = Math.pow(10, 0.1 * own);
        for (int k = 0; k < band; k++) {
            double masker = Math.max(noise[k], target[k] - 24);
            double widthHz = procedure.upperEdgeHz(k) - procedure.lowerEdgeHz(k);
            double slope = -80 + 0.6 * (masker + 10 * Math.log10(widthHz));
            double octaves = 3.32 * Math.log10(procedure.centreHz(band) / procedure.upperEdgeHz(k));
            sum += Math.pow(10, 0.1 * (masker + slope * octaves));
        }
        return 10 * Math.log10(sum);
    }

    /** In quiet normal speech is clear in every procedure, except for its weakest sounds at 8 kHz. */
    @Test
    void normal_speech_in_quiet_is_clear_in_every_procedure() {
        for (AudibilityProcedure procedure : AudibilityProcedure.values()) {
            BandAudibility audibility = new BandAudibility(procedure);
            audibility.compute(
                    Speech.spectrumDb(Speech.Effort.NORMAL, procedure),
                    filled(procedure.bands(), Double.NEGATIVE_INFINITY));

            assertThat(audibility.index()).isBetween(0.98, 1.0);
        }
    }

    @Test
    void no_noise_is_as_good_as_very_little() {
        double[] nothing = filled(BANDS, Double.NEGATIVE_INFINITY);

        assertThat(thirdOctaves(FLAT_54, nothing).index())
                .isEqualTo(thirdOctaves(FLAT_54, filled(BANDS, -200)).index(), within(1e-12));
    }

    @Test
    void nothing_to_hear_is_not_heard() {
        BandAudibility audibility = thirdOctaves(filled(BANDS, Double.NEGATIVE_INFINITY), ANNEX_C2_NOISE);

        assertThat(audibility.index()).isZero();
        assertThat(audibility.levelDistortion(3)).isEqualTo(1);
    }

    @Test
    void a_voice_far_too_loud_is_less_clear() {
        assertThat(thirdOctaves(filled(BANDS, 120), filled(BANDS, -80)).index())
                .isLessThan(thirdOctaves(FLAT_54, filled(BANDS, -80)).index());
    }

    @Test
    void bands_of_power_give_what_their_spectrum_levels_give() {
        Random random = new Random(7);
        double[] target = random.doubles(ThirdOctaves.COUNT, 1e2, 1e8).toArray();
        double[] masker = random.doubles(ThirdOctaves.COUNT, 1e2, 1e8).toArray();
        double[] targetDb = new double[BANDS];
        double[] maskerDb = new double[BANDS];
        for (int band = 0; band < BANDS; band++) {
            int third = band + BandAudibility.FIRST_THIRD_OCTAVE;
            assertThat(ThirdOctaves.bandOf(AudibilityProcedure.THIRD_OCTAVE.centreHz(band)))
                    .hasValue(third);
            targetDb[band] = ThirdOctaves.powerToDb(target[third]) - ThirdOctaves.bandwidthDb(third);
            maskerDb[band] = ThirdOctaves.powerToDb(masker[third]) - ThirdOctaves.bandwidthDb(third);
        }
        BandAudibility fromPower = new BandAudibility(AudibilityProcedure.THIRD_OCTAVE);
        fromPower.computePower(target, masker);

        assertThat(fromPower.index()).isEqualTo(thirdOctaves(targetDb, maskerDb).index(), within(1e-12));
    }

    @Test
    void bands_of_another_number_are_refused() {
        BandAudibility octaves = new BandAudibility(AudibilityProcedure.OCTAVE);

        assertThatThrownBy(() -> octaves.compute(FLAT_54, FLAT_54))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("this procedure has 6 bands, not 18");
        assertThatThrownBy(() -> octaves.computePower(new double[28], new double[28]))
                .isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> octaves.compute(new double[6], filled(6, Double.NaN)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
