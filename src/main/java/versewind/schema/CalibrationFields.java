package versewind.schema;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.calibration.Calibration;
import versewind.calibration.Calibration.Kept;
import versewind.calibration.MeterReading;
import versewind.organ.BoxPosition;
import versewind.organ.Instrument;
import versewind.organ.Quoted;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
import versewind.organ.StopName;
import versewind.organ.Trims;
import versewind.plan.Singing;
import versewind.schema.Field.Layout;
import versewind.sound.Offsets;
import versewind.sound.Seat;

/** The fields of a calibration: the readings of a sound-level meter that the trims of an instrument rest on. */
public final class CalibrationFields {
    private static final double WIDEST_OFFSET_DB = 40;
    private static final int MOST_SINGERS = 50_000;
    private static final Kind<Double> OFFSET_DB = Kinds.decimal(-WIDEST_OFFSET_DB, WIDEST_OFFSET_DB);
    private static final Kind<Double> EXPECTED_DBA = Kinds.decimal(0, MeterReading.HIGHEST_DBA + WIDEST_OFFSET_DB);

    // the trims before any reading

    private static final Table<Trims> TRIMS = Table.block(
            "The trims before any reading; those of 0 are left out.",
            "",
            values -> {
                Instrument organ = values.names().organ();
                return new Trims(
                        values.get(CalibrationFields.ORGAN_TRIM),
                        orZeros(
                                values.get(CalibrationFields.STOP_TRIMS),
                                organ.stops().size()),
                        orZeros(
                                values.get(CalibrationFields.BOX_TRIMS),
                                organ.divisions().size()));
            },
            CalibrationFields::of);

    private static final Field<Trims, Double> ORGAN_TRIM =
            TRIMS.add("trim", StopFields.TRIM_DB, "of the whole organ, in dB").orElse(0.0);

    private static final Field<Trims, List<Double>> STOP_TRIMS = TRIMS.add(
                    "stops", new StopTrims(), "by division and stop, in dB")
            .orElse(List.of())
            .laid(Layout.BLOCK);

    private static final Field<Trims, List<Double>> BOX_TRIMS =
            TRIMS.add("boxes", new BoxTrims(), "by division, in dB").orElse(List.of());

    // a reading

    public static final Table<Kept> READING = Table.block(
            "A level that was read, and what was to be expected of it before any reading and since, in dB(A).",
            "dBA",
            CalibrationFields::kept,
            CalibrationFields::of);

    public static final Field<Kept, String> DATE = READING.text("date", "the day, as 2026-10-04");

    public static final Field<Kept, Seat> SEAT = READING.add(
                    "seat", Kinds.choice(Seat.values()), "where the meter stood")
            .blank(Seat.NAVE)
            .laid(Layout.BESIDE);

    public static final Field<Kept, Integer> PEOPLE = READING.add(
                    "people", Kinds.whole(0, MOST_SINGERS), "people in the room")
            .orElse(0)
            .laid(Layout.BESIDE);

    public static final Field<Kept, Optional<Integer>> SINGERS = READING.ifAny(
                    "singers", Kinds.whole(2, MOST_SINGERS), "how many of them sang")
            .laid(Layout.BESIDE);

    public static final Field<Kept, Optional<Singing>> SINGING = READING.ifAny(
                    "singing", VerseFields.SINGING.kind(), "how strongly they sang")
            .laid(Layout.BESIDE);

    private static final PlayedFields<Kept> PLAYED = new PlayedFields<>(READING);

    public static final Field<Kept, Double> DBA =
            READING.add("dBA", Kinds.decimal(MeterReading.LOWEST_DBA, MeterReading.HIGHEST_DBA), "the level in dB(A)");

    private static final Field<Kept, Double> BEFORE_DBA = READING.add(
                    "before", EXPECTED_DBA, "the level expected before any reading, in dB(A)")
            .laid(Layout.BESIDE);

    private static final Field<Kept, Double> AFTER_DBA = READING.add(
                    "after", EXPECTED_DBA, "the level expected since, in dB(A)")
            .laid(Layout.BESIDE);

    // a reading as people type it

    /** A reading in a row of a spreadsheet: what is drawn stands in one cell, as it is typed anywhere. */
    public static final Table<MeterReading> TYPED = Table.block(
            "A level that was read, as it is typed.", "", CalibrationFields::typed, CalibrationFields::unwritten);

