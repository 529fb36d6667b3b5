package versewind.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import versewind.plan.Mode;
import versewind.plan.Mood;

class TargetTest {

    private static final Target TARGET = Target.of(Mode.CONGREGATION, Mood.PLAIN);

    @Test
    void the_centre_costs_nothing_and_farther_off_costs_more() {
        assertThat(TARGET.cost(TARGET.centre())).isZero();
        assertThat(TARGET.cost(TARGET.low())).isPositive().isCloseTo(TARGET.cost(TARGET.high()), within(1e-9));
        assertThat(TARGET.lifted(1).cost(TARGET.low())).isGreaterThan(TARGET.cost(TARGET.low()));
    }

    @Test
    void a_festal_verse_wants_more_lead_than_a_gentle_one() {
        assertThat(Target.of(Mode.CONGREGATION, Mood.FESTAL).centre())
                .isGreaterThan(Target.of(Mode.CONGREGATION, Mood.GENTLE).centre());
    }

    @Test
    void a_soloist_wants_the_words_clearer_than_a_choir() {
        assertThat(Target.of(Mode.SOLO_VOICE, Mood.PLAIN).centre())
                .isGreaterThan(Target.of(Mode.SMALL_CHOIR, Mood.PLAIN).centre());
    }

    @Test
    void an_introduction_never_aims_below_nothing() {
        Target aim = Target.of(Mode.CONGREGATION, Mood.FESTAL);
        assertThat(aim.lowered(0.05)).isEqualTo(aim.lifted(-0.05));
        assertThat(aim.lowered(1).low()).isZero();
        assertThat(aim.below(0.02).low()).isZero();
    }
}
