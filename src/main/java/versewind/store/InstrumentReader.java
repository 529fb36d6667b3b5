package versewind.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.calibration.Calibration;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.FormerNames;
import versewind.organ.Instrument;
import versewind.organ.Nearest;
import versewind.organ.Pistons;
import versewind.organ.Quoted;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.Tremulant;

/** Reads an instrument's file. */
final class InstrumentReader {
    private final List<Division> divisions = new ArrayList<>();
    private final StopReader stops = new StopReader();

    private InstrumentReader() {}

    /**
     * Reads an instrument.
     *
     * @param file its name, for the sentence if it is wrong
     * @param bytes what is in it
     */
    static Instrument read(Path file, byte[] bytes) throws BadFile {
        return readKnown(file, bytes).instrument();
    }

    /** Reads an instrument and what its trims rest on. */
    static KnownOrgan readKnown(Path file, byte[] bytes) throws BadFile {
        LocatedValue root = JsonTree.read(file, bytes);
        Format.check(root);
        Fields fields = root.fields(
                "format",
                "name",
                "place",
                "action",
                "trim",
                "room",
                "divisions",
                "couplers",
                "tremulants",
                "pistons",
                "formerly",
                "calibration");
        Instrument instrument = new InstrumentReader().instrument(fields);
        Optional<LocatedValue> calibration = fields.find("calibration");
        Optional<LocatedValue> formerly = fields.find("formerly");
        return new KnownOrgan(
                instrument,
                calibration.isPresent()
                        ? new CalibrationReader(instrument).calibration(calibration.get())
                        : Calibration.NONE,
                formerly.isPresent() ? new FormerlyReader(instrument).names(formerly.get()) : FormerNames.NONE);
    }

    private Instrument instrument(Fields fields) throws BadFile {
        String name = fields.name("name");
        String place = fields.text("place");
        Action action = fields.at("action").choice(List.of(Action.values()), Action::word);
        double trimDb = trimDb(fields);
        Room room = RoomReader.room(fields.at("room"));
        readDivisions(fields.at("divisions"));
        List<Coupler> couplers = couplers(fields.items("couplers"));
        List<Tremulant> tremulants = tremulants(fields.items("tremulants"));
        Optional<LocatedValue> found = fields.find("pistons");
        Pistons pistons = found.isPresent() ? pistons(found.get()) : Pistons.NONE;
        return fields.near("divisions")
                .make(() ->
                        new Instrument(name, place, action, trimDb, divisions, couplers, tremulants, pistons, room));
    }

    /** A trim that may be left out. */
    static double trimDb(Fields fields) throws BadFile {
        Optional<LocatedValue> trim = fields.find("trim");
        return trim.isPresent() ? trim.get().number(-Stop.WIDEST_TRIM_DB, Stop.WIDEST_TRIM_DB) : 0;
    }

    private void readDivisions(LocatedValue found) throws BadFile {
        Map<String, LocatedValue> seen = new HashMap<>();
        Optional<LocatedValue> pedal = Optional.empty();
        for (LocatedValue each : found.items()) {
            Fields fields = each.fields("name", "manual", "pedal", "keys", "box", "stops");
            requireNew(seen, fields.name("name"), fields.at("name"), "division");
            Division division = DivisionReader.division(fields, stops);
            if (division.isPedal() && pedal.isPresent()) {
                throw each.bad(
                        "this is a second pedal, after the one in line "
                                + pedal.get().node().line(),
                        "Put its stops into one pedal division.");
            }
            pedal = division.isPedal() ? Optional.of(each) : pedal;
            divisions.add(division);
        }
        stops.checkBorrowing();
    }

    private List<Coupler> couplers(List<LocatedValue> list) throws BadFile {
        List<Coupler> couplers = new ArrayList<>();
        Map<String, LocatedValue> seen = new HashMap<>();
        for (LocatedValue each : list) {
            Fields fields = each.fields("name", "source", "keyboard", "kind");
            String name = fields.name("name");
            requireNew(seen, name, fields.at("name"), "coupler");
            String source = divisionName(fields.at("source"));
            String keyboard = divisionName(fields.at("keyboard"));
            Optional<LocatedValue> found = fields.find("kind");
            Coupler.Kind kind = found.isPresent()
                    ? found.get().choice(List.of(Coupler.Kind.values()), Coupler.Kind::word)
                    : Coupler.Kind.UNISON;
            couplers.add(each.make(() -> new Coupler(name, source, keyboard, kind)));
        }
        return couplers;
    }

    private List<Tremulant> tremulants(List<LocatedValue> list) throws BadFile {
        List<Tremulant> tremulants = new ArrayList<>();
        Map<String, LocatedValue> seen = new HashMap<>();
        for (LocatedValue each : list) {
            Fields fields = each.fields("name", "division");
            String name = fields.name("name");
            requireNew(seen, name, fields.at("name"), "tremulant");
            String division = divisionName(fields.at("division"));
            tremulants.add(each.make(() -> new Tremulant(name, division)));
        }
        return tremulants;
    }

    private Pistons pistons(LocatedValue found) throws BadFile {
        Fields fields = found.fields("generals", "divisionals", "memory levels");
        Optional<LocatedValue> generals = fields.find("generals");
        int general = generals.isPresent() ? generals.get().whole() : 0;
        Map<String, Integer> divisionals = new LinkedHashMap<>();
        for (Map.Entry<String, LocatedValue> each :
                fields.entries("divisionals").entrySet()) {
            divisionName(each.getValue(), each.getKey());
            divisionals.put(each.getKey(), each.getValue().whole());
        }
        int memoryLevels = fields.at("memory levels").whole();
        return found.make(() -> new Pistons(general, divisionals, memoryLevels));
    }

    private String divisionName(LocatedValue found) throws BadFile {
        return divisionName(found, found.text());
    }

    private String divisionName(LocatedValue found, String name) throws BadFile {
        List<String> names = divisions.stream().map(Division::name).toList();
        if (!names.contains(name)) {
            throw found.bad(
                    "the organ has no division " + Quoted.text(name),
                    Nearest.sentence(name, names, "The divisions are"));
        }
        return name;
    }

    private static void requireNew(Map<String, LocatedValue> seen, String name, LocatedValue found, String thing)
            throws BadFile {
        LocatedValue earlier = seen.put(name, found);
        if (earlier != null) {
            throw found.bad(
                    "two " + thing + "s are called " + Quoted.text(name) + ", the first in line "
                            + earlier.node().line(),
                    "Give one of them another name.");
        }
    }
}
