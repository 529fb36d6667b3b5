package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import versewind.plan.ChurchDay;
import versewind.plan.ChurchYear;

/** A service's date, and what that is in the church's year, as JSON. */
final class ChurchDayJson {

    private ChurchDayJson() {}

    /**
     * The date ("date"), and the day ("day") with its season, its name, another name that falls on it ("also") and how a
     * service of it usually sounds ("occasion"); null where there is none.
     */
    static void write(JsonGenerator json, Optional<LocalDate> date) throws IOException {
        Generated.textOrNull(json, "date", date.map(Object::toString));
        Optional<ChurchDay> found = date.flatMap(ChurchYear::day);
        if (found.isEmpty()) {
            json.writeNullField("day");
            return;
        }
        ChurchDay day = found.get();
        json.writeObjectFieldStart("day");
        json.writeStringField("season", day.season().word());
        json.writeStringField("name", day.name());
        Generated.textOrNull(json, "also", day.also());
        json.writeStringField("occasion", day.occasion().word());
        json.writeEndObject();
    }
}
