package versewind.schema;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Decimal;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Room;
import versewind.organ.StopName;

/**
 * An instrument as rows of text that may be wrong for a while: the organ, its divisions each with its stops, couplers,
 * tremulants, pistons, and the room. What refers to another row follows it when that gets another name.
 *
 * @param lines in the order of {@link RowKind}, the stops behind their division
 */
public record OrganDraft(List<DraftLine> lines) {

    /** The fields that hold the name of a division. */
    private static final List<Field<?, String>> DIVISION_NAMES =
            List.of(InstrumentFields.SOURCE, InstrumentFields.PLAYED_FROM, InstrumentFields.AFFECTED);

    public OrganDraft {
        lines = List.copyOf(lines);
    }

    /** The draft of an instrument. */
    public static OrganDraft of(Instrument organ) {
        List<DraftLine> lines = new ArrayList<>();
        lines.add(DraftLine.of(RowKind.ORGAN, OptionalInt.empty(), organ));
        int stop = 0;
        for (int i = 0; i < organ.divisions().size(); i++) {
            Division division = organ.divisions().get(i);
            int pistons = organ.pistons().divisionals().getOrDefault(division.name(), 0);
            addAll(lines, RowKind.DIVISION, i, List.of(new DivisionFields.Row(division, pistons)));
            addAll(lines, RowKind.STOP, stop, division.stops());
            stop += division.stops().size();
        }
        addAll(lines, RowKind.COUPLER, 0, organ.couplers());
        addAll(lines, RowKind.TREMULANT, 0, organ.tremulants());
        lines.add(DraftLine.of(RowKind.PISTONS, OptionalInt.empty(), organ.pistons()));
        lines.addAll(room(organ.room()));
        return new OrganDraft(lines);
    }

    private static List<DraftLine> room(Room room) {
        List<DraftLine> lines = new ArrayList<>();
        SortedMap<Integer, Double> times =
                room.reverberation() instanceof Room.MeasuredTimes measured ? measured.octaveS() : new TreeMap<>();
        lines.add(DraftLine.of(RowKind.ROOM, OptionalInt.empty(), room));
        lines.add(DraftLine.of(RowKind.TIMES, OptionalInt.empty(), times));
        lines.add(DraftLine.of(RowKind.DISTANCES, OptionalInt.empty(), room.distances()));
        room.reverberation().known().ifPresent(surfaces -> surfaces.list()
                .forEach(surface -> lines.add(DraftLine.of(RowKind.SURFACE, OptionalInt.empty(), surface))));
        return lines;
    }

    /** With another room; what was known of its surfaces is gone. */
    public OrganDraft withRoom(Room room) {
        return new OrganDraft(Stream.concat(
                        lines.stream().filter(line -> line.part().compareTo(RowKind.ROOM) < 0), room(room).stream())
                .toList());
    }

    /** True if a reverberation time is given. */
    public boolean hasTimes() {
        DraftLine times = lines.get(only(RowKind.TIMES));
        return RowKind.TIMES.fields().stream()
                .anyMatch(field -> !times.at(field).isBlank());
    }

    /** With the reverberation times of all octaves multiplied, in tenths of a second; blank ones stay blank. */
    public OrganDraft ringing(double factor) {
        int at = only(RowKind.TIMES);
        return with(
                at,
                RowKind.TIMES.fields().stream()
                        .map(field -> lines.get(at).at(field))
                        .map(time -> time.isBlank()
                                ? time
                                : Decimal.of(Math.round(Double.parseDouble(time) * factor * 10) / 10.0))
                        .toList());
    }

    private static <T> void addAll(List<DraftLine> lines, RowKind part, int first, List<T> values) {
        for (int i = 0; i < values.size(); i++) {
            lines.add(DraftLine.of(part, OptionalInt.of(first + i), values.get(i)));
        }
    }

    /** What is wrong, from the first row to the last. */
    public List<Problem> problems() {
        DraftReader reader = new DraftReader(this);
        reader.instrument();
        return reader.problems();
    }

