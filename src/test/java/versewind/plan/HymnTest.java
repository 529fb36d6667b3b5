package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HymnTest {

    private static Hymn hymn(String number, String title, String tune) {
        return new Hymn(number, title, tune, "", "", OptionalInt.empty(), "", List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "'12, Now the day is ended, ', '12, Night is a field, MOORWAY', false",
        "'12, Night is a field, ', '87, Night is a Field, MOORWAY', true",
        "'12, Now the day is ended, moorway', '12, Night is a field, MOORWAY', true",
        "'12, Hymn 12, ', '12, Night is a field, MOORWAY', true",
        "'13, Hymn 13, ', '12, Night is a field, MOORWAY', false",
    })
    void a_hymn_is_known_by_its_title_or_tune_and_by_its_number_only_where_it_has_no_title(
            String one, String other, boolean isLike) {
        String[] a = one.split(", ?", -1);
        String[] b = other.split(", ?", -1);
        assertThat(hymn(a[0], a[1], a[2]).isLike(hymn(b[0], b[1], b[2]))).isEqualTo(isLike);
        assertThat(hymn(b[0], b[1], b[2]).isLike(hymn(a[0], a[1], a[2]))).isEqualTo(isLike);
    }
}
