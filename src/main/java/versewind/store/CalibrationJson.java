package versewind.store;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import versewind.organ.Instrument;
import versewind.organ.Trims;
import versewind.sound.Fit;
import versewind.sound.MeterReading;
import versewind.sound.ReadingDesign;

/**
 * A calibration as JSON, for other programs: the readings with what was and is expected of them, the trims, what to read
 * next. Levels in dB(A) and dB with one decimal.
 */
public final class CalibrationJson {
    private CalibrationJson() {}

    /**
     * A calibration.
     *
     * @param before the instrument with the trims it had before any reading
     * @param fit what the readings tell, if there are any
     * @param next what to read next
     */
    public static String of(Instrument before, Optional<Fit> fit, List<ReadingDesign.Proposed> next) {
        return Generated.json(json -> {
            json.writeStringField("instrument", before.name());
            json.writeArrayFieldStart("readings");
            for (Fit.Judged judged : fit.map(Fit::judged).orElse(List.of())) {
                json.writeStartObject();
                reading(json, before, judged.kept().reading());
                level(json, "dBA", judged.kept().reading().dba());
                level(json, "before", judged.kept().beforeDba());
                level(json, "after", judged.kept().afterDba());
                level(json, "residual", judged.kept().residualDb());
                level(json, "distanceSds", judged.distanceSds());
                json.writeBooleanField("fitsNothing", judged.fitsNothing());
                json.writeEndObject();
            }
            json.writeEndArray();
            if (fit.isPresent()) {
                trims(json, fit.get());
            }
            json.writeArrayFieldStart("next");
            for (ReadingDesign.Proposed proposed : next) {
                json.writeStartObject();
                reading(json, before, proposed.reading());
                level(json, "expected", proposed.reading().dba());
                level(json, "plusMinusBefore", proposed.beforeDb());
                level(json, "plusMinusAfter", proposed.afterDb());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void trims(JsonGenerator json, Fit fit) throws IOException {
        Instrument organ = fit.instrument();
        Trims trims = Trims.of(organ);
        json.writeObjectFieldStart("trims");
        level(json, "organ", trims.organDb());
        level(json, "singers", fit.calibration().offsets().singersDb());
        level(json, "room", fit.calibration().offsets().roomDb());
        json.writeObjectFieldStart("stops");
        for (int stop = 0; stop < organ.stops().size(); stop++) {
            level(
                    json,
                    organ.stops().get(stop).name().toString(),
                    trims.stopsDb().get(stop));
        }
        json.writeEndObject();
        json.writeObjectFieldStart("boxes");
        for (int division = 0; division < organ.divisions().size(); division++) {
            if (organ.divisions().get(division).isEnclosed()) {
                level(
                        json,
                        organ.divisions().get(division).name(),
                        trims.boxesDb().get(division));
            }
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void reading(JsonGenerator json, Instrument organ, MeterReading reading) throws IOException {
        if (!reading.date().isBlank()) {
            json.writeStringField("date", reading.date());
        }
        json.writeStringField("seat", reading.seat().word());
        json.writeNumberField("people", reading.present());
        if (reading.sung().isPresent()) {
            json.writeNumberField("singers", reading.sung().get().singers());
            json.writeStringField("singing", reading.sung().get().strength().word());
        }
        json.writeStringField("hands", reading.hands().layout().word());
        json.writeStringField(
                "right", organ.divisions().get(reading.hands().right()).name());
        json.writeStringField(
                "left", organ.divisions().get(reading.hands().left()).name());
        DrawnJson.write(json, organ, reading.registration());
    }

    private static void level(JsonGenerator json, String name, double level) throws IOException {
        Generated.level(json, name, OptionalDouble.of(level));
    }
}
