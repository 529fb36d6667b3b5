package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ThirdOctavesTest {

    private static final int FIRST_NUMBER = -16;
    private static final int ONE_KHZ = 16;

    /** Six figures are printed. */
    private static final Percentage PRINTED = Percentage.withPercentage(6e-4);

    @ParameterizedTest
    @CsvFileSource(resources = "/published/third_octaves.csv", useHeadersInDisplayName = true)
    void centre_edges_and_weightings_of_every_band_are_the_standards(
            int number, double nominalHz, double centreHz, double lowerHz, double upperHz, double aDb, double cDb) {
        assertThat(ThirdOctaves.centreOfNumberHz(number)).isCloseTo(centreHz, PRINTED);
        assertThat(ThirdOctaves.edgeBelowNumberHz(number)).isCloseTo(lowerHz, PRINTED);
        assertThat(ThirdOctaves.edgeBelowNumberHz(number + 1)).isCloseTo(upperHz, PRINTED);
        assertThat(tenths(aWeightingDb(centreHz))).isEqualTo(tenths(aDb));
        assertThat(tenths(cWeightingDb(centreHz))).isEqualTo(tenths(cDb));
        assertThat(nominalHz).isCloseTo(centreHz, Percentage.withPercentage(1.1));
    }

    /** IEC 61672-1:2013, Annex E, with the pole frequencies computed as there: for C, and two more for A. */
    private static double cWeightingDb(double hz) {
        double square = hz * hz;
        double high = 12_194.217 * 12_194.217;
        return 20 * Math.log10(high * square / ((square + 20.598997 * 20.598997) * (square + high))) + 0.0619;
    }

    private static double aWeightingDb(double hz) {
        double square = hz * hz;
        double more = square / Math.sqrt((square + 107.65265 * 107.65265) * (square + 737.86223 * 737.86223));
        return cWeightingDb(hz) - 0.0619 + 20 * Math.log10(more) + 1.9997;
    }

    private static long tenths(double levelDb) {
        return Math.round(10 * levelDb);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/third_octaves.csv", useHeadersInDisplayName = true)
    void the_28_bands_carry_the_tables_values(
            int number, double nominalHz, double centreHz, double lowerHz, double upperHz, double aDb, double cDb) {
        int band = number - FIRST_NUMBER;
        if (band < 0 || band >= ThirdOctaves.COUNT) {
            assertThat(ThirdOctaves.bandOf(centreHz)).isEmpty();
            return;
        }
        assertThat(ThirdOctaves.centreHz(band)).isCloseTo(centreHz, PRINTED);
        assertThat(ThirdOctaves.lowerEdgeHz(band)).isCloseTo(lowerHz, PRINTED);
        assertThat(ThirdOctaves.upperEdgeHz(band)).isCloseTo(upperHz, PRINTED);
        double[] power = new double[ThirdOctaves.COUNT];
        power[band] = ThirdOctaves.dbToPower(80);
        assertThat(ThirdOctaves.dbA(power)).isEqualTo(80 + aDb, within(1e-9));
        assertThat(ThirdOctaves.levelDba(power)).hasValue(ThirdOctaves.dbA(power));
        assertThat(ThirdOctaves.dbC(power)).isEqualTo(80 + cDb, within(1e-9));
        assertThat(ThirdOctaves.bandOf(nominalHz)).hasValue(band);
        assertThat(ThirdOctaves.bandwidthDb(band)).isEqualTo(10 * Math.log10(upperHz - lowerHz), within(1e-4));
    }

    @Test
    void an_edge_belongs_to_the_band_above_it() {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            double edgeHz = ThirdOctaves.lowerEdgeHz(band);
            assertThat(ThirdOctaves.bandOf(edgeHz)).hasValue(band);
            assertThat(ThirdOctaves.bandOf(Math.nextDown(ThirdOctaves.upperEdgeHz(band))))
                    .hasValue(band);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -440, 22.38, 14_126, Double.NaN, Double.POSITIVE_INFINITY})
    void what_lies_beyond_the_bands_is_in_none(double frequencyHz) {
        assertThat(ThirdOctaves.bandOf(frequencyHz)).isEmpty();
    }

    @Test
    void three_bands_make_an_octave() {
        assertThat(ThirdOctaves.octaveOf(0)).isZero();
        assertThat(ThirdOctaves.octaveOf(2)).isZero();
        assertThat(ThirdOctaves.octaveOf(ONE_KHZ - 1)).isEqualTo(5);
        assertThat(ThirdOctaves.octaveOf(ONE_KHZ + 1)).isEqualTo(5);
        assertThat(ThirdOctaves.octaveOf(ThirdOctaves.COUNT - 1)).isEqualTo(9);
    }

    @Test
    void powers_and_levels_turn_into_each_other() {
        for (double levelDb = -80; levelDb <= 140; levelDb += 0.7) {
            assertThat(ThirdOctaves.powerToDb(ThirdOctaves.dbToPower(levelDb))).isEqualTo(levelDb, within(1e-12));
            assertThat(ThirdOctaves.dbToPower(levelDb))
                    .isCloseTo(Math.pow(10, levelDb / 10), Percentage.withPercentage(1e-10));
        }
    }

    @Test
    void silence_has_no_power_and_no_power_is_silence() {
        assertThat(ThirdOctaves.powerToDb(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(ThirdOctaves.dbToPower(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(ThirdOctaves.dbA(new double[ThirdOctaves.COUNT])).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void two_equal_bands_are_three_decibels_more_than_one() {
        double[] power = new double[ThirdOctaves.COUNT];
        power[ONE_KHZ] = 5e-3;
        double oneDb = ThirdOctaves.dbA(power);
        power[ONE_KHZ] *= 2;

        assertThat(ThirdOctaves.dbA(power) - oneDb).isEqualTo(10 * Math.log10(2), within(1e-12));
    }

    @Test
    void a_spectrum_of_another_length_is_refused() {
        assertThatThrownBy(() -> ThirdOctaves.dbA(new double[27]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a spectrum has 28 third-octave bands, this one has 27");
    }
}
