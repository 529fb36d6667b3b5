package versewind.schema;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.IncompleteInstrument;
import versewind.organ.Instrument;
import versewind.organ.Pistons;
import versewind.organ.Quoted;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.SwellBox;
import versewind.organ.Tremulant;
import versewind.schema.Field.Layout;

/** The fields of an instrument and of its parts, but for those of a stop and of the room. */
public final class InstrumentFields {
    static final int MOST = 1_000_000;
    static final Kinds.Known DIVISION_REF = new Kinds.Known("division", OrganNames::divisions);

    // divisions

    private static final Table<SwellBox> BOX = Table.line(
            "A swell box.", values -> new SwellBox(values.get(InstrumentFields.BOX_TRIM)), InstrumentFields::of);

    public static final Field<SwellBox, Double> BOX_TRIM = BOX.add(
                    "trim", StopFields.TRIM_DB, "level in dB that the closed box lets out above the usual")
            .orElse(0.0)
            .label("Box dB");

    public static final Table<Division> DIVISION = Table.block(
            "The stops played from one keyboard: a manual or the pedal.",
            "keys",
            InstrumentFields::division,
            InstrumentFields::of);

    public static final Field<Division, String> DIVISION_NAME = DIVISION.add(
            "name",
            new Kinds.Name<>(
                    "a name",
                    "as Great or Hauptwerk, without a colon",
                    name -> name.isBlank() || name.contains(StopFields.SEPARATOR)
                            ? Optional.empty()
                            : Optional.of(name),
                    name -> name),
            "what it is called");

    private static final Field<Division, Boolean> PEDAL =
            DIVISION.add("pedal", Kinds.FLAG, "that it is played with the feet").orElse(false);

    private static final Field<Division, Optional<Integer>> MANUAL = DIVISION.ifAny(
            "manual",
            Kinds.whole(1, Division.MOST_MANUALS),
            "its keyboard, 1 for the lowest manual; divisions may share one");

    public static final Field<Division, Integer> KEYS = DIVISION.add(
                    "keys", Kinds.whole(12, 73), "keys from the bottom C: a manual 24 to 73, a pedal 12 to 37")
            .asked("number of keys from the bottom C; a manual has 24 or more, a pedal 37 or fewer");

    private static final Field<Division, Optional<SwellBox>> SWELL_BOX =
            DIVISION.ifAny("box", new Kinds.Nested<>(() -> BOX), "the swell box it stands in");

    private static final Field<Division, List<Stop>> STOPS = DIVISION.add(
                    "stops",
                    Kinds.Items.of(StopFields.TABLE),
                    "its stops, in the order of their knobs; an organ has 300 at most")
            .laid(Layout.BLOCK);

    // couplers, tremulants, pistons

    public static final Table<Coupler> COUPLER = Table.line(
            "Keys of one division's keyboard also play another division.",
            values -> new Coupler(
                    values.get(InstrumentFields.COUPLER_NAME),
                    values.get(InstrumentFields.SOURCE),
                    values.get(InstrumentFields.PLAYED_FROM),
                    values.get(InstrumentFields.PITCH)),
            InstrumentFields::of);

    public static final Field<Coupler, String> COUPLER_NAME =
            COUPLER.add("name", Kinds.NAME, "what stands on the knob");

    public static final Field<Coupler, String> SOURCE = COUPLER.add(
                    "source", DIVISION_REF, "the division whose stops sound")
            .label("Sounds");

    public static final Field<Coupler, String> PLAYED_FROM = COUPLER.add(
                    "keyboard", DIVISION_REF, "the division from whose keys it is played")
            .label("Played on");

    public static final Field<Coupler, Coupler.Kind> PITCH = COUPLER.add(
                    "kind", Kinds.choice(Coupler.Kind.values()), "its pitch")
            .orElse(Coupler.Kind.UNISON)
            .label("Pitch");

    public static final Table<Tremulant> TREMULANT = Table.line(
            "A tremulant.",
            values -> new Tremulant(values.get(InstrumentFields.TREMULANT_NAME), values.get(InstrumentFields.AFFECTED)),
            InstrumentFields::of);

    public static final Field<Tremulant, String> TREMULANT_NAME =
            TREMULANT.add("name", Kinds.NAME, "what stands on the knob");

    public static final Field<Tremulant, String> AFFECTED = TREMULANT
            .add("division", DIVISION_REF, "the division the tremulant acts on")
            .label("Affects");

