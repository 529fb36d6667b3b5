package versewind.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import versewind.organ.Room;

class PossibleRoomTest {

    private static final Room.Distances DISTANCES = new Room.Distances(20, 35, 12, 12, 3);

    private static Room room(double volumeM3, Room.Reverberation reverberation) {
        return new Room(volumeM3, 300, reverberation, DISTANCES);
    }

    private static Room.Surfaces surfaces(String material, double areaM2) {
        return new Room.Surfaces(List.of(new Room.Surface(material, areaM2)));
    }

    private static Room.MeasuredTimes timed(int octaveHz, double timeS, Optional<Room.Surfaces> surfaces) {
        return new Room.MeasuredTimes(new TreeMap<>(Map.of(octaveHz, timeS)), surfaces);
    }

    private static void assertRefused(Room room, String sentence) {
        assertThatThrownBy(() -> PossibleRoom.require(room))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(sentence);
    }

    @Test
    void a_church_is_possible() {
        Room church = room(6000, surfaces("limestone wall", 2300));

        assertThat(PossibleRoom.require(church)).isSameAs(church);
        assertThat(PossibleRoom.require(TrialOrgan.ROOM)).isSameAs(TrialOrgan.ROOM);
    }

    /** A ball of 6000 m3 has (36 pi 6000^2)^(1/3) = 1596.8 m2. */
    @Test
    void surfaces_that_do_not_close_the_room_are_refused() {
        assertRefused(
                room(6000, surfaces("limestone wall", 1596)),
                "the surfaces add up to 1596 m2, but no room of 6000 m3 has less than 1597 m2: a surface is missing, or"
                        + " the volume is wrong");
        PossibleRoom.require(room(6000, surfaces("limestone wall", 1597)));
    }

    /** 0.161 V/T is 966 m2 at 1 s and 6000 m3, 6444 m2 at 0.15 s; four balls have 6387 m2. */
    @Test
    void a_time_too_short_for_any_surface_is_refused() {
        PossibleRoom.require(room(6000, timed(500, 0.16, Optional.empty())));
        assertRefused(
                room(6000, timed(500, 0.15, Optional.empty())),
                "a reverberation of 0.15 s at 500 Hz would need 6445 m2 of absorption, and a room of 6000 m3 has not so"
                        + " much surface: the time is too short, or the volume is wrong");
    }

    @Test
    void where_the_surfaces_are_known_they_set_the_limit() {
        Optional<Room.Surfaces> known = Optional.of(surfaces("limestone wall", 2000));

        PossibleRoom.require(room(6000, timed(500, 0.5, known)));
        assertThatThrownBy(() -> PossibleRoom.require(room(6000, timed(500, 0.48, known))))
                .hasMessageContaining("would need 2014 m2");
    }

    @Test
    void people_are_no_surface() {
        for (String people : List.of("audience seated per person", "pews wooden 75pct occupied")) {
            assertRefused(
                    room(6000, surfaces(people, 2000)),
                    "\"" + people + "\" is no surface of an empty room: the people are counted by their number, so name"
                            + " the empty seats");
        }
        PossibleRoom.require(room(6000, surfaces("seats metal or wood unoccupied", 2000)));
    }
}
