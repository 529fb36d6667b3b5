package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.BoxPosition;
import versewind.organ.SwellBox;

/** The losses are estimates; see swell_box.csv. */
class ShuttersTest {

    private static double lossDb(double trimDb, BoxPosition position, int band) {
        return -ThirdOctaves.powerToDb(new Shutters(new SwellBox(trimDb)).passed(position)[band]);
    }

    private static int band(double frequencyHz) {
        return ThirdOctaves.bandOf(frequencyHz).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"63, 5", "125, 8", "250, 11", "500, 13", "1000, 15", "2000, 16", "4000, 17", "8000, 18"})
    void a_closed_box_takes_away_what_its_octave_says_and_an_open_one_2_dB(double octaveHz, double lossDb) {
        assertThat(lossDb(0, BoxPosition.OPEN, band(octaveHz))).isCloseTo(2, within(1e-9));
        assertThat(lossDb(0, BoxPosition.CLOSED, band(octaveHz)) - 2).isCloseTo(lossDb, within(1e-9));
    }

    @Test
    void the_loss_of_a_third_lies_between_those_of_its_octaves() {
        assertThat(lossDb(0, BoxPosition.CLOSED, band(160)) - 2).isCloseTo(9, within(1e-9));
        assertThat(lossDb(0, BoxPosition.CLOSED, band(200)) - 2).isCloseTo(10, within(1e-9));
        assertThat(lossDb(0, BoxPosition.CLOSED, band(25)) - 2).isCloseTo(3, within(1e-9));
        assertThat(lossDb(0, BoxPosition.CLOSED, band(12_500)) - 2).isCloseTo(18, within(1e-9));
    }

    @Test
    void closing_the_box_softens_the_treble_more_than_the_bass() {
        for (int band = 1; band < ThirdOctaves.COUNT; band++) {
            assertThat(lossDb(0, BoxPosition.CLOSED, band))
                    .isGreaterThanOrEqualTo(lossDb(0, BoxPosition.CLOSED, band - 1));
        }
        assertThat(lossDb(0, BoxPosition.CLOSED, band(4000)))
                .isGreaterThan(lossDb(0, BoxPosition.CLOSED, band(63)) + 10);
    }

    /** Common practice, no source. */
    @Test
    void the_first_crack_does_most_of_the_work() {
        double closed = lossDb(0, BoxPosition.CLOSED, band(1000));
        double quarter = lossDb(0, BoxPosition.QUARTER, band(1000));
        double open = lossDb(0, BoxPosition.OPEN, band(1000));
        assertThat(closed - quarter).isGreaterThan((closed - open) / 2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-20, -6, 0, 2.5, 9, 20})
    void a_wider_box_never_takes_away_more(double trimDb) {
        for (BoxPosition position : BoxPosition.values()) {
            for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                assertThat(lossDb(trimDb, position.wider(), band))
                        .isLessThanOrEqualTo(lossDb(trimDb, position, band) + 1e-12);
            }
        }
    }

    @Test
    void a_trim_makes_the_closed_box_take_away_less_and_leaves_the_open_one() {
        int band = band(1000);
        assertThat(lossDb(0, BoxPosition.CLOSED, band) - lossDb(6, BoxPosition.CLOSED, band))
                .isCloseTo(6, within(1e-9));
        assertThat(lossDb(-6, BoxPosition.CLOSED, band) - lossDb(0, BoxPosition.CLOSED, band))
                .isCloseTo(6, within(1e-9));
        assertThat(lossDb(0, BoxPosition.HALF, band) - lossDb(6, BoxPosition.HALF, band))
                .isBetween(0.0, 6.0);
        assertThat(lossDb(6, BoxPosition.OPEN, band)).isCloseTo(2, within(1e-9));
    }

    @Test
    void a_box_that_shuts_nothing_out_costs_as_much_closed_as_open() {
        for (BoxPosition position : BoxPosition.values()) {
            assertThat(lossDb(20, position, band(1000))).isCloseTo(2, within(1e-9));
        }
    }
}
