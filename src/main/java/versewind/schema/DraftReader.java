package versewind.schema;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import versewind.organ.Completeness;
import versewind.organ.Completeness.Fault;
import versewind.organ.Completeness.Named;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.organ.Pistons;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.organ.Tremulant;
import versewind.sound.PossibleRoom;

/** Reads a draft from the first row to the last: every problem it has and, if it has none, its instrument. */
final class DraftReader {
    private final OrganDraft draft;
    private final OrganNames names;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Named<String, DivisionFields.Row>> divisions = new ArrayList<>();
    private final List<Named<StopName, Stop>> stops = new ArrayList<>();
    private final List<Named<String, Coupler>> couplers = new ArrayList<>();
    private final List<Named<String, Tremulant>> tremulants = new ArrayList<>();
    private final List<Optional<Room.Surface>> surfaces = new ArrayList<>();

    DraftReader(OrganDraft draft) {
        this.draft = draft;
        this.names = OrganNames.ofDivisions(draft.divisions());
    }

    /** What is wrong, from the first row to the last. */
    List<Problem> problems() {
        problems.sort(Comparator.comparingInt(Problem::line));
        return List.copyOf(problems);
    }

    /** The instrument; empty where there is a problem. */
    Optional<Instrument> instrument() {
        for (int at = 0; at < draft.lines().size(); at++) {
            read(at);
        }
        List<Named<String, Division>> keyboards = divisions.stream()
                .map(each -> new Named<>(each.name(), each.part().map(DivisionFields.Row::division)))
                .toList();
        Completeness.faults(new Completeness.Parts(keyboards, stops, couplers, tremulants, Set.of()))
                .forEach(this::add);
        int top = draft.only(RowKind.ORGAN);
        Optional<Values> organ = values(top);
        Optional<Pistons> pistons = pistons();
        Optional<Room> room = room();
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        return made(
                top,
                organ,
                values -> new Instrument(
                        values.get(InstrumentFields.NAME),
                        values.get(InstrumentFields.PLACE),
                        values.get(InstrumentFields.ACTION),
                        values.get(InstrumentFields.TRIM),
                        keyboards.stream().map(this::withStops).toList(),
                        parts(couplers),
                        parts(tremulants),
                        pistons.orElseThrow(),
                        room.orElseThrow()));
    }

    private Division withStops(Named<String, Division> division) {
        return division.part()
                .orElseThrow()
                .withStops(parts(stops.stream()
                        .filter(stop -> stop.name().division().equals(division.name()))
                        .toList()));
    }

    private static <T> List<T> parts(List<? extends Named<?, T>> named) {
        return named.stream().map(each -> each.part().orElseThrow()).toList();
    }

    private void read(int at) {
        DraftLine line = draft.lines().get(at);
        switch (line.part()) {
            case DIVISION -> divisions.add(new Named<>(line.name(), made(at, DivisionFields.TABLE::make)));
            case STOP -> stops.add(new Named<>(draft.stopName(at), made(at, values -> stop(at, values))));
            case COUPLER -> couplers.add(new Named<>(line.name(), made(at, InstrumentFields.COUPLER::make)));
            case TREMULANT -> tremulants.add(new Named<>(line.name(), made(at, InstrumentFields.TREMULANT::make)));
            case SURFACE -> surfaces.add(made(at, RoomFields.SURFACE::make));
            case ORGAN, PISTONS, ROOM, TIMES, DISTANCES -> {}
        }
    }

    /** The values of a row; what cannot be read becomes a problem, a field at a time. */
    private Optional<Values> values(int at) {
        DraftLine line = draft.lines().get(at);
        Found row = Found.root(0, Map.of());
        int before = problems.size();
        for (Field<?, ?> field : line.part().fields()) {
            String text = line.at(field);
            try {
                field.parse(text, names);
                field.shaped(text).ifPresent(plain -> row.addTyped(field.name(), field.label(), plain));
            } catch (Refused wrong) {
                add(at, field.label() + ": " + wrong.sentence());
            }
        }
        return problems.size() == before ? Optional.of(new Values(row, names)) : Optional.empty();
    }

    /** What a row describes; an objection against the whole of it becomes a problem. */
    private <T> Optional<T> made(int at, Table.Maker<T> maker) {
        return made(at, values(at), maker);
    }

