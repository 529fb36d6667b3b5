package versewind.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names of days: common practice, no source, where nothing else is said. */
class ChurchYearTest {

    @ParameterizedTest
    @CsvSource({
        "2025-11-30, ADVENT, First Sunday of Advent, EXPECTANT",
        "2025-12-07, ADVENT, Second Sunday of Advent, EXPECTANT",
        "2025-12-24, ADVENT, Christmas Eve, FESTAL",
        "2025-12-25, CHRISTMAS, Christmas Day, FESTAL",
        "2025-12-30, CHRISTMAS, Tuesday in Christmastide, JOYFUL",
        "2026-01-06, EPIPHANY, Epiphany, FESTAL",
        "2026-01-11, EPIPHANY, First Sunday after Epiphany, ORDINARY",
        "2026-02-08, EPIPHANY, Fifth Sunday after Epiphany, ORDINARY",
        "2026-02-15, EPIPHANY, Last Sunday after Epiphany, ORDINARY",
        "2026-02-18, LENT, Ash Wednesday, PENITENTIAL",
        "2026-02-20, LENT, Friday after Ash Wednesday, PENITENTIAL",
        "2026-02-22, LENT, First Sunday in Lent, PENITENTIAL",
        "2026-03-22, LENT, Fifth Sunday in Lent, PENITENTIAL",
        "2026-03-25, LENT, Annunciation, JOYFUL",
        "2026-03-29, HOLY_WEEK, Palm Sunday, SOLEMN",
        "2026-03-31, HOLY_WEEK, Tuesday in Holy Week, SOLEMN",
        "2026-04-02, HOLY_WEEK, Maundy Thursday, SOLEMN",
        "2026-04-03, HOLY_WEEK, Good Friday, SOLEMN",
        "2026-04-04, HOLY_WEEK, Easter Eve, SOLEMN",
        "2026-04-05, EASTER, Easter Day, FESTAL",
        "2026-04-07, EASTER, Tuesday in Easter Week, JOYFUL",
        "2026-04-12, EASTER, 'Second Sunday of Easter, Orthodox Easter Day', JOYFUL",
        "2026-05-14, EASTER, Ascension Day, FESTAL",
        "2026-05-17, EASTER, Seventh Sunday of Easter, JOYFUL",
        "2026-05-24, EASTER, Pentecost, FESTAL",
        "2026-05-25, AFTER_PENTECOST, Monday after Pentecost, ORDINARY",
        "2026-05-31, AFTER_PENTECOST, Trinity Sunday, FESTAL",
        "2026-06-04, AFTER_PENTECOST, Corpus Christi, JOYFUL",
        "2026-06-07, AFTER_PENTECOST, 'First Sunday after Trinity, Proper 5', ORDINARY",
        "2026-10-04, AFTER_PENTECOST, 'Eighteenth Sunday after Trinity, Proper 22', ORDINARY",
        "2026-10-07, AFTER_PENTECOST, 'Wednesday after the Eighteenth Sunday after Trinity, Proper 22', ORDINARY",
        "2026-11-01, AFTER_PENTECOST, 'All Saints, Fourth Sunday before Advent, Proper 26', FESTAL",
        "2026-11-22, AFTER_PENTECOST, 'Christ the King, Sunday next before Advent, Proper 29', FESTAL",
        "2026-10-18, AFTER_PENTECOST, 'Twentieth Sunday after Trinity, Proper 24, St Luke', ORDINARY",
        "2026-10-25, AFTER_PENTECOST, 'Last Sunday after Trinity, Proper 25', ORDINARY",
        "2026-11-08, AFTER_PENTECOST, 'Third Sunday before Advent, Proper 27', ORDINARY",
        "2026-11-15, AFTER_PENTECOST, 'Second Sunday before Advent, Proper 28', ORDINARY",
        "2027-10-31, AFTER_PENTECOST, 'Fourth Sunday before Advent, Proper 26, All Saints’ Sunday', ORDINARY",
        "2026-11-25, AFTER_PENTECOST, Wednesday after Christ the King, ORDINARY",
    })
    void a_day_has_its_season_its_name_and_its_sound(LocalDate date, Season season, String names, Occasion occasion) {
        ChurchDay day = ChurchYear.day(date).orElseThrow();
        assertThat(day.season()).isEqualTo(season);
        assertThat(day.names()).isEqualTo(names);
        assertThat(day.occasion()).isEqualTo(occasion);
    }

