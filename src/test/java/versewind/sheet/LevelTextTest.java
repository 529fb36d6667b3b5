package versewind.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LevelTextTest {

    @Test
    void levels_are_whole() {
        assertThat(LevelText.whole(OptionalDouble.of(77.5))).isEqualTo("78");
        assertThat(LevelText.whole(OptionalDouble.empty())).isEqualTo("-");
    }

    @Test
    void margins_have_their_sign() {
        assertThat(LevelText.signed(OptionalDouble.of(2.6))).isEqualTo("+3");
        assertThat(LevelText.signed(OptionalDouble.of(-2.6))).isEqualTo("-3");
        assertThat(LevelText.signed(OptionalDouble.of(-0.4))).isEqualTo("0");
        assertThat(LevelText.signed(OptionalDouble.empty())).isEqualTo("-");
    }

    @Test
    void loudness_has_two_figures_at_least() {
        assertThat(LevelText.sone(5.14)).isEqualTo("5.1");
        assertThat(LevelText.sone(0.04)).isEqualTo("0.0");
        assertThat(LevelText.sone(9.96)).isEqualTo("10");
        assertThat(LevelText.sone(54.3)).isEqualTo("54");
    }
}
