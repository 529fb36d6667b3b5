package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import versewind.rules.NoiseExposure;

/**
 * Writes what a plan means for the ears: the minutes that it sounds, and for either seat its distance in m, the mean level
 * and its standard deviation in dB, the share of NIOSH's daily dose in percent, and the level over a day of 8 hours.
 */
final class EarsJson {
    private EarsJson() {}

    static void write(JsonGenerator json, NoiseExposure ears) throws IOException {
        json.writeObjectFieldStart("ears");
        number(json, "minutes", ears.minutes());
        seat(json, "organist", ears.organist());
        seat(json, "choir", ears.choir());
        json.writeEndObject();
    }

    private static void seat(JsonGenerator json, String name, Optional<NoiseExposure.Seat> found) throws IOException {
        if (found.isEmpty()) {
            json.writeNullField(name);
            return;
        }
        NoiseExposure.Seat seat = found.get();
        json.writeObjectFieldStart(name);
        number(json, "distanceM", seat.distanceM());
        number(json, "dbA", seat.levelDba());
        number(json, "plusMinusDb", seat.plusMinusDb());
        number(json, "nioshPercent", 100 * seat.share());
        number(json, "leastPercent", 100 * seat.leastShare());
        number(json, "mostPercent", 100 * seat.mostShare());
        number(json, "dayDbA", seat.dayDba());
        json.writeEndObject();
    }

    private static void number(JsonGenerator json, String name, double value) throws IOException {
        json.writeFieldName(name);
        json.writeNumber(Generated.rounded(value, 1));
    }
}
