package versewind.workshop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import versewind.acoustics.AbsorptionTable;
import versewind.organ.Action;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Pistons;
import versewind.organ.Room;
import versewind.organ.Stop;
import versewind.organ.SwellBox;
import versewind.organ.Tremulant;
import versewind.sound.PossibleRoom;

/** Looks a draft through from the first line to the last: every problem it has and, if it has none, its instrument. */
final class DraftValidator {
    private static final int MOST = 1_000_000;
    private static final OptionalDouble ZERO = OptionalDouble.of(0);
    private static final OptionalInt NONE = OptionalInt.of(0);

    private final List<DraftLine> lines;
    private final List<Problem> problems = new ArrayList<>();
    private final StopLines stopLines = new StopLines();
    private final Set<String> names = new LinkedHashSet<>();
    private final List<Division> divisions = new ArrayList<>();
    private final Map<String, Integer> divisionals = new LinkedHashMap<>();

    DraftValidator(List<DraftLine> lines) {
        this.lines = lines;
    }

    List<Problem> problems() {
        problems.sort(Comparator.comparingInt(Problem::line));
        return List.copyOf(problems);
    }

    /** The instrument; empty where there is a problem. */
    Optional<Instrument> instrument() {
        divisions();
        stopLines.checkBorrowing();
        Typed organ = only(RowKind.ORGAN);
        String name = organ.name();
        Optional<Action> action = organ.choice(DraftField.ACTION, List.of(Action.values()), Action::word);
        OptionalDouble trim = organ.number(DraftField.TRIM, ZERO);
        List<Coupler> couplers = named(RowKind.COUPLER, DraftValidator::coupler);
        List<Tremulant> tremulants = named(RowKind.TREMULANT, DraftValidator::tremulant);
        Optional<Pistons> pistons = pistons();
        Optional<Room> room = room();
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        return organ.make(
                DraftField.NAME,
                () -> new Instrument(
                        name,
                        organ.text(DraftField.PLACE),
                        action.orElseThrow(),
                        trim.orElseThrow(),
                        divisions,
                        couplers,
                        tremulants,
                        pistons.orElseThrow(),
                        room.orElseThrow()));
    }

    private Typed at(int line) {
        return new Typed(line, lines.get(line), problems);
    }

