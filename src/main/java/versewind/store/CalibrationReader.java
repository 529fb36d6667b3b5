package versewind.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.calibration.Calibration;
import versewind.calibration.MeterReading;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Quoted;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.organ.Trims;
import versewind.plan.Singing;
import versewind.sound.Offsets;
import versewind.sound.Seat;

/** Reads what an instrument's trims rest on. */
final class CalibrationReader {
    private static final double WIDEST_OFFSET_DB = 40;

    private final Instrument instrument;
    private final VerseReader drawn;

    CalibrationReader(Instrument instrument) {
        this.instrument = instrument;
        this.drawn = new VerseReader(KnownOrgan.of(instrument));
    }

    Calibration calibration(LocatedValue found) throws BadFile {
        Fields fields = found.fields("singers", "room", "before", "readings");
        double singersDb = offset(fields, "singers");
        double roomDb = offset(fields, "room");
        Trims before = before(fields.at("before"));
        List<Calibration.Kept> kept = new ArrayList<>();
        for (LocatedValue each : fields.at("readings").items()) {
            kept.add(kept(each));
        }
        if (kept.isEmpty()) {
            throw fields.at("readings")
                    .bad("a calibration rests on one reading at least", "Take out the whole field \"calibration\".");
        }
        return new Calibration(Optional.of(before), new Offsets(singersDb, roomDb), kept);
    }

    private static double offset(Fields fields, String name) throws BadFile {
        Optional<LocatedValue> found = fields.find(name);
        return found.isPresent() ? found.get().number(-WIDEST_OFFSET_DB, WIDEST_OFFSET_DB) : 0;
    }

    private Trims before(LocatedValue found) throws BadFile {
        Fields fields = found.fields("trim", "stops", "boxes");
        double organDb = InstrumentReader.trimDb(fields);
        Map<StopName, Double> stops = new HashMap<>();
        for (Map.Entry<String, LocatedValue> division : fields.entries("stops").entrySet()) {
            for (Map.Entry<String, LocatedValue> stop :
                    division.getValue().entries().entrySet()) {
                StopName name = new StopName(division.getKey(), stop.getKey());
                if (instrument.stop(name).isEmpty()) {
                    throw stop.getValue()
                            .bad(
                                    "the organ has no stop " + Quoted.text(name.toString()),
                                    "Write it as it stands above.");
                }
                stops.put(name, trim(stop.getValue()));
            }
        }
        Map<String, Double> boxes = new HashMap<>();
        for (Map.Entry<String, LocatedValue> box : fields.entries("boxes").entrySet()) {
            boxes.put(box.getKey(), trim(box.getValue()));
        }
        return new Trims(
                organDb,
                instrument.stops().stream()
                        .map(knob -> stops.getOrDefault(knob.name(), 0.0))
                        .toList(),
                instrument.divisions().stream()
                        .map(Division::name)
                        .map(name -> boxes.getOrDefault(name, 0.0))
                        .toList());
    }

    private static double trim(LocatedValue found) throws BadFile {
        return found.number(-Stop.WIDEST_TRIM_DB, Stop.WIDEST_TRIM_DB);
    }

    private Calibration.Kept kept(LocatedValue found) throws BadFile {
        Fields fields = found.fields(
                "date",
                "seat",
                "people",
                "singers",
                "singing",
                "hands",
                "right",
                "left",
                "drawn",
                "couplers",
                "boxes",
                "tremulants",
                "dBA",
                "before",
                "after");
        Seat seat = fields.at("seat").choice(List.of(Seat.values()), Seat::word);
        int people = PlanReader.optionalWhole(fields, "people").orElse(0);
        OptionalInt singers = PlanReader.optionalWhole(fields, "singers");
        Optional<LocatedValue> strength = fields.find("singing");
        Singing singing = strength.isPresent()
                ? strength.get().choice(List.of(Singing.values()), Singing::word)
                : Singing.ORDINARY;
        String date = fields.textOrBlank("date");
        double dba = level(fields, "dBA");
        double beforeDba = level(fields, "before");
        double afterDba = level(fields, "after");
        var hands = drawn.hands(fields);
        var registration = drawn.registration(fields);
        MeterReading reading = fields.near("dBA")
                .make(() -> new MeterReading(
                        date,
                        registration,
                        hands,
                        seat,
                        people,
                        singers.isPresent()
                                ? Optional.of(new MeterReading.Sung(singers.getAsInt(), singing))
                                : Optional.empty(),
                        dba));
        return new Calibration.Kept(reading, beforeDba, afterDba);
    }

    private static double level(Fields fields, String name) throws BadFile {
        return fields.at(name).number(0, MeterReading.HIGHEST_DBA + WIDEST_OFFSET_DB);
    }
}
