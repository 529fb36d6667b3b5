package versewind.organ;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import versewind.sound.PossibleRoom;

class ChurchTest {

    private static double middleS(Room room) {
        return ((Room.MeasuredTimes) room.reverberation()).octaveS().get(1000);
    }

    @ParameterizedTest
    @CsvSource({
        "22 x 9 x 8, 1584",
        "22x9x8 m, 1584",
        "22 by 9 by 8, 1584",
        "72 x 30 x 26 ft, 1590",
        "'', 4200",
        "large, 8203",
        "about 20 m long, 1244",
        "60 ft long, 951",
        "very large, 16022",
        "2100 m3, 2100",
    })
    void a_size_is_typed_as_people_say_it(String typed, double volumeM3) throws NotationException {
        assertThat(RoomWords.size(Church.PARISH_CHURCH, typed).volumeM3()).isEqualTo(volumeM3, within(1.0));
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 190, 250, 1201})
    void a_church_of_so_many_seats_has_that_many(int seats) throws NotationException {
        for (Church church : Church.values()) {
            assertThat(church.room(
                                    RoomWords.size(church, seats + " seats"),
                                    Church.Furnishing.PEWS,
                                    OptionalDouble.empty())
                            .seats())
                    .isEqualTo(seats);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 seats", "wide", "22 x 9", "2 x 2 x 2", "1.2.3 x 9 x 8", "900 x 900 x 900"})
    void what_is_no_size_is_refused(String typed) {
        assertThatThrownBy(() -> RoomWords.size(Church.PARISH_CHURCH, typed)).isInstanceOf(NotationException.class);
    }

    @ParameterizedTest
    @EnumSource(Church.class)
    void every_kind_is_a_possible_room_in_every_size_and_furnishing(Church church) throws NotationException {
        for (String size : new String[] {"small", "usual", "large"}) {
            for (Church.Furnishing furnishing : Church.Furnishing.values()) {
                Room room = church.room(RoomWords.size(church, size), furnishing, OptionalDouble.empty());
                assertThat(PossibleRoom.require(room)).isEqualTo(room);
                assertThat(room.seats()).isPositive();
            }
        }
    }

    @Test
    void carpet_rings_less_than_pews_and_a_larger_church_longer() throws NotationException {
        Church church = Church.TOWN_CHURCH;
        double usual = middleS(church.room(church.usual(), Church.Furnishing.PEWS, OptionalDouble.empty()));
        assertThat(middleS(church.room(church.usual(), Church.Furnishing.CARPET, OptionalDouble.empty())))
                .isLessThan(usual);
        assertThat(middleS(
                        church.room(RoomWords.size(church, "large"), Church.Furnishing.PEWS, OptionalDouble.empty())))
                .isGreaterThan(usual);
    }

    @Test
    void a_clap_says_how_long_it_rings() {
        Room room = Church.CHAPEL.room(Church.CHAPEL.usual(), Church.Furnishing.BARE, OptionalDouble.of(3));
        assertThat(middleS(room)).isEqualTo(3, within(0.3));
    }

    @Test
    void a_line_describes_a_room_in_words_or_figures() throws Exception {
        Room words = RoomWords.room("A parish church, 22 x 9 x 8, carpet, 150 seats, a clap dies in 2,0 s");
        assertThat(words.volumeM3()).isEqualTo(1584);
        assertThat(words.seats()).isEqualTo(150);
        assertThat(((Room.MeasuredTimes) words.reverberation()).octaveS()).containsEntry(1000, 1.9);
        assertThat(RoomWords.room("large chapel"))
                .isEqualTo(Church.CHAPEL.room(
                        RoomWords.size(Church.CHAPEL, "large"), Church.Furnishing.PEWS, OptionalDouble.empty()));
        assertThat(RoomWords.room("a large stone church"))
                .isEqualTo(RoomWords.room("large parish church"))
                .isEqualTo(RoomWords.room("our church, big with pews"));
        assertThat(RoomWords.room("Stone minster, about 60 m long and carpeted, about 4 s"))
                .isEqualTo(RoomWords.room("cathedral, 60 metres long, carpet, a clap dies in 4 s"));
        assertThat(RoomWords.room("chapel for 90 people")).isEqualTo(RoomWords.room("chapel, 90 seats"));
        assertThat(RoomWords.room("chapel for 90 people").volumeM3())
                .isLessThan(RoomWords.room("chapel").volumeM3());
        assertThat(RoomWords.room("2100 m3").volumeM3()).isEqualTo(2100);
        assertThatThrownBy(() -> RoomWords.room("barn")).hasMessageStartingWith("\"barn\" describes no room.");
        assertThatThrownBy(() -> RoomWords.room("180 seats")).hasMessageStartingWith("Say what kind of church it is");
        assertThatThrownBy(() -> RoomWords.room("chapel, 0.1 s")).hasMessageStartingWith("Clap: enter 0.3");
    }
}
