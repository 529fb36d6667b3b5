package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a plan cannot hold, and what it only just can. */
class LimitsTest {

    @ParameterizedTest
    @ValueSource(ints = {0, 50_001})
    void a_service_cannot_have_so_many_people(int people) {
        assertThatThrownBy(() -> new ServiceHeading("", Optional.empty(), people, ""))
                .hasMessage("the people expected are 1 to 50000");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 50_000})
    void a_service_can_have_so_many_people(int people) {
        assertThat(new ServiceHeading("", Optional.empty(), people, "").people())
                .isEqualTo(people);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 50_001})
    void a_verse_cannot_have_so_many_people(int people) {
        assertThatThrownBy(() -> SmallPlan.verse("V1").withPeople(OptionalInt.of(people)))
                .hasMessage("the people of a verse are 1 to 50000");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 50_000})
    void a_verse_can_have_so_many_people(int people) {
        assertThat(SmallPlan.verse("V1").withPeople(OptionalInt.of(people)).people())
                .hasValue(people);
    }

    @ParameterizedTest
    @ValueSource(ints = {19, 301})
    void a_hymn_cannot_have_this_tempo(int tempo) {
        assertThatThrownBy(() -> ofTempo(tempo)).hasMessage("a tempo is 20 to 300 beats a minute");
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 300})
    void a_hymn_can_have_this_tempo(int tempo) {
        assertThat(ofTempo(tempo).tempo()).hasValue(tempo);
    }

    private static Hymn ofTempo(int tempo) {
        return new Hymn("", "", "", "", "", OptionalInt.of(tempo), "", List.of());
    }
}
