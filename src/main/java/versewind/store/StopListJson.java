package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import versewind.stoplist.ReadCoupler;
import versewind.stoplist.ReadDivision;
import versewind.stoplist.ReadStop;
import versewind.stoplist.ReadTremulant;
import versewind.stoplist.StopList;
import versewind.stoplist.Unread;

/**
 * A stop list that was read, as JSON, for other programs.
 *
 * <p>Everything outside of printable ASCII is escaped. A footage is text, "2 2/3", and "" for a compound stop without one.
 */
public final class StopListJson {

    private StopListJson() {}

    /** What the list calls the organ, divisions with their stops, couplers, tremulants, pistons, and what was not understood. */
    public static String of(StopList list) {
        return Generated.json(json -> {
            json.writeStringField("title", list.title());
            json.writeArrayFieldStart("divisions");
            for (ReadDivision division : list.divisions()) {
                division(json, division);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("couplers");
            for (ReadCoupler coupler : list.couplers()) {
                coupler(json, coupler);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("tremulants");
            for (ReadTremulant tremulant : list.tremulants()) {
                json.writeStartObject();
                json.writeStringField("name", tremulant.name());
                json.writeStringField("division", tremulant.division());
                json.writeNumberField("line", tremulant.line());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeObjectFieldStart("pistons");
            json.writeNumberField("generals", list.pistons().generals());
            json.writeObjectFieldStart("divisionals");
            for (Map.Entry<String, Integer> each : list.pistons().divisionals().entrySet()) {
                json.writeNumberField(each.getKey(), each.getValue());
            }
            json.writeEndObject();
            json.writeNumberField("levels", list.pistons().levels());
            json.writeEndObject();
            json.writeArrayFieldStart("notUnderstood");
            for (Unread unread : list.notUnderstood()) {
                json.writeStartObject();
                json.writeNumberField("line", unread.line());
                json.writeStringField("text", unread.text());
                json.writeStringField("why", unread.why());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void division(JsonGenerator json, ReadDivision division) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", division.name());
        json.writeBooleanField("pedal", division.isPedal());
        json.writeBooleanField("enclosed", division.enclosed());
        if (division.manual().isPresent()) {
            json.writeNumberField("manual", division.manual().getAsInt());
        }
        if (division.keys().isPresent()) {
            json.writeNumberField("keys", division.keys().getAsInt());
        }
        json.writeArrayFieldStart("stops");
        for (ReadStop stop : division.stops()) {
            json.writeStartObject();
            json.writeStringField("name", stop.name());
            json.writeStringField("footage", stop.feet());
            json.writeNumberField("ranks", stop.ranks());
            json.writeStringField("family", stop.family().word());
            json.writeBooleanField("sure", stop.how().isSure());
            json.writeStringField("how", stop.how().word());
            json.writeBooleanField("supposed", stop.supposed());
            json.writeArrayFieldStart("remarks");
            for (String remark : stop.remarks()) {
                json.writeString(remark);
            }
            json.writeEndArray();
            json.writeNumberField("line", stop.line());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void coupler(JsonGenerator json, ReadCoupler coupler) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", coupler.name());
        json.writeStringField("source", coupler.source());
        json.writeStringField("keyboard", coupler.keyboard());
        json.writeStringField("kind", coupler.kind().word());
        json.writeNumberField("line", coupler.line());
        json.writeEndObject();
    }
}
