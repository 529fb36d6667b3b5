package versewind.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A day as people say it from another day: "today", "tomorrow", "Sunday", "next Sunday". */
public final class NearDay {

    private NearDay() {}

    /** The day that is meant; "Sunday" and "next Sunday" are both the first one after today. */
    public static Optional<LocalDate> of(String said, LocalDate today) {
        String plain = said.strip().toLowerCase(Locale.ROOT);
        String day =
                plain.startsWith("next ") ? plain.substring("next ".length()).strip() : plain;
        return switch (plain) {
            case "" -> Optional.empty();
            case "today" -> Optional.of(today);
            case "tomorrow" -> Optional.of(today.plusDays(1));
            default ->
                Stream.of(DayOfWeek.values())
                        .filter(each -> day.length() >= 3
                                && each.name().toLowerCase(Locale.ROOT).startsWith(day))
                        .findFirst()
                        .map(each -> today.with(TemporalAdjusters.next(each)));
        };
    }
}
