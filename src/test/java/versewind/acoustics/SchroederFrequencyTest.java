package versewind.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class SchroederFrequencyTest {

    /** Kuttruff, Room Acoustics, 6th ed., p. 68, as quoted publicly: 200 m3 and 1 s give about 140 Hz (141.4). */
    @Test
    void a_class_room_has_a_diffuse_field_from_141_hz() {
        assertThat(SchroederFrequency.frequencyHz(200, 1)).isEqualTo(141.4, within(0.05));
    }

    @Test
    void a_church_has_one_even_for_its_longest_pipes() {
        assertThat(SchroederFrequency.frequencyHz(6000, 3)).isEqualTo(44.7, within(0.05));
    }

    @Test
    void a_room_without_volume_or_reverberation_is_refused() {
        assertThatThrownBy(() -> SchroederFrequency.frequencyHz(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SchroederFrequency.frequencyHz(200, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