    private Typed only(RowKind part) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).part() == part) {
                return at(i);
            }
        }
        throw new IllegalStateException("a draft has a line for " + part.word());
    }

    private void divisions() {
        boolean pedal = false;
        boolean manual = false;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).part() != RowKind.DIVISION) {
                continue;
            }
            Typed typed = at(i);
            boolean isPedal = typed.line().isPedal();
            if (pedal && isPedal) {
                typed.wrong(DraftField.MANUAL, "There is a pedal already: an organ has one.");
            }
            pedal |= isPedal;
            manual |= !isPedal;
            division(typed, i, isPedal);
        }
        if (!manual) {
            only(RowKind.ORGAN).wrong(DraftField.NAME, "An organ has one manual at least: put one in with I.");
        }
    }

    private void division(Typed typed, int at, boolean isPedal) {
        String name = typed.name();
        if (name.contains(": ")) {
            typed.wrong(DraftField.NAME, "A division's name has no colon.");
        }
        if (!names.add(name)) {
            typed.wrong(DraftField.NAME, "Two divisions are called " + name + ": give one another name.");
        }
        OptionalInt manual = isPedal
                ? OptionalInt.empty()
                : typed.whole(DraftField.MANUAL, 1, Division.MOST_MANUALS, OptionalInt.empty());
        OptionalInt keys = typed.whole(DraftField.KEYS, 0, MOST, OptionalInt.empty());
        boolean enclosed = StopLines.isYes(typed, DraftField.BOX);
        OptionalDouble boxTrim = typed.number(DraftField.BOX_TRIM, ZERO);
        OptionalInt pistons = typed.whole(DraftField.DIVISIONALS, 0, MOST, NONE);
        if (pistons.orElse(0) > 0) {
            divisionals.put(name, pistons.getAsInt());
        }
        List<Stop> stops = new ArrayList<>();
        for (int i = at + 1; i < lines.size() && lines.get(i).part() == RowKind.STOP; i++) {
            stopLines.stop(at(i), name, enclosed).ifPresent(stops::add);
        }
        boolean readable = !name.isBlank() && (isPedal || manual.isPresent()) && keys.isPresent();
        if (readable && boxTrim.isPresent()) {
            typed.make(
                            DraftField.KEYS,
                            () -> new Division(
                                    name,
                                    manual,
                                    keys.getAsInt(),
                                    enclosed ? Optional.of(new SwellBox(boxTrim.getAsDouble())) : Optional.empty(),
                                    stops))
                    .ifPresent(divisions::add);
        }
    }

    private <T> List<T> named(RowKind part, BiFunction<DraftValidator, Typed, Optional<T>> reader) {
        List<T> made = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).part() == part) {
                Typed typed = at(i);
                if (!typed.name().isBlank() && !taken.add(typed.text(DraftField.NAME))) {
                    typed.wrong(
                            DraftField.NAME,
                            "Two are called " + typed.text(DraftField.NAME) + ": give one of them another name.");
                }
                reader.apply(this, typed).ifPresent(made::add);
            }
        }
        return made;
    }

    private boolean leads(Typed typed, DraftField slot) {
        if (names.contains(typed.text(slot))) {
            return true;
        }
        typed.wrong(
                slot,
                typed.text(slot).isBlank()
                        ? slot.word() + ": the division is missing."
                        : "It leads nowhere: there is no division \"" + typed.text(slot) + "\".");
        return false;
    }

    private Optional<Coupler> coupler(Typed typed) {
        boolean leads = leads(typed, DraftField.SOUNDS);
        leads &= leads(typed, DraftField.KEYBOARD);
        Optional<Coupler.Kind> kind = typed.text(DraftField.KIND).isBlank()
                ? Optional.of(Coupler.Kind.UNISON)
                : typed.choice(DraftField.KIND, List.of(Coupler.Kind.values()), Coupler.Kind::word);
        if (!leads || kind.isEmpty() || typed.text(DraftField.NAME).isBlank()) {
            return Optional.empty();
        }
        return typed.make(
                DraftField.KIND,
                () -> new Coupler(
                        typed.text(DraftField.NAME),
                        typed.text(DraftField.SOUNDS),
                        typed.text(DraftField.KEYBOARD),
                        kind.get()));
    }

    private Optional<Tremulant> tremulant(Typed typed) {
        boolean leads = leads(typed, DraftField.DIVISION);
        return leads && !typed.text(DraftField.NAME).isBlank()
                ? Optional.of(new Tremulant(typed.text(DraftField.NAME), typed.text(DraftField.DIVISION)))
                : Optional.empty();
    }

    private Optional<Pistons> pistons() {
        Typed typed = only(RowKind.PISTONS);
        OptionalInt generals = typed.whole(DraftField.GENERALS, 0, MOST, NONE);
        OptionalInt levels = typed.whole(DraftField.LEVELS, 0, MOST, NONE);
        return generals.isPresent() && levels.isPresent()
                ? typed.make(DraftField.LEVELS, () -> new Pistons(generals.getAsInt(), divisionals, levels.getAsInt()))
                : Optional.empty();
    }

    private Optional<Room> room() {
        Typed room = only(RowKind.ROOM);
        OptionalDouble volume = room.number(DraftField.VOLUME, OptionalDouble.empty());
        OptionalInt seats = room.whole(DraftField.SEATS, 0, MOST, OptionalInt.empty());
        Optional<Room.Distances> distances = distances();
        int before = problems.size();
        Optional<Room.Surfaces> surfaces = surfaces();
        Optional<Room.Reverberation> reverberation = reverberation(surfaces);
        boolean readable = volume.isPresent() && seats.isPresent() && distances.isPresent();
        if (!readable || reverberation.isEmpty() || problems.size() > before) {
            return Optional.empty();
        }
        return room.make(
                DraftField.VOLUME,
                () -> PossibleRoom.require(
                        new Room(volume.getAsDouble(), seats.getAsInt(), reverberation.get(), distances.get())));
    }

    private Optional<Room.Distances> distances() {
        Typed typed = only(RowKind.DISTANCES);
        List<OptionalDouble> metres = RowKind.DISTANCES.slots().stream()
                .map(slot -> typed.number(slot, OptionalDouble.empty()))
                .toList();
        if (metres.stream().anyMatch(OptionalDouble::isEmpty)) {
            return Optional.empty();
        }
        return typed.make(
                DraftField.NAVE,
                () -> new Room.Distances(
                        metres.get(0).getAsDouble(),
                        metres.get(1).getAsDouble(),
                        metres.get(2).getAsDouble(),
                        metres.get(3).getAsDouble(),
                        metres.get(4).getAsDouble()));
    }

    private Optional<Room.Surfaces> surfaces() {
        AbsorptionTable table = AbsorptionTable.load();
        List<Room.Surface> list = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).part() != RowKind.SURFACE) {
                continue;
            }
            Typed typed = at(i);
            String material = typed.text(DraftField.MATERIAL);
            OptionalDouble area = typed.number(DraftField.AREA, OptionalDouble.empty());
            if (table.material(material).isEmpty()) {
                typed.wrong(DraftField.MATERIAL, "The table has: " + String.join("; ", table.surfaces()) + ".");
            } else if (area.isPresent()) {
                typed.make(DraftField.MATERIAL, () -> table.surface(material));
                typed.make(DraftField.AREA, () -> new Room.Surface(material, area.getAsDouble()))
                        .ifPresent(list::add);
            }
        }
        return list.isEmpty() ? Optional.empty() : Optional.of(new Room.Surfaces(list));
    }

    private Optional<Room.Reverberation> reverberation(Optional<Room.Surfaces> surfaces) {
        Typed typed = only(RowKind.TIMES);
        TreeMap<Integer, Double> times = new TreeMap<>();
        for (int octave = 0; octave < Room.OCTAVES_HZ.size(); octave++) {
            DraftField slot = RowKind.TIMES.slots().get(octave);
            if (!typed.text(slot).isBlank()) {
                OptionalDouble time = typed.number(slot, OptionalDouble.empty());
                times.put(Room.OCTAVES_HZ.get(octave), time.orElse(1));
            }
        }
        if (!times.isEmpty()) {
            return typed.make(DraftField.AT_125, () -> new Room.MeasuredTimes(times, surfaces));
        }
        if (surfaces.isEmpty()) {
            typed.wrong(
                    DraftField.AT_1000, "How the room rings is missing: a time for one octave at least, or surfaces.");
        }
        return surfaces.map(each -> each);
    }
}
