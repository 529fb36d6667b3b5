package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class EasterTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/published/easter.csv", useHeadersInDisplayName = true)
    void easter_falls_on_its_published_dates(int year, LocalDate western, LocalDate orthodox) {
        assertThat(Easter.western(year)).isEqualTo(western);
        assertThat(Easter.orthodox(year)).isEqualTo(orthodox);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/easter_a060958.csv", useHeadersInDisplayName = true)
    void western_easter_agrees_with_a_second_table(int year, int dayOfMarch) {
        assertThat(Easter.western(year)).isEqualTo(LocalDate.of(year, 3, 1).plusDays(dayOfMarch - 1));
    }

    /** As in Butcher's Ecclesiastical Calendar (1876), after H. V. Smith, Mathematical Spectrum 11 (1978/79) 23. */
    private static LocalDate butcher(int y) {
        int j = y % 19;
        int k = y / 100;
        int h = y % 100;
        int m = k / 4;
        int n = k % 4;
        int p = (k + 8) / 25;
        int q = (k - p + 1) / 3;
        int r = (19 * j + k - m - q + 15) % 30;
        int s = h / 4;
        int u = h % 4;
        int v = (32 + 2 * n + 2 * s - r - u) % 7;
        int w = (j + 11 * r + 22 * v) / 451;
        int both = r + v - 7 * w + 114;
        return LocalDate.of(y, both / 31, both % 31 + 1);
    }

    @Test
    void over_a_whole_cycle_western_easter_is_that_of_butcher() {
        for (int year = Easter.FIRST_YEAR; year < Easter.FIRST_YEAR + 5_700; year++) {
            assertThat(Easter.western(year)).isEqualTo(butcher(year));
        }
    }

    /** The bounds are those of 1818 and 2285, and of 1886, 1943 and 2038; D. Bekaert, Easter date, after J. Meeus. */
    @Test
    void over_a_whole_cycle_western_easter_is_a_sunday_between_22_march_and_25_april() {
        for (int year = Easter.FIRST_YEAR; year < Easter.FIRST_YEAR + 5_700; year++) {
            LocalDate easter = Easter.western(year);
            assertThat(easter.getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
            assertThat(easter).isBetween(LocalDate.of(year, 3, 22), LocalDate.of(year, 4, 25));
            assertThat(Easter.orthodox(year).getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
        }
    }

    @Test
    void before_the_gregorian_calendar_there_is_no_answer() {
        assertThatThrownBy(() -> Easter.western(1582)).hasMessageContaining("no Easter before 1583");
        assertThatThrownBy(() -> Easter.orthodox(1582)).hasMessageContaining("no Easter before 1583");
    }
}
