package versewind.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import versewind.organ.Room;

class CautionTest {

    @Test
    void at_85_dB_ears_are_mentioned() {
        assertThat(Caution.hearing(OptionalDouble.of(85)))
                .contains("Hearing: up to 85 dB(A). NIOSH: 85 dB(A) over 8 hours; EU action values: 80 and 85 dB(A)."
                        + " Not a measurement; follow local rules and qualified advice.");
    }

    @Test
    void just_below_85_dB_they_are_not() {
        assertThat(Caution.hearing(OptionalDouble.of(84.99))).isEmpty();
    }

    private static Room room(Double... octaveS) {
        return new Room(6000, 520, new Room.MeasuredTimes(List.of(octaveS)), new Room.Distances(20, 35, 12, 12, 3));
    }

    @Test
    void more_people_than_seats_are_mentioned_and_as_many_are_not() {
        Room room = room(3.0, 3.0, 3.0, 3.0, 3.0, 3.0);
        assertThat(Caution.people(3000, room)).contains("3000 people are expected, but the church has 520 seats.");
        assertThat(Caution.people(520, room)).isEmpty();
    }

    @Test
    void a_time_that_its_neighbour_contradicts_is_mentioned() {
        assertThat(Caution.room(room(3.0, 3.0, 0.4, 3.0, 2.6, 2.0)))
                .contains("Reverberation: 3.0 s at 250 Hz beside 0.4 s at 500 Hz is hardly possible: check both.");
        assertThat(Caution.room(room(3.4, 3.3, 3.1, 2.9, 2.6, 2.0))).isEmpty();
    }

    @Test
    void silence_needs_no_caution() {
        assertThat(Caution.hearing(OptionalDouble.empty())).isEmpty();
    }
}
