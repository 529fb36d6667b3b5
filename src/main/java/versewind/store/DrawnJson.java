package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.StopName;

/** Writes what is drawn, in the fields of a plan's file: "drawn", "couplers", "boxes", "tremulants". */
final class DrawnJson {
    private DrawnJson() {}

    static void write(JsonGenerator json, Instrument instrument, Registration drawn) throws IOException {
        List<StopName> stops = drawn.stops().stream()
                .mapToObj(stop -> instrument.stops().get(stop).name())
                .toList();
        json.writeObjectFieldStart("drawn");
        for (Division division : instrument.divisions()) {
            Stream<StopName> here =
                    stops.stream().filter(stop -> stop.division().equals(division.name()));
            names(json, division.name(), here.map(StopName::label).toList());
        }
        json.writeEndObject();
        names(
                json,
                "couplers",
                drawn.couplers().stream()
                        .mapToObj(coupler -> instrument.couplers().get(coupler).name())
                        .toList());
        boxes(json, instrument, drawn);
        names(
                json,
                "tremulants",
                drawn.tremulants().stream()
                        .mapToObj(tremulant ->
                                instrument.tremulants().get(tremulant).name())
                        .toList());
    }

    private static void names(JsonGenerator json, String field, List<String> names) throws IOException {
        if (names.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart(field);
        for (String name : names) {
            json.writeString(name);
        }
        json.writeEndArray();
    }

    private static void boxes(JsonGenerator json, Instrument instrument, Registration drawn) throws IOException {
        List<Division> divisions = instrument.divisions();
        if (divisions.stream().noneMatch(Division::isEnclosed)) {
            return;
        }
        json.writeObjectFieldStart("boxes");
        for (int division = 0; division < divisions.size(); division++) {
            if (divisions.get(division).isEnclosed()) {
                json.writeStringField(
                        divisions.get(division).name(),
                        drawn.boxes().get(division).word());
            }
        }
        json.writeEndObject();
    }
}
