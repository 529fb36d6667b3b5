package versewind.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import versewind.acoustics.AbsorptionTable;
import versewind.organ.Room;
import versewind.organ.Room.Distances;
import versewind.organ.Room.MeasuredTimes;
import versewind.organ.Room.Surface;
import versewind.organ.Room.Surfaces;
import versewind.schema.Field.Layout;
import versewind.sound.PossibleRoom;

/** The fields of a room: its size, its reverberation and its distances. */
public final class RoomFields {
    private static final Kind<Double> METRES = Kinds.decimal(0.5, 300);

    // reverberation times

    static final Table<SortedMap<Integer, Double>> TIMES = Table.line(
            "Reverberation times of the empty room in s, by the centre of the octave in Hz.",
            RoomFields::times,
            (times, hz) -> Optional.ofNullable(times.get(Integer.valueOf(hz))));

    /** The time of each octave, 125 to 4000 Hz. */
    public static final List<Field<SortedMap<Integer, Double>, Optional<Double>>> OCTAVES = octaves();

    // surfaces

    static final Table<Surface> SURFACE = Table.line(
            "One surface of the empty room.",
            values -> new Surface(values.get(RoomFields.MATERIAL), values.get(RoomFields.AREA)),
            RoomFields::of);

    public static final Field<Surface, String> MATERIAL = SURFACE.add(
                    "material", new Material(), "a material of the table of absorption")
            .label("What");

    public static final Field<Surface, Double> AREA = SURFACE.add("area", Kinds.decimal(0, 1_000_000), "area in m2");

    // distances

    static final Table<Distances> DISTANCE = Table.line(
            "Who is how far from whom, in m.",
            values -> new Distances(
                    values.get(RoomFields.NAVE),
                    values.get(RoomFields.FAR),
                    values.get(RoomFields.CHOIR),
                    values.get(RoomFields.CHOIR_TO_NAVE),
                    values.get(RoomFields.CONSOLE)),
            RoomFields::of);

    public static final Field<Distances, Double> NAVE =
            DISTANCE.add("nave", METRES, "metres from the organ to the middle of the nave");

    public static final Field<Distances, Double> FAR =
            DISTANCE.add("far", METRES, "metres from the organ to the singers farthest from it");

    public static final Field<Distances, Double> CHOIR =
            DISTANCE.add("choir", METRES, "metres from the organ to the place of a choir or soloist");

    public static final Field<Distances, Double> CHOIR_TO_NAVE = DISTANCE.add(
                    "choir to nave", METRES, "metres from that choir to the middle of the nave")
            .label("To nave");

    public static final Field<Distances, Double> CONSOLE =
            DISTANCE.add("console", METRES, "metres from the pipes to the organist");

    // the room

    public static final Table<Room> TABLE = Table.block(
            "The room the organ stands in, with its measured reverberation or its surfaces; what was measured comes"
                    + " first.",
            "",
            RoomFields::room,
            RoomFields::of);

    public static final Field<Room, Double> VOLUME = TABLE.add("volume", Kinds.decimal(50, 500_000), "volume in m3");

    public static final Field<Room, Integer> SEATS = TABLE.add("seats", Kinds.whole(0, 50_000), "number of seats");

    private static final Field<Room, Optional<SortedMap<Integer, Double>>> REVERBERATION = TABLE.ifAny(
            "reverberation",
            new Kinds.Nested<>(() -> TIMES),
            "reverberation times of the empty room in s, by octave; an octave left out is estimated");

    private static final Field<Room, List<Surface>> SURFACES = TABLE.add(
                    "surfaces",
                    Kinds.Items.of(SURFACE),
                    "the surfaces of the empty room; people are added by their number")
            .orElse(List.of())
            .laid(Layout.BLOCK);

    private static final Field<Room, Distances> DISTANCES =
            TABLE.add("distances", new Kinds.Nested<>(() -> DISTANCE), "who is how far from whom, in m");

    private RoomFields() {}