    private static final Field<MeterReading, String> DAY = TYPED.add(
                    "date",
                    new Kinds.Parsed<>("a date", "as 2026-10-04", CalibrationFields::day, day -> day),
                    DATE.about())
            .blank("");

    private static final Field<MeterReading, Registration> DRAW = TYPED.add("draw", new Drawn(), "what was drawn");

    private static final Field<MeterReading, List<BoxPosition>> BOX = TYPED.add(
                    "box", PlayedFields.POSITIONS, "the swell boxes that were not open")
            .blank(List.of());

    private static final PlayedFields.Hands<MeterReading> HANDS = PlayedFields.Hands.addTo(TYPED);

    static {
        List.of(SEAT, PEOPLE, SINGERS, SINGING, DBA)
                .forEach(field -> TYPED.add(field.from(CalibrationFields::unwritten)));
    }

    // the calibration

    static final Table<Calibration> TABLE = Table.block(
            "What the trims rest on, where they were found by readings of a sound-level meter.",
            "readings",
            CalibrationFields::calibration,
            CalibrationFields::of);

    private static final Field<Calibration, Double> SINGERS_OFFSET = TABLE.add(
                    "singers", OFFSET_DB, "level of the singing above the estimate, in dB")
            .orElse(0.0);

    private static final Field<Calibration, Double> ROOM_OFFSET = TABLE.add(
                    "room", OFFSET_DB, "reverberant level of the room above the estimate, in dB")
            .orElse(0.0);

    private static final Field<Calibration, Trims> BEFORE =
            TABLE.add("before", new Kinds.Nested<>(() -> TRIMS), "the trims before any reading");

    private static final Field<Calibration, List<Kept>> READINGS = TABLE.add(
                    "readings", Kinds.Items.of(READING), "the readings, in the order they were taken")
            .laid(Layout.BLOCK);

    private CalibrationFields() {}

    private static Object of(Trims trims, String field) {
        return switch (field) {
            case "trim" -> trims.organDb();
            case "stops" -> trims.stopsDb();
            case "boxes" -> trims.boxesDb();
            default -> throw Table.without(field);
        };
    }

    private static Object of(Kept kept, String field) {
        return switch (field) {
            case "date" -> kept.reading().date();
            case "seat" -> kept.reading().seat();
            case "people" -> kept.reading().present();
            case "singers" -> kept.reading().sung().map(MeterReading.Sung::singers);
            case "singing" -> kept.reading().sung().map(MeterReading.Sung::strength);
            case "dBA" -> kept.reading().dba();
            case "before" -> kept.beforeDba();
            case "after" -> kept.afterDba();
            default -> PlayedFields.of(kept.reading().hands(), kept.reading().registration(), field);
        };
    }

    private static Object of(Calibration calibration, String field) {
        return switch (field) {
            case "singers" -> calibration.offsets().singersDb();
            case "room" -> calibration.offsets().roomDb();
            case "before" -> calibration.before().orElseThrow();
            case "readings" -> calibration.kept();
            default -> throw Table.without(field);
        };
    }

    private static List<Double> orZeros(List<Double> trimsDb, int size) {
        return trimsDb.isEmpty() ? Collections.nCopies(size, 0.0) : trimsDb;
    }

    private static Calibration calibration(Values values) throws Refused {
        List<Kept> kept = values.get(READINGS);
        if (kept.isEmpty()) {
            throw values.found(READINGS)
                    .bad("a calibration needs at least one reading", "Delete the whole field \"calibration\".");
        }
        return new Calibration(
                Optional.of(values.get(BEFORE)),
                new Offsets(values.get(SINGERS_OFFSET), values.get(ROOM_OFFSET)),
                kept);
    }

    private static Kept kept(Values values) throws Refused {
        Singing strength = values.get(SINGING).orElse(Singing.ORDINARY);
        MeterReading reading = new MeterReading(
                values.get(DATE),
                PLAYED.registration(values),
                PLAYED.played(values),
                values.get(SEAT),
                values.get(PEOPLE),
                values.get(SINGERS).map(singers -> new MeterReading.Sung(singers, strength)),
                values.get(DBA));
        return new Kept(reading, values.get(BEFORE_DBA), values.get(AFTER_DBA));
    }

