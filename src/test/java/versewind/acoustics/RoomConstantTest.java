package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class RoomConstantTest {

    /** S = 100 m2, a = 0.2 gives 25 m2: test suite of a public implementation. */
    @Test
    void a_hundred_square_metres_that_absorb_a_fifth_make_25() {
        assertThat(RoomConstant.roomConstantM2(100, 20)).isEqualTo(25, within(1e-12));
    }

    @Test
    void a_dead_room_has_the_greater_constant() {
        assertThat(RoomConstant.roomConstantM2(100, 50)).isGreaterThan(RoomConstant.roomConstantM2(100, 5));
    }

    @Test
    void a_room_that_absorbs_everything_is_refused() {
        assertThatThrownBy(() -> RoomConstant.roomConstantM2(100, 100))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no reverberation");
        assertThatThrownBy(() -> RoomConstant.roomConstantM2(100, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RoomConstant.roomConstantM2(0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