    /** A problem, with the name of the part it is about. */
    public String sentence(Problem problem) {
        String called = fullName(problem.line());
        return called.isBlank() || problem.sentence().startsWith(called)
                ? problem.sentence()
                : called + ": " + problem.sentence();
    }

    /** The instrument; empty as long as anything is wrong. */
    public Optional<Instrument> instrument() {
        return new DraftReader(this).instrument();
    }

    /** Indices of the rows of a kind. */
    public IntStream rows(RowKind part) {
        return IntStream.range(0, lines.size()).filter(at -> lines.get(at).part() == part);
    }

    /** Index of the row of a kind of which there is one. */
    int only(RowKind part) {
        return rows(part).findFirst().orElseThrow();
    }

    /** The names of the divisions as they are typed. */
    public List<String> divisions() {
        return rows(RowKind.DIVISION).mapToObj(at -> lines.get(at).name()).toList();
    }

    /** The division that a row belongs to: itself, or for a stop the one above. */
    public Optional<DraftLine> divisionOf(int at) {
        int line = at;
        while (line > 0 && lines.get(line).part() == RowKind.STOP) {
            line--;
        }
        return Optional.of(lines.get(line)).filter(each -> each.part() == RowKind.DIVISION);
    }

    /** What a stop is called, as far as that can be read. */
    StopName stopName(int at) {
        return new StopName(
                divisionOf(at).map(DraftLine::name).orElse(""), lines.get(at).label());
    }

    /** What a row is called; a stop with its division: "Great: Principal 4". */
    public String fullName(int at) {
        return lines.get(at).part() == RowKind.STOP
                ? stopName(at).toString()
                : lines.get(at).label();
    }

    /** With other texts in a row; what refers to it follows. */
    public OrganDraft with(int at, List<String> values) {
        List<DraftLine> others = new ArrayList<>(lines);
        others.set(at, lines.get(at).with(values));
        OrganDraft next = new OrganDraft(others);
        return switch (lines.get(at).part()) {
            case DIVISION ->
                next.afterDivision(lines.get(at).name(), others.get(at).name());
            case STOP -> next.afterStop(fullName(at), next.fullName(at));
            case ORGAN, COUPLER, TREMULANT, PISTONS, ROOM, TIMES, DISTANCES, SURFACE -> next;
        };
    }

    private OrganDraft afterDivision(String was, String now) {
        boolean isTaken = divisions().stream().filter(now::equals).count() > 1;
        if (was.equals(now) || now.isBlank() || isTaken || divisions().contains(was)) {
            return this;
        }
        List<DraftLine> others = new ArrayList<>();
        for (DraftLine line : lines) {
            DraftLine next = line;
            for (Field<?, ?> field : DIVISION_NAMES) {
                next = referring(next, field, was, now);
            }
            String start = was + StopFields.SEPARATOR;
            boolean isBorrowed =
                    line.has(StopFields.FROM) && line.at(StopFields.FROM).startsWith(start);
            others.add(
                    isBorrowed
                            ? next.with(
                                    StopFields.FROM,
                                    now + line.at(StopFields.FROM).substring(was.length()))
                            : next);
        }
        return new OrganDraft(others);
    }

    private OrganDraft afterStop(String was, String now) {
        long called = rows(RowKind.STOP)
                .filter(at -> !was.equals(now) && fullName(at).equals(now))
                .count();
        return was.equals(now) || called > 1
                ? this
                : new OrganDraft(lines.stream()
                        .map(line -> referring(line, StopFields.FROM, was, now))
                        .toList());
    }

    private static DraftLine referring(DraftLine line, Field<?, ?> field, String was, String now) {
        return line.has(field) && line.at(field).equals(was) ? line.with(field, now) : line;
    }

    /** With a row added at a place. */
    public OrganDraft inserted(int index, DraftLine line) {
        List<DraftLine> others = new ArrayList<>(lines);
        others.add(index, line);
        return new OrganDraft(others);
    }