    private static MeterReading typed(Values values) throws Refused {
        Registration drawn = values.get(DRAW);
        List<BoxPosition> typed = values.get(BOX);
        List<BoxPosition> boxes = new ArrayList<>(drawn.boxes());
        for (int i = 0; i < typed.size(); i++) {
            if (typed.get(i) != BoxPosition.OPEN) {
                boxes.set(i, typed.get(i));
            }
        }
        Optional<Integer> singers = values.get(SINGERS);
        Singing strength = values.get(SINGING).orElse(Singing.ORDINARY);
        return new MeterReading(
                values.get(DAY),
                new Registration(drawn.stops(), drawn.couplers(), drawn.tremulants(), boxes),
                HANDS.played(values),
                values.get(SEAT),
                values.has(PEOPLE) ? values.get(PEOPLE) : singers.orElse(0),
                singers.map(many -> new MeterReading.Sung(many, strength)),
                values.get(DBA));
    }

    private static Object unwritten(MeterReading reading, String field) {
        throw Table.without(field);
    }

    private static Optional<String> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed).toString());
        } catch (DateTimeParseException wrong) {
            return Optional.empty();
        }
    }

    /** A whole registration in the notation in which registrations are typed; blank for none. */
    private static final class Drawn extends Kind<Registration> {
        Drawn() {
            super("Write ", "as \"Great: Open Diapason 8, Principal 4; couplers: Great to Pedal\"");
        }

        @Override
        Registration read(Found found, OrganNames names) throws Refused {
            return names.typed(found, RegistrationText::parse);
        }

        @Override
        Object plain(Registration drawn, OrganNames names) {
            return names.text().format(drawn);
        }

        @Override
        boolean takesBlank() {
            return true;
        }
    }

    /** A trim in dB for every stop of the organ, those that are not 0 by division and stop. */
    private static final class StopTrims extends Kind<List<Double>> {
        StopTrims() {
            super("", "");
        }

        @Override
        List<Double> read(Found found, OrganNames names) throws Refused {
            Map<StopName, Double> trims = new LinkedHashMap<>();
            for (Map.Entry<String, Found> division : found.entries("").entrySet()) {
                for (Map.Entry<String, Found> stop :
                        division.getValue().entries("").entrySet()) {
                    StopName name = new StopName(division.getKey(), stop.getKey());
                    if (names.organ().stop(name).isEmpty()) {
                        throw stop.getValue()
                                .bad(
                                        "the organ has no stop " + Quoted.text(name.toString()),
                                        "Write its name as above.");
                    }
                    trims.put(name, StopFields.TRIM_DB.read(stop.getValue(), names));
                }
            }
            return names.organ().stops().stream()
                    .map(stop -> trims.getOrDefault(stop.name(), 0.0))
                    .toList();
        }

        @Override
        Object plain(List<Double> trims, OrganNames names) {
            Map<String, Map<String, Double>> byDivision = new LinkedHashMap<>();
            for (int i = 0; i < trims.size(); i++) {
                StopName name = names.organ().stops().get(i).name();
                if (trims.get(i) != 0) {
                    byDivision
                            .computeIfAbsent(name.division(), division -> new LinkedHashMap<>())
                            .put(name.label(), trims.get(i));
                }
            }
            return byDivision;
        }
    }

    /** A trim in dB for the box of every division, those that are not 0 by division. */
    private static final class BoxTrims extends Kind<List<Double>> {
        BoxTrims() {
            super("", "");
        }

        @Override
        List<Double> read(Found found, OrganNames names) throws Refused {
            Map<String, Double> trims = new LinkedHashMap<>();
            for (Map.Entry<String, Found> box : found.entries("").entrySet()) {
                trims.put(box.getKey(), StopFields.TRIM_DB.read(box.getValue(), names));
            }
            return names.divisions().stream()
                    .map(name -> trims.getOrDefault(name, 0.0))
                    .toList();
        }

        @Override
        Object plain(List<Double> trims, OrganNames names) {
            Map<String, Double> byDivision = new LinkedHashMap<>();
            for (int i = 0; i < trims.size(); i++) {
                if (trims.get(i) != 0) {
                    byDivision.put(names.divisions().get(i), trims.get(i));
                }
            }
            return byDivision;
        }
    }
}
