package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.MixtureBreak;
import versewind.organ.Pipe;
import versewind.organ.Stop;

/** The compositions are common practice, no source. */
class RanksTest {

    private static final int BOTTOM_C = 36;
    private static final int TOP_C = 96;

    /** Harmonics of the 8 ft pitch that a key sounds, rounded to a hundredth. */
    private static String harmonics(Stop stop, int key) {
        double unisonHz = Footage.of(8).frequencyHz(key);
        return Arrays.stream(Ranks.fundamentalsHz(stop, key))
                .mapToObj(hz -> Math.round(100 * hz / unisonHz) / 100.0)
                .map(harmonic -> harmonic % 1 == 0 ? Integer.toString(harmonic.intValue()) : harmonic.toString())
                .collect(Collectors.joining(" "));
    }

    private static Stop compound(Family family, int ranks, String footage) {
        return TrialOrgan.compound("Compound", family, ranks, Footage.parse(footage));
    }

    @ParameterizedTest
    @CsvSource({
        "CORNET, 6, , 1 2 3 4 5 1",
        "CORNET, 5, 8, 1 2 3 4 5",
        "CORNET, 4, , 2 3 4 5",
        "CORNET, 3, , 3 4 5",
        "CORNET, 2, , 3 5",
        "MIXTURE, 2, , 6 8",
        "MIXTURE, 3, , 6 8 12",
        "MIXTURE, 4, , 4 6 8 12",
        "MIXTURE, 5, , 4 6 8 12 16",
        "MIXTURE, 6, , 3 4 6 8 12 16",
        "MIXTURE, 8, , 3 4 6 8 12 16 3 4",
        "MIXTURE, 3, 2, 4 6 8",
        "MIXTURE, 3, 2 2/3, 3 4 6"
    })
    void a_compound_stop_without_composition_gets_a_usual_one(
            Family family, int ranks, String footage, String expected) {
        Stop stop = compound(family, ranks, footage == null ? "" : footage);
        assertThat(harmonics(stop, BOTTOM_C)).isEqualTo(expected);
    }

    @Test
    void a_usual_mixture_breaks_back_by_octaves_and_never_passes_8_kHz() {
        Stop mixture = TrialOrgan.mixture();
        assertThat(harmonics(mixture, 79)).isEqualTo("6 8 6");
        assertThat(harmonics(mixture, TOP_C)).isEqualTo("3 2 3");
        for (int key = BOTTOM_C; key <= TOP_C; key++) {
            assertThat(Arrays.stream(Ranks.fundamentalsHz(mixture, key)).boxed())
                    .allMatch(hz -> hz <= 8000 && hz > 300);
        }
    }

    @Test
    void a_given_composition_is_kept_and_changes_at_its_breaks() {
        Stop mixture = new Stop(
                "Mixture",
                Optional.empty(),
                Family.MIXTURE,
                Pipe.OPEN,
                2,
                List.of(
                        new MixtureBreak(40, List.of(Footage.of(1), new Footage(2, 3))),
                        new MixtureBreak(60, List.of(Footage.of(2), Footage.of(1)))),
                0,
                Stop.Enclosure.AS_ITS_DIVISION,
                Optional.empty(),
                "");
        assertThat(harmonics(mixture, BOTTOM_C)).isEqualTo("8 12");
        assertThat(harmonics(mixture, 59)).isEqualTo("8 12");
        assertThat(harmonics(mixture, 60)).isEqualTo("4 8");
        assertThat(harmonics(mixture, TOP_C)).isEqualTo("4 8");
    }

    @Test
    void a_celeste_of_two_ranks_sounds_two_pipes_of_one_pitch() {
        Stop celeste = new Stop(
                "Voix Celeste",
                Optional.of(Footage.of(8)),
                Family.CELESTE,
                Pipe.OPEN,
                2,
                List.of(),
                0,
                Stop.Enclosure.AS_ITS_DIVISION,
                Optional.empty(),
                "");
        assertThat(harmonics(celeste, BOTTOM_C)).isEqualTo("1 1");
    }
}