    public static final Table<Pistons> PISTONS = Table.line(
            "The pistons.",
            values -> new Pistons(
                    values.get(InstrumentFields.GENERALS),
                    values.get(InstrumentFields.DIVISIONALS),
                    values.get(InstrumentFields.MEMORY_LEVELS),
                    values.get(InstrumentFields.SETS_COUPLERS)),
            InstrumentFields::of);

    public static final Field<Pistons, Integer> GENERALS = PISTONS.add(
                    "generals", Kinds.whole(0, MOST), "number of general pistons")
            .orElse(0)
            .label("General");

    private static final Field<Pistons, Map<String, Integer>> DIVISIONALS = PISTONS.add(
                    "divisionals", new ByDivisionKind(), "number of divisional pistons by the division's name")
            .orElse(Map.of());

    public static final Field<Pistons, Integer> MEMORY_LEVELS = PISTONS.add(
                    "memory levels", Kinds.whole(0, MOST), "sets that the pistons hold")
            .blank(0)
            .label("Levels");

    public static final Field<Pistons, Boolean> SETS_COUPLERS = PISTONS.add(
                    "divisionals set couplers",
                    Kinds.FLAG,
                    "whether a divisional sets the couplers of its keyboard too")
            .orElse(false)
            .label("Couplers");

    // the instrument

    static final Table<Instrument> TABLE =
            Table.block("An organ in its room.", "divisions", InstrumentFields::instrument, InstrumentFields::of);

    public static final Field<Instrument, String> NAME = TABLE.add("name", Kinds.NAME, "what the organ is called");

    public static final Field<Instrument, String> PLACE =
            TABLE.add("place", Kinds.TEXT, "where it stands").blank("");

    public static final Field<Instrument, Action> ACTION = TABLE.add(
                    "action",
                    Kinds.choice(Action.values()),
                    "mechanical, if a coupler moves the coupled keys and what is coupled to them")
            .asked("tracker, if couplers act through each other");

    public static final Field<Instrument, Double> TRIM = TABLE.add(
                    "trim", StopFields.TRIM_DB, "level of the whole organ above the estimate, in dB")
            .orElse(0.0);

    private static final Field<Instrument, Room> ROOM =
            TABLE.add("room", new Kinds.Nested<>(() -> RoomFields.TABLE), "the room the organ stands in");

    private static final Field<Instrument, List<Division>> DIVISIONS = TABLE.add(
                    "divisions",
                    Kinds.Items.of(DIVISION),
                    "the divisions, at least one of them a manual and at most one the pedal, in the order of the"
                            + " screen")
            .laid(Layout.BLOCK);

    private static final Field<Instrument, List<Coupler>> COUPLERS = TABLE.add(
                    "couplers", Kinds.Items.of(COUPLER), "the couplers, in the order of their knobs")
            .orElse(List.of())
            .laid(Layout.BLOCK);

    private static final Field<Instrument, List<Tremulant>> TREMULANTS = TABLE.add(
                    "tremulants", Kinds.Items.of(TREMULANT), "the tremulants, in the order of their knobs")
            .orElse(List.of())
            .laid(Layout.BLOCK);

    private static final Field<Instrument, Pistons> PISTONS_FIELD = TABLE.add(
                    "pistons", new Kinds.Nested<>(() -> PISTONS), "the pistons")
            .orElse(Pistons.NONE);

    private InstrumentFields() {}

    private static Object of(SwellBox box, String field) {
        return switch (field) {
            case "trim" -> box.trimDb();
            default -> throw Table.without(field);
        };
    }

    private static Object of(Division division, String field) {
        return switch (field) {
            case "name" -> division.name();
            case "pedal" -> division.isPedal();
            case "manual" -> VerseFields.boxed(division.manual());
            case "keys" -> division.keys();
            case "box" -> division.box();
            case "stops" -> division.stops();
            default -> throw Table.without(field);
        };
    }

    private static Object of(Coupler coupler, String field) {
        return switch (field) {
            case "name" -> coupler.name();
            case "source" -> coupler.source();
            case "keyboard" -> coupler.keyboard();
            case "kind" -> coupler.kind();
            default -> throw Table.without(field);
        };
    }

    private static Object of(Tremulant tremulant, String field) {
        return switch (field) {
            case "name" -> tremulant.name();
            case "division" -> tremulant.division();
            default -> throw Table.without(field);
        };
    }

    private static Object of(Pistons pistons, String field) {
        return switch (field) {
            case "generals" -> pistons.generals();
            case "divisionals" -> pistons.divisionals();
            case "memory levels" -> pistons.memoryLevels();
            case "divisionals set couplers" -> pistons.setsCouplers();
            default -> throw Table.without(field);
        };
    }

