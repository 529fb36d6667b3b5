package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.Published;

final class StationaryLoudnessTest {

    private static final int ONE_KHZ = 16;

    /** Level of a tone in its neighbour bands below and above, re its own: as the standard's filters give signal 3. */
    private static final double[] SKIRT_BELOW_DB = {-20.0, -39.0, -50.7, -59.8, -67.5, -74.6};

    private static final double[] SKIRT_ABOVE_DB = {-20.0, -38.9, -50.6, -59.5, -63.9, -74.0};

    private static double[] levels(int signal) {
        return Published.column("iso532_1_levels.csv", "signal" + signal + "Db");
    }

    private static double[] silence() {
        double[] levels = new double[ThirdOctaves.COUNT];
        Arrays.fill(levels, Double.NEGATIVE_INFINITY);
        return levels;
    }

    private static double[] tone(int band, double levelDb) {
        double[] levels = silence();
        levels[band] = levelDb;
        for (int step = 0; step < SKIRT_BELOW_DB.length; step++) {
            if (band - step - 1 >= 0) {
                levels[band - step - 1] = levelDb + SKIRT_BELOW_DB[step];
            }
            if (band + step + 1 < levels.length) {
                levels[band + step + 1] = levelDb + SKIRT_ABOVE_DB[step];
            }
        }
        return levels;
    }

    private static StationaryLoudness computed(SoundField field, double[] levels) {
        StationaryLoudness loudness = new StationaryLoudness(field);
        loudness.compute(levels);
        return loudness;
    }

    /** The standard allows 5 % or 0.1 sone; the levels are printed to 0.001 dB, so 0.001 sone can be held. */
    @ParameterizedTest
    @CsvFileSource(resources = "/published/iso532_1_loudness.csv", useHeadersInDisplayName = true)
    void the_loudness_of_the_standards_signals_is_found_to_a_thousandth_of_a_sone(
            int signal, String name, double sone, double phon) {
        StationaryLoudness loudness = computed(SoundField.FREE, levels(signal));

        assertThat(loudness.sone()).isEqualTo(sone, within(0.001));
        assertThat(loudness.phon()).isEqualTo(phon, within(0.001));
    }

    /** Signals 1 and 3 are printed to 0.0001 sone/Bark, signal 5 to 0.001: half of that, and rounded levels. */
    @ParameterizedTest
    @CsvFileSource(resources = "/published/iso532_1_loudness.csv", useHeadersInDisplayName = true)
    void every_sample_of_the_specific_loudness_is_the_standards(int signal, String name) {
        double[] expected = Published.column("iso532_1_specific.csv", "signal" + signal);
        double[] specific = computed(SoundField.FREE, levels(signal)).specific();

        assertThat(specific).hasSize(StationaryLoudness.SPECIFIC_SAMPLES);
        for (int sample = 0; sample < specific.length; sample++) {
            assertThat(specific[sample])
                    .as("at %.1f Bark", (sample + 1) / 10.0)
                    .isEqualTo(expected[sample], within(signal == 5 ? 6e-4 : 6e-5));
        }
    }

    /** Here the band levels are ours, a tone with the skirts of signal 3: so the standard's own 5 % or 0.1 sone. */
    @ParameterizedTest
    @CsvFileSource(resources = "/published/iso532_1_tones.csv", useHeadersInDisplayName = true)
    void the_standards_tones_are_as_loud_as_it_says(int signal, int frequencyHz, double levelDb, double sone) {
        int band = ThirdOctaves.bandOf(frequencyHz).orElseThrow();

        assertThat(computed(SoundField.FREE, tone(band, levelDb)).sone())
                .isEqualTo(sone, within(Math.max(0.05 * sone, 0.1)));
    }

    /** By definition; the skirts of the standard's filters are part of it, for without them it reads less. */
    @Test
    void a_tone_of_1_khz_at_40_db_is_one_sone() {
        double[] bare = silence();
        bare[ONE_KHZ] = 40;

        assertThat(computed(SoundField.FREE, tone(ONE_KHZ, 40)).sone()).isEqualTo(1, within(0.001));
        assertThat(computed(SoundField.FREE, bare).sone()).isLessThan(0.99);
    }

    @ParameterizedTest
    @EnumSource
    void silence_is_no_loudness_at_all(SoundField field) {
        StationaryLoudness loudness = computed(field, silence());

        assertThat(loudness.sone()).isZero();
        assertThat(loudness.phon()).isEqualTo(3);
        assertThat(loudness.specific()).containsOnly(0);
        for (int band = 0; band < StationaryLoudness.CORE_BANDS; band++) {
            assertThat(loudness.core(band)).isZero();
        }
    }

    @Test
    void a_loud_sound_leaves_no_trace_in_the_next() {
        StationaryLoudness loudness = computed(SoundField.DIFFUSE, levels(1));
        loudness.compute(silence());

        assertThat(loudness.sone()).isZero();
        assertThat(loudness.specific()).containsOnly(0);
    }

