package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Family;
import versewind.organ.Pipe;

class PipeRecipeTest {

    private static final double MIDDLE_C_HZ = 261.6256;

    private static double[] pipe(PipeRecipe recipe, double fundamentalHz) {
        double[] spectrum = new double[ThirdOctaves.COUNT];
        recipe.addTo(spectrum, fundamentalHz);
        return spectrum;
    }

    private static double totalDb(double[] spectrum) {
        return ThirdOctaves.powerToDb(Arrays.stream(spectrum).sum());
    }

    /** The skirts of the filters read 0.09 dB more than there is: 2 * (10^-2 + 10^-3.9). */
    @ParameterizedTest
    @CsvSource({
        "PRINCIPAL, 92",
        "OPEN_FLUTE, 90",
        "STOPPED_FLUTE, 86",
        "STRING, 84",
        "MIXTURE_RANK, 90",
        "TRUMPET, 98",
        "OBOE, 92",
        "KRUMMHORN, 92"
    })
    void the_partials_together_have_the_level_of_the_pipe(PipeRecipe recipe, double powerDb) {
        double skirtsDb = ThirdOctaves.powerToDb(1 + 2 * (Math.pow(10, -2) + Math.pow(10, -3.9)));
        assertThat(totalDb(pipe(recipe, MIDDLE_C_HZ)) - skirtsDb).isCloseTo(powerDb, within(0.001));
    }

    @ParameterizedTest
    @EnumSource(PipeRecipe.class)
    void an_octave_higher_is_2_7_dB_softer(PipeRecipe recipe) {
        assertThat(recipe.powerDb(200) - recipe.powerDb(400)).isCloseTo(2.7, within(1e-9));
    }

    @Test
    void a_partial_is_read_by_the_neighbouring_filters_at_20_and_39_dB_less() {
        double[] spectrum = pipe(PipeRecipe.OPEN_FLUTE, 8000);
        int band = ThirdOctaves.bandOf(8000).orElseThrow();
        double own = ThirdOctaves.powerToDb(spectrum[band]);
        assertThat(own - ThirdOctaves.powerToDb(spectrum[band - 1])).isCloseTo(20, within(1e-9));
        assertThat(own - ThirdOctaves.powerToDb(spectrum[band + 1])).isCloseTo(20, within(1e-9));
        assertThat(own - ThirdOctaves.powerToDb(spectrum[band - 2])).isCloseTo(39, within(1e-9));
        assertThat(spectrum[band - 3]).isZero();
    }

    @Test
    void partials_above_14_kHz_are_dropped_and_the_others_keep_their_power() {
        double[] spectrum = pipe(PipeRecipe.STRING, 7500);
        double share = 1
                / (1
                        + 1
                        + Math.pow(10, -.3)
                        + Math.pow(10, -.6)
                        + Math.pow(10, -.9)
                        + Math.pow(10, -1.3)
                        + Math.pow(10, -1.6)
                        + Math.pow(10, -2)
                        + Math.pow(10, -2.4)
                        + Math.pow(10, -2.8)
                        + Math.pow(10, -3.2)
                        + Math.pow(10, -3.6));
        double fundamental = ThirdOctaves.dbToPower(PipeRecipe.STRING.powerDb(7500)) * share;
        assertThat(spectrum[ThirdOctaves.bandOf(7500).orElseThrow()])
                .isCloseTo(fundamental, within(1e-9 * fundamental));
        assertThat(spectrum[ThirdOctaves.COUNT - 1]).isLessThan(fundamental / 1000);
    }

    @Test
    void a_fundamental_below_the_lowest_band_is_left_out_and_its_octave_is_not() {
        double[] spectrum = pipe(PipeRecipe.TRUMPET, 16.35);
        assertThat(spectrum[ThirdOctaves.bandOf(32.7).orElseThrow()])
                .isGreaterThan(ThirdOctaves.dbToPower(PipeRecipe.TRUMPET.powerDb(16.35)) / 10);
        assertThat(totalDb(spectrum)).isLessThan(PipeRecipe.TRUMPET.powerDb(16.35));
    }

    /** Common practice, no source: a stopped pipe, and a reed of cylindrical length, are weak in the even partials. */
    @Test
    void the_octave_is_weak_in_stopped_pipes_and_cylindrical_reeds() {
        for (PipeRecipe recipe : new PipeRecipe[] {PipeRecipe.STOPPED_FLUTE, PipeRecipe.KRUMMHORN}) {
            double[] spectrum = pipe(recipe, 200);
            assertThat(spectrum[ThirdOctaves.bandOf(400).orElseThrow()])
                    .isLessThan(spectrum[ThirdOctaves.bandOf(600).orElseThrow()] / 4);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "PRINCIPAL, OPEN, PRINCIPAL",
        "PRINCIPAL, STOPPED, PRINCIPAL",
        "FLUTE, STOPPED, STOPPED_FLUTE",
        "FLUTE, OPEN, OPEN_FLUTE",
        "FLUTE, HARMONIC, OPEN_FLUTE",
        "FLUTE, TAPERED, OPEN_FLUTE",
        "STRING, OPEN, STRING",
        "CELESTE, OPEN, STRING",
        "MUTATION, OPEN, OPEN_FLUTE",
        "MIXTURE, OPEN, MIXTURE_RANK",
        "CORNET, OPEN, OPEN_FLUTE",
        "CHORUS_REED, CONICAL_REED, TRUMPET",
        "SOLO_REED, CONICAL_REED, OBOE",
        "SOLO_REED, CYLINDRICAL_REED, KRUMMHORN"
    })
    void every_family_has_its_recipe(Family family, Pipe pipe, PipeRecipe recipe) {
        assertThat(PipeRecipe.of(family, pipe)).isEqualTo(recipe);
    }
}
