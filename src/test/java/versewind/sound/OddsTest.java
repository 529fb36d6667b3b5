package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.plan.Mode;
import versewind.sound.Odds.Chance;

class OddsTest {

    /** A share like those of organs: of the difference of the levels, and a little of both together. */
    private static Odds.Share share(double wantedDb) {
        return (more, less) ->
                1 / (1 + Math.exp(-0.15 * (wantedDb + more - less) - 0.01 * (more + less))) * Math.exp(-0.003 * less);
    }

    private static Odds odds(double... values) {
        List<Verdict> verdicts = Verdict.of(Mode.CONGREGATION);
        return new Odds(IntStream.range(0, values.length)
                .mapToObj(place -> new Chance(verdicts.get(place), values[place]))
                .toList());
    }

    @ParameterizedTest
    @CsvSource({
        "CONGREGATION, -8, 5, 3, 0", "CONGREGATION, -3, 5, 3, 2", "CONGREGATION, 0, 2, 3, 0.5",
        "MELODY_SOLOED, -10, 5, 5, 20", "SOLO_VOICE, 2, 3, 5, 0", "SMALL_CHOIR, 0, 4, 0, 0"
    })
    void the_odds_are_how_often_a_verdict_comes_true(
            Mode mode, double wantedDb, double wantedSdDb, double otherSdDb, double covariance) {
        Odds odds = Odds.of(
                mode, new Odds.Doubt(wantedSdDb * wantedSdDb, otherSdDb * otherSdDb, covariance), share(wantedDb));
        Random random = new Random(4);
        int[] came = new int[Verdict.values().length];
        int draws = 40_000;
        double slope = otherSdDb > 0 ? covariance / (otherSdDb * otherSdDb) : 0;
        double restDb = Math.sqrt(wantedSdDb * wantedSdDb - slope * covariance);
        for (int draw = 0; draw < draws; draw++) {
            double other = otherSdDb * random.nextGaussian();
            double wanted = slope * other + restDb * random.nextGaussian();
            came[Verdict.of(mode, share(wantedDb).at(wanted, other)).ordinal()]++;
        }
        assertThat(odds.all().stream().mapToDouble(Chance::odds).sum()).isCloseTo(1, within(1e-9));
        for (Chance chance : odds.all()) {
            assertThat(chance.odds()).isCloseTo((double) came[chance.verdict().ordinal()] / draws, within(0.02));
        }
    }

    @Test
    void the_most_likely_verdict_comes_first_and_at_most_one_other_is_named() {
        assertThat(odds(0.1, 0.2, 0.6, 0.1).first()).isEqualTo(Verdict.LEADS);
        assertThat(odds(0.1, 0.2, 0.6, 0.1).second()).contains(Verdict.LEAD_ONLY_JUST);
        assertThat(odds(0.02, 0.08, 0.88, 0.02).second()).isEmpty();
    }

    @Test
    void hundredths_add_up_to_one_whole() {
        assertThat(odds(0.015, 0.225, 0.755, 0.005).hundredths().values()).containsExactly(2, 23, 75, 0);
        Random random = new Random(6);
        for (int draw = 0; draw < 1000; draw++) {
            double[] parts = random.doubles(4).map(part -> part * part * part).toArray();
            double sum = Arrays.stream(parts).sum();
            assertThat(odds(Arrays.stream(parts).map(part -> part / sum).toArray()).hundredths().values().stream()
                            .mapToInt(Integer::intValue)
                            .sum())
                    .isEqualTo(100);
        }
    }

    @ParameterizedTest
    @CsvSource({"0.02, 1 in 10", "0.25, 3 in 10", "0.75, 8 in 10", "0.9999, 9 in 10"})
    void odds_are_told_in_tenths_and_never_as_certain(double odds, String words) {
        assertThat(Odds.words(odds)).isEqualTo(words);
    }
}