    @Test
    void a_sound_just_below_the_threshold_is_not_heard_and_just_above_is() {
        double[] levels = silence();
        levels[ONE_KHZ] = 4;
        assertThat(computed(SoundField.FREE, levels).sone()).isZero();

        levels[ONE_KHZ] = 6;
        assertThat(computed(SoundField.FREE, levels).sone()).isPositive();
    }

    @Test
    void very_loud_sound_is_reckoned_up_to_the_limit_of_the_method() {
        double[] levels = new double[ThirdOctaves.COUNT];
        Arrays.fill(levels, 120);
        StationaryLoudness loudness = computed(SoundField.DIFFUSE, levels);

        assertThat(loudness.sone()).isFinite().isGreaterThan(1000);
        assertThat(loudness.phon()).isEqualTo(40 + 10 * Math.log(loudness.sone()) / Math.log(2), within(1e-9));
    }

    @Test
    void adding_sound_never_makes_it_softer() {
        StationaryLoudness loudness = new StationaryLoudness(SoundField.DIFFUSE);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double[] levels = levels(5);
            loudness.compute(levels);
            double before = loudness.sone();
            levels[band] += 1;
            loudness.compute(levels);
            assertThat(loudness.sone()).as("band %d", band).isGreaterThan(before);
        }
    }

    @Test
    void one_band_alone_lies_in_its_own_core_band() {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double[] levels = silence();
            levels[band] = 90;
            StationaryLoudness loudness = computed(SoundField.DIFFUSE, levels);
            for (int core = 0; core < StationaryLoudness.CORE_BANDS; core++) {
                boolean own = core == StationaryLoudness.coreOf(band);
                assertThat(loudness.core(core) > 0)
                        .as("band %d in core %d", band, core)
                        .isEqualTo(own);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"0,0", "5,0", "6,1", "8,1", "9,2", "10,2", "11,3", "16,8", "27,19"})
    void the_lowest_eleven_bands_share_three_core_bands(int band, int core) {
        assertThat(StationaryLoudness.coreOf(band)).isEqualTo(core);
    }

    @Test
    void powers_give_what_their_levels_give() {
        double[] power = Arrays.stream(levels(5)).map(ThirdOctaves::dbToPower).toArray();
        StationaryLoudness loudness = new StationaryLoudness(SoundField.DIFFUSE);
        loudness.computePower(power);

        assertThat(loudness.sone())
                .isEqualTo(computed(SoundField.DIFFUSE, levels(5)).sone());
    }

    /** Also at whole levels, where a level can stand exactly on the border of a range. */
    @ParameterizedTest
    @EnumSource
    void reckoned_in_powers_it_is_what_the_standard_reckons_in_levels(SoundField field) {
        Random random = new Random(532);
        for (int trial = 0; trial < 2000; trial++) {
            double[] levels = random.doubles(ThirdOctaves.COUNT, -20, 120).toArray();
            if (trial % 2 == 0) {
                Arrays.setAll(levels, band -> Math.rint(levels[band]));
            }
            double inLevels = LoudnessInLevels.sone(field, levels);
            assertThat(computed(field, levels).sone()).isEqualTo(inLevels, within(1e-12 * inLevels));
        }
    }

    @Test
    void the_field_matters_in_the_treble_and_not_in_the_bass() {
        double[] bass = silence();
        bass[4] = 80;
        double[] treble = silence();
        treble[23] = 60;

        assertThat(computed(SoundField.DIFFUSE, bass).sone())
                .isEqualTo(computed(SoundField.FREE, bass).sone());
        assertThat(computed(SoundField.DIFFUSE, treble).sone())
                .isNotEqualTo(computed(SoundField.FREE, treble).sone());
    }

    @Test
    void a_low_band_above_120_db_or_without_a_number_is_refused() {
        double[] levels = silence();
        levels[10] = 120.1;

        assertThat(StationaryLoudness.isWithinRange(
                        Arrays.stream(levels).map(ThirdOctaves::dbToPower).toArray()))
                .isFalse();
        assertThatThrownBy(() -> computed(SoundField.FREE, levels))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("none above 120 dB in those to 250 Hz");
        levels[10] = Double.NaN;
        assertThatThrownBy(() -> computed(SoundField.FREE, levels)).isInstanceOf(IllegalArgumentException.class);
        levels[10] = 0;
        levels[11] = 120.1;
        assertThat(computed(SoundField.FREE, levels).sone()).isFinite();
    }

    @ParameterizedTest
    @CsvSource({"1,40", "2,50", "4,60", "16,80", "0,3"})
    void sones_become_phons(double sone, double phon) {
        assertThat(StationaryLoudness.phonOf(sone)).isEqualTo(phon, within(1e-12));
    }

    @Test
    void phons_hardly_jump_at_one_sone() {
        double below = StationaryLoudness.phonOf(Math.nextDown(1.0));

        assertThat(below).isEqualTo(40, within(0.01));
    }
}
