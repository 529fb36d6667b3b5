package versewind.screen.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PresentTest {

    private static final int PLANNED = 480;

    @Test
    void numbers_are_round_and_the_planned_one_is_among_them() {
        assertThat(IntStream.iterate(8, now -> Present.more(now, PLANNED)).limit(30))
                .containsExactly(
                        8, 9, 10, 12, 14, 16, 18, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120, 140, 160, 180,
                        200, 250, 300, 350, 400, 450, 480);
        assertThat(Present.more(PLANNED, PLANNED)).isEqualTo(500);
    }

    @Test
    void fewer_takes_back_more_all_the_way() {
        IntStream.iterate(1, now -> now < 40_000, now -> Present.more(now, PLANNED))
                .forEach(now -> assertThat(Present.fewer(Present.more(now, PLANNED), PLANNED))
                        .isEqualTo(now));
    }

    @Test
    void a_step_is_less_than_a_decibel_of_singing_from_ten_people_on() {
        IntStream.iterate(10, now -> now < 40_000, now -> Present.more(now, now))
                .forEach(now -> assertThat(10 * Math.log10((double) Present.more(now, now) / now))
                        .isBetween(0.2, 1.0));
    }

    @Test
    void nobody_and_more_than_any_church_holds_cannot_be_counted() {
        assertThat(Present.fewer(1, PLANNED)).isEqualTo(1);
        assertThat(Present.more(50_000, PLANNED)).isEqualTo(50_000);
    }
}
