package versewind.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import versewind.organ.Quoted;

/**
 * Someone at work on a file, or who was.
 *
 * @param who the name of the account
 * @param host the computer; "" where it has no name
 * @param process number of the process there
 * @param since when the file was opened
 */
public record Presence(String who, String host, long process, Instant since) {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM, HH:mm", Locale.ENGLISH);

    /** "anna has it open on vestry since 09:30"; of whoever asks, "This plan is open in another window since 09:30". */
    public String sentence() {
        Presence us = JournalFiles.us();
        String whose = who.equals(us.who) && host.equals(us.host)
                ? "This plan is open in another window"
                : name() + " has it open" + where();
        return whose + " since " + time(since);
    }

    /** "anna", "somebody". */
    public String name() {
        return who.isBlank() ? "somebody" : Quoted.plain(who);
    }

    /** " on vestry", or nothing. */
    public String where() {
        return host.isBlank() ? "" : " on " + Quoted.plain(host);
    }

    /** A time of today as "09:30", of another day with the day. */
    public static String time(Instant instant) {
        ZonedDateTime then = instant.atZone(ZoneId.systemDefault());
        boolean isToday = then.toLocalDate().equals(LocalDate.now(ZoneId.systemDefault()));
        return (isToday ? TIME : DAY).format(then);
    }
}
