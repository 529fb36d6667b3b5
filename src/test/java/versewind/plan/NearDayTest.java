package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearDayTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 9, 28);

    @ParameterizedTest
    @CsvSource({
        "today, 2026-09-28",
        "Tomorrow, 2026-09-29",
        "sunday, 2026-10-04",
        "next Sunday, 2026-10-04",
        "sat, 2026-10-03",
        "monday, 2026-10-05",
        "su, ",
        "next, ",
        "4 Oct 2026, ",
    })
    void a_day_is_named_as_people_say_it(String said, LocalDate day) {
        assertThat(NearDay.of(said, MONDAY).orElse(null)).isEqualTo(day);
    }
}
