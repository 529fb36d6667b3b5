package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static versewind.plan.SmallPlan.hymn;
import static versewind.plan.SmallPlan.verse;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VersePlaceTest {

    private static final Plan PLAN = SmallPlan.with(hymn("one", verse("V1"), verse("V2")), hymn("without verses"));

    @ParameterizedTest
    @CsvSource({
        "0, 1, 0, 1",
        "0, 9, 0, 1",
        "0, -1, 0, 0",
        "5, 0, 1, 0",
        "1, 3, 1, 0",
        "-1, 1, 0, 1",
    })
    void a_place_outside_becomes_the_nearest_inside(int hymn, int verse, int nearestHymn, int nearestVerse) {
        assertThat(new VersePlace(hymn, verse).within(PLAN)).isEqualTo(new VersePlace(nearestHymn, nearestVerse));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "3, 4"})
    void in_an_empty_plan_every_place_is_the_start(int hymn, int verse) {
        assertThat(new VersePlace(hymn, verse).within(SmallPlan.with())).isEqualTo(VersePlace.START);
    }
}
