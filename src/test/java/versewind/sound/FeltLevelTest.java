package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import versewind.plan.HeardAs;

class FeltLevelTest {

    private static final ClearShare.RightBand RIGHT = new ClearShare.RightBand(-4, 6);
    private static final double SD_DB = 3;

    private static double above(double levelDb, HeardAs... answers) {
        return 1 - new FeltLevel(RIGHT, SD_DB, List.of(answers)).below(levelDb);
    }

    @Test
    void an_answer_counts_twice_what_the_estimate_does() {
        double estimated = NormalDistribution.above(6 / SD_DB);

        assertThat(above(6, HeardAs.TOO_STRONG)).isCloseTo((estimated / 2 + 1) / 1.5, within(1e-9));
        assertThat(above(6, HeardAs.RIGHT)).isCloseTo(estimated / 2 / 1.5, within(1e-9));
        assertThat(above(6, HeardAs.TOO_STRONG, HeardAs.TOO_STRONG, HeardAs.TOO_STRONG))
                .isCloseTo((estimated / 2 + 3) / 3.5, within(1e-9));
    }

    @Test
    void answers_that_contradict_each_other_leave_it_open() {
        assertThat(above(6, HeardAs.TOO_SOFT, HeardAs.TOO_STRONG)).isBetween(0.4, 0.5);
        assertThat(above(-4, HeardAs.TOO_SOFT, HeardAs.TOO_STRONG)).isBetween(0.5, 0.6);
    }

    @Test
    void within_a_band_the_level_lies_as_estimated() {
        double beyond = NormalDistribution.above(8 / SD_DB) / NormalDistribution.above(6 / SD_DB);

        assertThat(above(8, HeardAs.TOO_STRONG))
                .isCloseTo((NormalDistribution.above(8 / SD_DB) / 2 + beyond) / 1.5, within(1e-9));
    }

    @Test
    void the_median_halves_the_odds() {
        FeltLevel felt = new FeltLevel(RIGHT, SD_DB, List.of(HeardAs.TOO_SOFT, HeardAs.RIGHT));

        assertThat(felt.below(felt.medianDb())).isCloseTo(0.5, within(1e-3));
    }

    @Test
    void an_answer_beyond_all_that_is_estimated_is_taken_at_the_edge() {
        ClearShare.RightBand far = new ClearShare.RightBand(200, 220);

        assertThat(new FeltLevel(far, SD_DB, List.of(HeardAs.TOO_STRONG)).below(219))
                .isCloseTo(0.5 / 1.5, within(1e-9));
        assertThat(new FeltLevel(far, SD_DB, List.of(HeardAs.TOO_STRONG)).medianDb())
                .isCloseTo(220, within(0.01));
    }
}