    /**
     * Where a new row of a kind goes, if one is wanted at a row: behind what it resembles, else where the kind begins.
     */
    public int placeFor(RowKind part, int at) {
        RowKind here = lines.get(at).part();
        if (part == RowKind.DIVISION && (here == RowKind.DIVISION || here == RowKind.STOP)) {
            int next = at + 1;
            while (lines.get(next).part() == RowKind.STOP) {
                next++;
            }
            return next;
        }
        if (here == part || (part == RowKind.STOP && here == RowKind.DIVISION)) {
            return at + 1;
        }
        return (int)
                lines.stream().filter(line -> line.part().compareTo(part) <= 0).count();
    }

    /** A row once more, behind itself; a division with its stops. */
    public OrganDraft duplicated(int at) {
        List<DraftLine> others = new ArrayList<>(lines);
        int end = end(at);
        others.addAll(
                end, lines.subList(at, end).stream().map(DraftLine::copied).toList());
        return new OrganDraft(others);
    }

    /** Without a row, and without the stops of a division. */
    public OrganDraft without(int at) {
        List<DraftLine> others = new ArrayList<>(lines);
        others.subList(at, end(at)).clear();
        return new OrganDraft(others);
    }

    /** Behind the last row that goes with one: the stops of a division. */
    private int end(int at) {
        int end = at + 1;
        while (lines.get(at).part() == RowKind.DIVISION && lines.get(end).part() == RowKind.STOP) {
            end++;
        }
        return end;
    }

    /** A draft and where in it the row is now. */
    public record Moved(OrganDraft draft, int at) {}

    /**
     * With a row one place further up; a division goes with its stops, and a stop may go over into another division.
     */
    public Optional<Moved> movedUp(int at) {
        int above = at - 1;
        while (lines.get(at).part() == RowKind.DIVISION && lines.get(above).part() == RowKind.STOP) {
            above--;
        }
        return swapped(above, at, at);
    }

    /** With a row one place further down. */
    public Optional<Moved> movedDown(int at) {
        return swapped(at, end(at), at);
    }

    /**
     * With the row at {@code at}, the first or the second of two that stand one behind the other, moved past the other.
     */
    private Optional<Moved> swapped(int first, int second, int at) {
        if (first < 0 || second >= lines.size()) {
            return Optional.empty();
        }
        RowKind upper = lines.get(first).part();
        RowKind lower = lines.get(second).part();
        boolean isAlike = upper == lower && upper.isRepeated();
        boolean isOverDown = upper == RowKind.STOP && lower == RowKind.DIVISION;
        boolean isOverUp = upper == RowKind.DIVISION && lower == RowKind.STOP && first > 1;
        if (!isAlike && !isOverDown && !isOverUp) {
            return Optional.empty();
        }
        int end = isAlike ? end(second) : second + 1;
        List<DraftLine> others = new ArrayList<>(lines);
        Collections.rotate(others.subList(first, end), end - second);
        OrganDraft next = new OrganDraft(others);
        int now = at == first ? first + end - second : first;
        return Optional.of(new Moved(isAlike ? next : next.afterStop(fullName(at), next.fullName(now)), now));
    }

    /** The row that a part of the instrument has, by its index there; empty where it was deleted. */
    public OptionalInt lineOf(RowKind part, int origin) {
        return rows(part)
                .filter(at -> lines.get(at).origin().equals(OptionalInt.of(origin)))
                .findFirst();
    }

    /** After it was saved: in every other draft, every row now comes from the place that it has in this one. */
    public OrganDraft moved(OrganDraft other) {
        return new OrganDraft(other.lines.stream()
                .map(line -> new DraftLine(line.part(), place(line), line.values()))
                .toList());
    }

    private OptionalInt place(DraftLine line) {
        List<DraftLine> alike =
                lines.stream().filter(each -> each.part() == line.part()).toList();
        return IntStream.range(0, line.origin().isPresent() ? alike.size() : 0)
                .filter(i -> alike.get(i).origin().equals(line.origin()))
                .findFirst();
    }
}
