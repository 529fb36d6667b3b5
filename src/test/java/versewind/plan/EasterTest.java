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

    /** The published bounds of the Gregorian Easter; from memory. */
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
