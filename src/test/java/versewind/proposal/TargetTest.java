package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import versewind.plan.Mode;
import versewind.plan.Mood;

class TargetTest {

    private static final Target TARGET = new Target(2, 1.5);

    /** Mean distance from the target, by the trapezium rule over eight standard deviations. */
    private static double integrated(double marginDb, double sdDb) {
        int steps = 200_000;
        double width = 16.0 / steps;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double z = -8 + i * width;
            double x = marginDb + sdDb * z;
            double distance = Math.max(0, Math.max(TARGET.lowDb() - x, x - TARGET.highDb()));
            sum += distance * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * width;
        }
        return sum;
    }

    @ParameterizedTest
    @CsvSource({"2, 1", "0, 1", "-3, 2", "7, 5", "2, 7", "-10, 7", "15, 3"})
    void the_distance_is_the_mean_of_a_normal_distribution_over_what_is_unavoidable(double marginDb, double sdDb) {
        assertThat(TARGET.distanceDb(marginDb, sdDb))
                .isCloseTo(integrated(marginDb, sdDb) - integrated(2, sdDb), within(1e-5));
    }

    @Test
    void the_centre_costs_nothing() {
        assertThat(TARGET.distanceDb(2, 6)).isZero();
    }

    @Test
    void the_less_is_known_the_less_a_decibel_counts() {
        assertThat(TARGET.distanceDb(5, 7)).isLessThan(TARGET.distanceDb(5, 2));
    }

    @Test
    void a_festal_verse_wants_more_lead_than_a_gentle_one() {
        assertThat(Target.of(Mode.CONGREGATION, Mood.FESTAL).centreDb())
                .isGreaterThan(Target.of(Mode.CONGREGATION, Mood.GENTLE).centreDb());
    }

    @Test
    void a_soloist_wants_the_words_clearer_than_a_choir() {
        assertThat(Target.of(Mode.SOLO_VOICE, Mood.PLAIN).centreDb())
                .isGreaterThan(Target.of(Mode.SMALL_CHOIR, Mood.PLAIN).centreDb());
    }
}
