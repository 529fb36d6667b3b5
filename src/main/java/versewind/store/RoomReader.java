package versewind.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import versewind.acoustics.AbsorptionTable;
import versewind.organ.Nearest;
import versewind.organ.Quoted;
import versewind.organ.Room;
import versewind.sound.PossibleRoom;

/** Reads the room of an instrument. */
final class RoomReader {
    private static final String[] OCTAVES =
            Room.OCTAVES_HZ.stream().map(String::valueOf).toArray(String[]::new);

    private RoomReader() {}

    static Room room(LocatedValue found) throws BadFile {
        Fields fields = found.fields("volume", "seats", "reverberation", "surfaces", "distances");
        double volumeM3 = fields.at("volume").number();
        int seats = fields.at("seats").whole();
        Room.Reverberation reverberation = reverberation(fields);
        Room.Distances distances = distances(fields.at("distances"));
        return found.make(() -> PossibleRoom.require(new Room(volumeM3, seats, reverberation, distances)));
    }

    private static Room.Reverberation reverberation(Fields fields) throws BadFile {
        Optional<LocatedValue> times = fields.find("reverberation");
        Optional<LocatedValue> found = fields.find("surfaces");
        if (times.isEmpty() && found.isEmpty()) {
            throw fields.object()
                    .bad(
                            "a room has measured times or surfaces",
                            "Write \"reverberation\" or \"surfaces\"; times come first where there are both.");
        }
        Optional<Room.Surfaces> surfaces = found.isPresent() ? Optional.of(surfaces(found.get())) : Optional.empty();
        return times.isPresent() ? measured(times.get(), surfaces) : surfaces.orElseThrow();
    }

    private static Room.Reverberation measured(LocatedValue found, Optional<Room.Surfaces> surfaces) throws BadFile {
        Fields fields = found.fields(OCTAVES);
        SortedMap<Integer, Double> octaveS = new TreeMap<>();
        for (Integer octave : Room.OCTAVES_HZ) {
            Optional<LocatedValue> time = fields.find(octave.toString());
            if (time.isPresent()) {
                octaveS.put(octave, time.get().number());
            }
        }
        return found.make(() -> new Room.MeasuredTimes(octaveS, surfaces));
    }

    private static Room.Surfaces surfaces(LocatedValue found) throws BadFile {
        AbsorptionTable table = AbsorptionTable.load();
        List<Room.Surface> list = new ArrayList<>();
        for (LocatedValue each : found.items()) {
            Fields fields = each.fields("material", "area");
            String material = material(table, fields.at("material"));
            double areaM2 = fields.at("area").number();
            list.add(each.make(() -> new Room.Surface(material, areaM2)));
        }
        return found.make(() -> new Room.Surfaces(list));
    }

    private static String material(AbsorptionTable table, LocatedValue found) throws BadFile {
        String name = found.text();
        if (table.material(name).isEmpty()) {
            throw found.bad(
                    "the table of absorption has no " + Quoted.text(name),
                    Nearest.sentence(name, table.surfaces(), "It has"));
        }
        found.make(() -> table.surface(name));
        return name;
    }

    private static Room.Distances distances(LocatedValue found) throws BadFile {
        Fields fields = found.fields("nave", "far", "choir", "choir to nave", "console");
        double naveM = fields.at("nave").number();
        double farM = fields.at("far").number();
        double choirM = fields.at("choir").number();
        double choirToNaveM = fields.at("choir to nave").number();
        double consoleM = fields.at("console").number();
        return found.make(() -> new Room.Distances(naveM, farM, choirM, choirToNaveM, consoleM));
    }
}
