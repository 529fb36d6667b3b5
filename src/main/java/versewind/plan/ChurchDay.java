package versewind.plan;

import java.util.Optional;

/**
 * What a day is in the church's year.
 *
 * @param season the season
 * @param name the day's name: "Second Sunday of Advent", "Good Friday"
 * @param also another name that falls on the same day, if one does
 * @param occasion how a service of that day usually sounds
 */
public record ChurchDay(Season season, String name, Optional<String> also, Occasion occasion) {

    /** Its names: "Fifth Sunday after Trinity (Proper 9), St Thomas". */
    public String names() {
        return name + also.map(other -> ", " + other).orElse("");
    }

    /** Its names and how it sounds: "Good Friday: solemn". */
    public String summary() {
        return names() + ": " + occasion.word();
    }
}
