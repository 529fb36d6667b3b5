package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DynamicTest {

    @ParameterizedTest
    @CsvSource({
        "50, pp",
        "59, pp",
        "61, p",
        "71, mp",
        "81, mf",
        "91, f",
        "101, ff",
        "111, fff",
        "120, fff",
        "40, pp",
        "130, fff"
    })
    void seven_equal_steps_lie_between_the_softest_stop_and_full_organ(double sone, String word) {
        assertThat(new Dynamic.Scale(50, 120).of(sone).word()).isEqualTo(word);
    }

    @Test
    void an_organ_of_one_loudness_is_always_full() {
        assertThat(new Dynamic.Scale(70, 70).of(70)).isEqualTo(Dynamic.FFF);
    }
}