    private static Object of(Surface surface, String field) {
        return switch (field) {
            case "material" -> surface.material();
            case "area" -> surface.areaM2();
            default -> throw Table.without(field);
        };
    }

    private static Object of(Distances distances, String field) {
        return switch (field) {
            case "nave" -> distances.naveM();
            case "far" -> distances.farM();
            case "choir" -> distances.choirM();
            case "choir to nave" -> distances.choirToNaveM();
            case "console" -> distances.consoleM();
            default -> throw Table.without(field);
        };
    }

    private static Object of(Room room, String field) {
        return switch (field) {
            case "volume" -> room.volumeM3();
            case "seats" -> room.seats();
            case "reverberation" ->
                room.reverberation() instanceof MeasuredTimes times ? Optional.of(times.octaveS()) : Optional.empty();
            case "surfaces" -> room.reverberation().known().map(Surfaces::list).orElse(List.of());
            case "distances" -> room.distances();
            default -> throw Table.without(field);
        };
    }

    private static List<Field<SortedMap<Integer, Double>, Optional<Double>>> octaves() {
        List<Field<SortedMap<Integer, Double>, Optional<Double>>> octaves = new ArrayList<>();
        Kind<Double> seconds = new Seconds();
        for (int hz : Room.OCTAVES_HZ) {
            octaves.add(TIMES.ifAny(Integer.toString(hz), seconds, "reverberation time in seconds, empty church")
                    .label(hz < 1000 ? hz + " Hz" : hz / 1000 + " kHz"));
        }
        return List.copyOf(octaves);
    }

    private static SortedMap<Integer, Double> times(Values values) throws Refused {
        SortedMap<Integer, Double> octaveS = new TreeMap<>();
        for (int i = 0; i < OCTAVES.size(); i++) {
            Optional<Double> timeS = values.get(OCTAVES.get(i));
            if (timeS.isPresent()) {
                octaveS.put(Room.OCTAVES_HZ.get(i), timeS.get());
            }
        }
        return octaveS;
    }

    private static Room room(Values values) throws Refused {
        double volumeM3 = values.get(VOLUME);
        int seats = values.get(SEATS);
        Room.Reverberation reverberation = reverberation(values);
        return PossibleRoom.require(new Room(volumeM3, seats, reverberation, values.get(DISTANCES)));
    }

    private static Room.Reverberation reverberation(Values values) throws Refused {
        Optional<SortedMap<Integer, Double>> times = values.get(REVERBERATION);
        List<Surface> list = values.get(SURFACES);
        if (times.isEmpty() && !values.has(SURFACES)) {
            throw values.object()
                    .bad("the reverberation is missing", "Add \"reverberation\" with measured times, or \"surfaces\".");
        }
        Optional<Surfaces> surfaces = values.has(SURFACES)
                ? Optional.of(values.found(SURFACES).make(() -> new Surfaces(list)))
                : Optional.empty();
        return times.isPresent()
                ? values.found(REVERBERATION).make(() -> new MeasuredTimes(times.get(), surfaces))
                : surfaces.orElseThrow();
    }

    /** A reverberation time in s, written with one decimal at least. */
    private static final class Seconds extends Kinds.Decimals {
        Seconds() {
            super(0.1, 20);
        }

        @Override
        Object plain(Double value, OrganNames names) {
            return new Kinds.Measured(value);
        }
    }

    /** A material of the table of absorption coefficients; not people, who are counted. */
    private static final class Material extends Kinds.Known {
        Material() {
            super("material", names -> AbsorptionTable.load().surfaces());
        }

        @Override
        String read(Found found, OrganNames names) throws Refused {
            String name = found.text();
            AbsorptionTable table = AbsorptionTable.load();
            return table.material(name).isEmpty()
                    ? require(found, name, names)
                    : found.make(() -> {
                        table.surface(name);
                        return name;
                    });
        }

        @Override
        public List<String> words() {
            return AbsorptionTable.load().surfaces();
        }
    }
}
