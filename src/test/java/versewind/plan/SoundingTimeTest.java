package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source. */
class SoundingTimeTest {

    @ParameterizedTest
    @CsvSource({
        "8 8 8 8, 32",
        "8 6 8 6, 32",
        "8.7.8.7, 32",
        "7 6 7 6 D, 64",
        "10 10 10 10, 48",
        "11 10 11 10, 48",
        "CM, 32",
        "DCM, 64",
        "LMD, 64",
        "6 5 6 5 with refrain, 48",
        "8 8 8 with alleluias, 32",
        "Irregular, 32",
        "'', 32"
    })
    void a_metre_has_as_many_beats_as_its_usual_tunes(String metre, int beats) {
        assertThat(SoundingTime.beats(metre)).isEqualTo(beats);
    }

    private static Hymn hymn(OptionalInt tempo) {
        return new Hymn("1", "", "", "8 8 8 8", "", tempo, "", List.of());
    }

    @ParameterizedTest
    @CsvSource({"VERSE, 34", "LAST_VERSE, 34", "INTRODUCTION, 18", "INTERLUDE, 18", "REFRAIN, 18", "AMEN, 10"})
    void every_kind_of_verse_has_its_beats_and_a_breath(VerseKind kind, int beats) {
        Verse verse = SmallPlan.verse("V1").withKind(kind);

        assertThat(SoundingTime.minutes(hymn(OptionalInt.of(100)), verse)).isEqualTo(beats / 100.0, within(1e-12));
    }

    @Test
    void without_a_tempo_it_is_a_usual_one() {
        assertThat(SoundingTime.minutes(hymn(OptionalInt.empty()), SmallPlan.verse("V1")))
                .isEqualTo(34 / 88.0, within(1e-12));
    }

    @Test
    void a_quicker_hymn_is_shorter() {
        assertThat(SoundingTime.minutes(hymn(OptionalInt.of(120)), SmallPlan.verse("V1")))
                .isLessThan(SoundingTime.minutes(hymn(OptionalInt.of(60)), SmallPlan.verse("V1")));
    }
}
