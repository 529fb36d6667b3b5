package versewind.workshop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Instrument;

/**
 * An instrument as lines of text that may be wrong for a while: the organ, its divisions each with its stops, couplers,
 * tremulants, pistons, and the room. What names another line follows it when that gets another name.
 *
 * @param lines in the order of {@link RowKind}, the stops behind their division
 */
public record OrganDraft(List<DraftLine> lines) {

    public OrganDraft {
        lines = List.copyOf(lines);
    }

    /** The draft of an instrument. */
    public static OrganDraft of(Instrument instrument) {
        return new OrganDraft(DraftRows.of(instrument));
    }

    /** What is wrong, from the first line to the last. */
    public List<Problem> problems() {
        DraftValidator inspection = new DraftValidator(lines);
        inspection.instrument();
        return inspection.problems();
    }

    /** The instrument; empty as long as anything is wrong. */
    public Optional<Instrument> instrument() {
        return new DraftValidator(lines).instrument();
    }

    /** The names of the divisions as they are written. */
    public List<String> divisions() {
        return lines.stream()
                .filter(line -> line.part() == RowKind.DIVISION)
                .map(line -> line.at(DraftField.NAME))
                .toList();
    }

    /** The division that a line belongs to: itself, or for a stop the one above. */
    public Optional<DraftLine> divisionOf(int at) {
        int line = at;
        while (line > 0 && lines.get(line).part() == RowKind.STOP) {
            line--;
        }
        return Optional.of(lines.get(line)).filter(each -> each.part() == RowKind.DIVISION);
    }

    /** With other texts in a line; what names it follows. */
    public OrganDraft with(int at, List<String> values) {
        DraftLine was = lines.get(at);
        DraftLine now = was.with(values);
        List<DraftLine> others = new ArrayList<>(lines);
        others.set(at, now);
        if (was.part() == RowKind.DIVISION) {
            return new OrganDraft(others).afterDivision(was.at(DraftField.NAME), now.at(DraftField.NAME));
        }
        if (was.part() == RowKind.STOP) {
            String division =
                    divisionOf(at).map(line -> line.at(DraftField.NAME)).orElse("");
            return new OrganDraft(others).afterStop(division + ": " + was.label(), division + ": " + now.label());
        }
        return new OrganDraft(others);
    }

    private OrganDraft afterDivision(String was, String now) {
        boolean taken = divisions().stream().filter(now::equals).count() > 1;
        if (was.equals(now) || now.isBlank() || taken || divisions().contains(was)) {
            return this;
        }
        return new OrganDraft(lines.stream()
                .map(line -> renamed(line, DraftField.SOUNDS, was, now))
                .map(line -> renamed(line, DraftField.KEYBOARD, was, now))
                .map(line -> renamed(line, DraftField.DIVISION, was, now))
                .map(line -> line.part() == RowKind.STOP
                                && line.at(DraftField.FROM).startsWith(was + ": ")
                        ? line.with(
                                DraftField.FROM, now + line.at(DraftField.FROM).substring(was.length()))
                        : line)
                .toList());
    }

