package versewind.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import versewind.organ.Division;
import versewind.organ.Stop;
import versewind.organ.SwellBox;

/** Reads a division of an instrument. */
final class DivisionReader {
    private DivisionReader() {}

    static Division division(Fields fields, StopReader stops) throws BadFile {
        String name = fields.name("name");
        if (name.contains(StopReader.SEPARATOR)) {
            throw fields.at("name").bad("a division's name has no colon", "Write it without.");
        }
        OptionalInt manual = manual(fields);
        int keys = fields.at("keys").whole();
        Optional<LocatedValue> found = fields.find("box");
        Optional<SwellBox> box = found.isPresent() ? Optional.of(box(found.get())) : Optional.empty();
        List<Stop> list = new ArrayList<>();
        for (LocatedValue each : fields.at("stops").items()) {
            list.add(stops.stop(name, each));
        }
        return fields.at("keys").make(() -> new Division(name, manual, keys, box, list));
    }

    private static OptionalInt manual(Fields fields) throws BadFile {
        Optional<LocatedValue> manual = fields.find("manual");
        Optional<LocatedValue> pedal = fields.find("pedal");
        if (manual.isPresent() == pedal.isPresent()) {
            throw (pedal.isPresent() ? pedal.get() : fields.object())
                    .bad(
                            "a division has either a manual or is the pedal",
                            "Write \"manual\" with its number, or \"pedal\": true.");
        }
        if (pedal.isPresent()) {
            if (!pedal.get().truth()) {
                throw pedal.get().bad("this can only be true", "Write \"manual\" with its number instead.");
            }
            return OptionalInt.empty();
        }
        manual.get().number(1, Division.MOST_MANUALS);
        return OptionalInt.of(manual.get().whole());
    }

    private static SwellBox box(LocatedValue found) throws BadFile {
        double trimDb = InstrumentReader.trimDb(found.fields("trim"));
        return found.make(() -> new SwellBox(trimDb));
    }
}