    private <T> Optional<T> made(int at, Optional<Values> values, Table.Maker<T> maker) {
        try {
            return values.isEmpty() ? Optional.empty() : Optional.of(maker.make(values.get()));
        } catch (IllegalArgumentException objection) {
            String problem = objection.getMessage();
            add(at, problem.substring(0, 1).toUpperCase(Locale.ROOT) + problem.substring(1) + ".");
        } catch (Refused wrong) {
            add(at, wrong.sentence());
        }
        return Optional.empty();
    }

    private void add(int at, String sentence) {
        problems.add(new Problem(at, sentence));
    }

    private void add(Fault fault) {
        RowKind part =
                switch (fault.part()) {
                    case INSTRUMENT -> RowKind.ORGAN;
                    case DIVISION -> RowKind.DIVISION;
                    case STOP -> RowKind.STOP;
                    case COUPLER -> RowKind.COUPLER;
                    case TREMULANT -> RowKind.TREMULANT;
                    case PISTONS -> RowKind.PISTONS;
                };
        add(draft.rows(part).skip(fault.index()).findFirst().orElseThrow(), fault.sentence());
    }

    private Stop stop(int at, Values values) throws Refused {
        Family family = values.get(StopFields.FAMILY);
        if (family.isCompound() && !values.has(StopFields.RANKS)) {
            throw new Refused(0, "", "a " + family.word() + " needs its number of ranks", "");
        }
        Optional<DraftLine> division = draft.divisionOf(at);
        boolean isBoxed =
                division.flatMap(each -> each.read(DivisionFields.IS_BOXED)).orElse(true);
        if (values.has(StopFields.OUTSIDE) && !values.get(StopFields.OUTSIDE) && !isBoxed) {
            throw new Refused(0, "", division.orElseThrow().name() + " has no swell box for it to stand in", "");
        }
        Stop stop = StopFields.TABLE.make(values);
        if (stop.isTrimmedInVain()) {
            throw new Refused(
                    0,
                    "",
                    stop.label() + " has no pipes of its own to trim",
                    "Trim " + stop.borrowed().get() + ".");
        }
        return stop;
    }

    private Optional<Pistons> pistons() {
        Map<String, Integer> divisionals = new LinkedHashMap<>();
        for (Named<String, DivisionFields.Row> division : divisions) {
            int count = division.part().map(DivisionFields.Row::divisionals).orElse(0);
            if (count > 0) {
                divisionals.put(division.name(), count);
            }
        }
        int at = draft.only(RowKind.PISTONS);
        Optional<Values> values = values(at);
        boolean isKnown =
                divisions.stream().allMatch(division -> division.part().isPresent());
        return isKnown
                ? made(
                        at,
                        values,
                        each -> new Pistons(
                                each.get(InstrumentFields.GENERALS),
                                divisionals,
                                each.get(InstrumentFields.MEMORY_LEVELS),
                                each.get(InstrumentFields.SETS_COUPLERS)))
                : Optional.empty();
    }

    private Optional<Room> room() {
        int at = draft.only(RowKind.ROOM);
        int timesAt = draft.only(RowKind.TIMES);
        Optional<Values> size = values(at);
        Optional<SortedMap<Integer, Double>> times = made(timesAt, RoomFields.TIMES::make);
        Optional<Room.Distances> distances = made(draft.only(RowKind.DISTANCES), RoomFields.DISTANCE::make);
        if (surfaces.isEmpty() && times.filter(Map::isEmpty).isPresent()) {
            add(timesAt, "The reverberation is missing. Enter a time for one octave at least, or add surfaces.");
            return Optional.empty();
        }
        boolean isKnown =
                times.isPresent() && distances.isPresent() && surfaces.stream().allMatch(Optional::isPresent);
        return isKnown
                ? made(
                        at,
                        size,
                        each -> PossibleRoom.require(new Room(
                                each.get(RoomFields.VOLUME),
                                each.get(RoomFields.SEATS),
                                reverberation(times.get()),
                                distances.get())))
                : Optional.empty();
    }

    private Room.Reverberation reverberation(SortedMap<Integer, Double> times) {
        List<Room.Surface> list = surfaces.stream().flatMap(Optional::stream).toList();
        Optional<Room.Surfaces> known = list.isEmpty() ? Optional.empty() : Optional.of(new Room.Surfaces(list));
        return times.isEmpty() ? known.orElseThrow() : new Room.MeasuredTimes(times, known);
    }
}
