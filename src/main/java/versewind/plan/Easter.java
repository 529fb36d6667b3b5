package versewind.plan;

import java.time.LocalDate;

/**
 * The date of Easter Day, from 1583, the first Easter of the Gregorian calendar.
 *
 * <p>Easter Day is the Sunday after the full moon, by the tables of the church, that falls on or after 21 March. The
 * western churches use the Gregorian calendar and its corrected moon, the Orthodox the Julian calendar and the 19-year
 * lunar cycle.
 *
 * <p>Source: the anonymous algorithm of Nature 13 (1876) 487 and that of J. Meeus, Astronomical Algorithms (1991),
 * chapter 8, both from memory.
 *
 * <p>Checked against: {@code EasterTest}, every row of easter.csv and easter_a060958.csv, and the rule in Butcher's
 * Ecclesiastical Calendar (1876).
 */
public final class Easter {

    /** The first year with an Easter Day in the Gregorian calendar. */
    public static final int FIRST_YEAR = 1583;

    private static final int MARCH = 3;
    private static final int LAST_OF_MARCH = 31;

    private Easter() {}

    /**
     * Easter Day of the western churches.
     *
     * @throws IllegalArgumentException if the year is before {@link #FIRST_YEAR}
     */
    public static LocalDate western(int year) {
        require(year);
        int golden = year % 19;
        int century = year / 100;
        int leapsLeftOut = century - century / 4;
        int moonsCorrection = (8 * century + 13) / 25;
        int moon = (19 * golden + leapsLeftOut - moonsCorrection + 15) % 30;
        int corrected = moon == 29 || (moon == 28 && golden > 10) ? moon - 1 : moon;
        int weekday = (year + year / 4 + corrected + 2 - leapsLeftOut) % 7;
        return ofMarch(year, 28 + corrected - weekday);
    }

    /**
     * Easter Day of the Orthodox churches, in the Gregorian calendar.
     *
     * @throws IllegalArgumentException if the year is before {@link #FIRST_YEAR}
     */
    public static LocalDate orthodox(int year) {
        require(year);
        int moon = (19 * (year % 19) + 15) % 30;
        int weekday = (year + year / 4 + moon) % 7;
        int century = year / 100;
        int daysBehind = century - century / 4 - 2;
        return ofMarch(year, 28 + moon - weekday + daysBehind);
    }

    /** A date as a day of March: 32 is the first of April. */
    private static LocalDate ofMarch(int year, int day) {
        return LocalDate.of(year, MARCH, LAST_OF_MARCH).plusDays(day - LAST_OF_MARCH);
    }

    private static void require(int year) {
        if (year < FIRST_YEAR) {
            throw new IllegalArgumentException("the Gregorian calendar has no Easter before " + FIRST_YEAR);
        }
    }
}
