package versewind.organ;

import java.time.LocalDate;

/** A date as people say it. Without Java's formatter, whose names cost 10 ms at the start. */
public final class DayWords {

    private static final String DAYS = "MonTueWedThuFriSatSun";
    private static final String MONTHS = "JanFebMarAprMayJunJulAugSepOctNovDec";

    private DayWords() {}

    /** "Sun 4 Oct 2026". */
    public static String of(LocalDate date) {
        int day = 3 * date.getDayOfWeek().ordinal();
        int month = 3 * date.getMonth().ordinal();
        return DAYS.substring(day, day + 3) + " " + date.getDayOfMonth() + " " + MONTHS.substring(month, month + 3)
                + " " + date.getYear();
    }
}