    private OrganDraft afterStop(String was, String now) {
        long called = IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).part() == RowKind.STOP && fullName(i).equals(now))
                .count();
        return was.equals(now) || called > 1
                ? this
                : new OrganDraft(lines.stream()
                        .map(line -> renamed(line, DraftField.FROM, was, now))
                        .toList());
    }

    private static DraftLine renamed(DraftLine line, DraftField slot, String was, String now) {
        return line.part().slots().contains(slot) && line.at(slot).equals(was) ? line.with(slot, now) : line;
    }

    /** With a line put in behind another: a division behind the stops of the one where we are. */
    public OrganDraft inserted(int index, DraftLine line) {
        List<DraftLine> others = new ArrayList<>(lines);
        others.add(index, line);
        return new OrganDraft(others);
    }

    /** Where a new line of a part goes, if one is wanted at a line: behind what it resembles, else where the part begins. */
    public int placeFor(RowKind part, int at) {
        RowKind here = lines.get(at).part();
        boolean beside = here == part || (part == RowKind.STOP && here == RowKind.DIVISION);
        if (part == RowKind.DIVISION && (here == RowKind.DIVISION || here == RowKind.STOP)) {
            int next = at + 1;
            while (lines.get(next).part() == RowKind.STOP) {
                next++;
            }
            return next;
        }
        if (beside) {
            return at + 1;
        }
        return (int)
                lines.stream().filter(line -> line.part().compareTo(part) <= 0).count();
    }

    /** A line once more, behind itself; a division with its stops. */
    public OrganDraft duplicated(int at) {
        List<DraftLine> others = new ArrayList<>(lines);
        int end = end(at);
        List<DraftLine> copies =
                lines.subList(at, end).stream().map(DraftLine::copied).toList();
        others.addAll(end, copies);
        return new OrganDraft(others);
    }

    /** Without a line, and without the stops of a division. */
    public OrganDraft without(int at) {
        List<DraftLine> others = new ArrayList<>(lines);
        others.subList(at, end(at)).clear();
        return new OrganDraft(others);
    }

    /** Behind the last line that goes with one: the stops of a division. */
    private int end(int at) {
        int end = at + 1;
        while (lines.get(at).part() == RowKind.DIVISION && lines.get(end).part() == RowKind.STOP) {
            end++;
        }
        return end;
    }

    /** A draft and where in it the line is now. */
    public record Moved(OrganDraft draft, int at) {}

    /** With a line one place further up; a division goes with its stops, and a stop may go over into another division. */
    public Optional<Moved> movedUp(int at) {
        DraftLine line = lines.get(at);
        if (line.part() == RowKind.DIVISION) {
            int above = at - 1;
            while (lines.get(above).part() == RowKind.STOP) {
                above--;
            }
            return lines.get(above).part() == RowKind.DIVISION ? Optional.of(swapped(above, at)) : Optional.empty();
        }
        boolean alike = at > 0 && lines.get(at - 1).part() == line.part();
        boolean over = line.part() == RowKind.STOP
                && lines.get(at - 1).part() == RowKind.DIVISION
                && lines.get(at - 2).part() != RowKind.ORGAN;
        if (!line.part().isRepeated() || !(alike || over)) {
            return Optional.empty();
        }
        return Optional.of(new Moved(stepped(at - 1, at), at - 1));
    }

    /** With a line one place further down. */
    public Optional<Moved> movedDown(int at) {
        int next = end(at);
        if (next >= lines.size()) {
            return Optional.empty();
        }
        DraftLine line = lines.get(at);
        DraftLine below = lines.get(next);
        if (line.part() == RowKind.DIVISION) {
            return below.part() == RowKind.DIVISION
                    ? Optional.of(new Moved(swapped(at, next).draft(), at + end(next) - next))
                    : Optional.empty();
        }
        boolean over = line.part() == RowKind.STOP && below.part() == RowKind.DIVISION;
        if (!line.part().isRepeated() || !(below.part() == line.part() || over)) {
            return Optional.empty();
        }
        return Optional.of(new Moved(stepped(at, next), next));
    }

    /** Two divisions that stand one behind the other, changed about. */
    private Moved swapped(int first, int second) {
        List<DraftLine> others = new ArrayList<>(lines.subList(0, first));
        others.addAll(lines.subList(second, end(second)));
        others.addAll(lines.subList(first, second));
        others.addAll(lines.subList(end(second), lines.size()));
        return new Moved(new OrganDraft(others), first);
    }

    private OrganDraft stepped(int first, int second) {
        List<DraftLine> others = new ArrayList<>(lines);
        Collections.swap(others, first, second);
        OrganDraft next = new OrganDraft(others);
        int was = lines.get(first).part() == RowKind.STOP ? first : second;
        int now = was == first ? second : first;
        return Stream.of(lines.get(first), lines.get(second)).anyMatch(line -> line.part() == RowKind.DIVISION)
                ? next.afterStop(fullName(was), next.fullName(now))
                : next;
    }

    /** What a line is called; a stop with its division: "Great: Principal 4". */
    public String fullName(int at) {
        DraftLine line = lines.get(at);
        return line.part() == RowKind.STOP
                ? divisionOf(at).map(each -> each.at(DraftField.NAME) + ": ").orElse("") + line.label()
                : line.label();
    }

    /** The line that a part of the instrument has, by its index there; empty where it was taken out. */
    public OptionalInt lineOf(RowKind part, int origin) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).part() == part && lines.get(i).origin().equals(OptionalInt.of(origin))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }
}
