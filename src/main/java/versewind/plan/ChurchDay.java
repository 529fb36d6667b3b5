package versewind.plan;

import java.util.Optional;

/**
 * A day in the church year.
 *
 * @param season the season
 * @param name the day's name: "Second Sunday of Advent", "Good Friday"
 * @param also another name for the same day, if there is one
 * @param occasion the usual character of a service on that day
 */
public record ChurchDay(Season season, String name, Optional<String> also, Occasion occasion) {

    /** Its names: "Fifth Sunday after Trinity, Proper 9, St Thomas". */
    public String names() {
        return name + also.map(other -> ", " + other).orElse("");
    }

    /** Its names and character: "Good Friday: solemn". */
    public String summary() {
        return names() + ": " + occasion.word();
    }
}