    @ParameterizedTest
    @CsvSource({
        "2012-03-25, Fifth Sunday in Lent",
        "2012-03-26, Annunciation",
        "2024-03-25, Monday in Holy Week",
        "2024-04-08, Annunciation",
        "2008-03-25, Tuesday in Easter Week",
        "2008-03-31, Annunciation",
        "2011-04-25, Monday in Easter Week",
    })
    void feasts_give_way_to_lent_holy_week_and_easter(LocalDate date, String name) {
        assertThat(ChurchYear.day(date).orElseThrow().name()).isEqualTo(name);
    }

    @Test
    void a_feast_of_an_apostle_stands_after_the_name_of_an_ordinary_sunday_and_candlemas_before_it() {
        assertThat(names(2023, 9, 24)).isEqualTo("Sixteenth Sunday after Trinity, Proper 20");
        assertThat(names(2025, 9, 21)).isEqualTo("Fourteenth Sunday after Trinity, Proper 20, St Matthew");
        assertThat(names(2025, 2, 2)).isEqualTo("Presentation of Christ (Candlemas), Fourth Sunday after Epiphany");
    }

    @Test
    void the_fourth_sunday_of_advent_may_be_christmas_eve() {
        assertThat(names(2023, 12, 24)).isEqualTo("Christmas Eve, Fourth Sunday of Advent");
        assertThat(names(2023, 12, 3)).isEqualTo("First Sunday of Advent");
    }

    @Test
    void sundays_around_the_new_year_count_from_christmas_and_from_epiphany() {
        assertThat(names(2022, 1, 2)).isEqualTo("Second Sunday after Christmas");
        assertThat(names(2019, 1, 6)).isEqualTo("Epiphany");
        assertThat(names(2019, 1, 13)).isEqualTo("First Sunday after Epiphany");
        assertThat(names(2022, 12, 25)).isEqualTo("Christmas Day");
        assertThat(names(2023, 1, 1)).isEqualTo("Naming of Jesus, First Sunday after Christmas");
        assertThat(names(2026, 1, 8)).isEqualTo("Thursday after Epiphany");
    }

    @Test
    void every_day_of_two_hundred_years_has_a_name_and_every_year_one_easter_and_four_sundays_of_advent() {
        for (int year = 1900; year < 2100; year++) {
            int easters = 0;
            int advents = 0;
            for (LocalDate date = LocalDate.of(year, 1, 1); date.getYear() == year; date = date.plusDays(1)) {
                ChurchDay day = ChurchYear.day(date).orElseThrow();
                assertThat(day.name()).isNotBlank();
                easters += day.name().equals("Easter Day") ? 1 : 0;
                boolean isSunday = date.getDayOfWeek() == DayOfWeek.SUNDAY;
                advents += isSunday && day.season() == Season.ADVENT ? 1 : 0;
            }
            assertThat(easters).isEqualTo(1);
            assertThat(advents).isEqualTo(4);
        }
    }

    @Test
    void before_the_gregorian_calendar_a_day_has_no_name() {
        assertThat(ChurchYear.day(LocalDate.of(1582, 12, 25))).isEmpty();
        assertThat(ChurchYear.day(LocalDate.of(1583, 12, 25))).isPresent();
    }

    private static String names(int year, int month, int day) {
        return ChurchYear.day(LocalDate.of(year, month, day)).orElseThrow().names();
    }
}
