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
}