    static Object of(Instrument organ, String field) {
        return switch (field) {
            case "name" -> organ.name();
            case "place" -> organ.place();
            case "action" -> organ.action();
            case "trim" -> organ.trimDb();
            case "room" -> organ.room();
            case "divisions" -> organ.divisions();
            case "couplers" -> organ.couplers();
            case "tremulants" -> organ.tremulants();
            case "pistons" -> organ.pistons();
            default -> throw Table.without(field);
        };
    }

    private static Division division(Values values) throws Refused {
        boolean isPedal = values.has(PEDAL);
        if (values.has(MANUAL) == isPedal) {
            throw values.found(PEDAL)
                    .bad(
                            "a division has either a manual or is the pedal",
                            "Write \"manual\" with its number, or \"pedal\": true.");
        }
        if (isPedal && !values.get(PEDAL)) {
            throw values.found(PEDAL).bad("this can only be true", "Write \"manual\" with its number instead.");
        }
        return new Division(
                values.get(DIVISION_NAME),
                VerseFields.unboxed(values.get(MANUAL)),
                values.get(KEYS),
                values.get(SWELL_BOX),
                values.get(STOPS));
    }

    /** The instrument; what does not fit together is refused at the part that is at fault. */
    static Instrument instrument(Values values) throws Refused {
        String name = values.get(NAME);
        String place = values.get(PLACE);
        Action action = values.get(ACTION);
        double trimDb = values.get(TRIM);
        Room room = values.get(ROOM);
        List<Division> divisions = values.get(DIVISIONS);
        OrganNames names =
                OrganNames.ofDivisions(divisions.stream().map(Division::name).toList());
        try {
            return new Instrument(
                    name,
                    place,
                    action,
                    trimDb,
                    divisions,
                    values.get(COUPLERS, names),
                    values.get(TREMULANTS, names),
                    values.get(PISTONS_FIELD, names),
                    room);
        } catch (IncompleteInstrument fault) {
            throw at(fault, values);
        } catch (Refused wrong) {
            throw faultOf(values, divisions, room).orElse(wrong);
        }
    }

    /** A fault of the divisions themselves, which comes before one of the couplers that name them. */
    private static Optional<Refused> faultOf(Values values, List<Division> divisions, Room room) throws Refused {
        try {
            new Instrument("organ", "", Action.ELECTRIC, 0, divisions, List.of(), List.of(), Pistons.NONE, room);
            return Optional.empty();
        } catch (IncompleteInstrument fault) {
            return Optional.of(at(fault, values));
        }
    }

    private static Refused at(IncompleteInstrument fault, Values values) throws Refused {
        return place(fault, values).bad(Quoted.plain(fault.getMessage()), fault.remedy());
    }

    private static Found place(IncompleteInstrument fault, Values values) throws Refused {
        return switch (fault.part()) {
            case INSTRUMENT -> values.found(DIVISIONS);
            case DIVISION -> values.found(DIVISIONS).items("").get(fault.index());
            case STOP -> stop(values.found(DIVISIONS).items(""), fault.index());
            case COUPLER -> values.found(COUPLERS).items("").get(fault.index());
            case TREMULANT -> values.found(TREMULANTS).items("").get(fault.index());
            case PISTONS -> values.found(PISTONS_FIELD);
        };
    }

    private static Found stop(List<Found> divisions, int index) throws Refused {
        List<Found> stops = new ArrayList<>();
        for (Found division : divisions) {
            stops.addAll(division.near(STOPS.name()).items(""));
        }
        return stops.get(index);
    }

    /** Numbers of divisional pistons by division. */
    private static final class ByDivisionKind extends Kind<Map<String, Integer>> {
        ByDivisionKind() {
            super("Enter ", "a whole number from 1");
        }

        @Override
        Map<String, Integer> read(Found found, OrganNames names) throws Refused {
            Map<String, Integer> counts = new LinkedHashMap<>();
            for (Map.Entry<String, Found> each : found.entries("").entrySet()) {
                InstrumentFields.DIVISION_REF.require(each.getValue(), each.getKey(), names);
                counts.put(each.getKey(), each.getValue().whole(1, InstrumentFields.MOST, remedy()));
            }
            return counts;
        }

        @Override
        Object plain(Map<String, Integer> counts, OrganNames names) {
            Map<String, Integer> ordered = new LinkedHashMap<>();
            names.divisions().stream()
                    .filter(counts::containsKey)
                    .forEach(division -> ordered.put(division, counts.get(division)));
            return ordered;
        }
    }
}
