package versewind.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Stop;
import versewind.organ.StopName;
import versewind.plan.Feedback;
import versewind.plan.HandsAndFeet;
import versewind.plan.HeardAs;
import versewind.plan.Locks;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Silenced;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.rules.Rule;

/** Reads verses from the rows of a spreadsheet for one instrument. */
final class VerseCsvReader {

    private final Instrument instrument;
    private final BiFunction<Csv.Row, CsvColumn, String> cell;
    private final List<String> divisions;

    /**
     * A reader.
     *
     * @param cell what stands in a column of a row; blank where there is no such column
     */
    VerseCsvReader(Instrument instrument, BiFunction<Csv.Row, CsvColumn, String> cell) {
        this.instrument = instrument;
        this.cell = cell;
        this.divisions = instrument.divisionNames();
    }

    Verse verse(Csv.Row row) throws BadCell {
        return new Verse(
                word(row, CsvColumn.KIND, VerseKind.values(), VerseKind::word),
                cell.apply(row, CsvColumn.LABEL),
                word(row, CsvColumn.MODE, Mode.values(), Mode::word),
                isBlank(row, CsvColumn.SINGING)
                        ? Singing.ORDINARY
                        : word(row, CsvColumn.SINGING, Singing.values(), Singing::word),
                singers(row),
                hands(row),
                registration(row),
                cell.apply(row, CsvColumn.PISTON),
                cell.apply(row, CsvColumn.NOTE),
                isBlank(row, CsvColumn.MOOD) ? Mood.PLAIN : word(row, CsvColumn.MOOD, Mood.values(), Mood::word),
                locks(row),
                silenced(row),
                answer(row));
    }

    private Locks locks(Csv.Row row) throws BadCell {
        IndexSet always = stops(row, CsvColumn.ALWAYS);
        IndexSet never = stops(row, CsvColumn.NEVER);
        if (!always.minus(never).equals(always)) {
            throw new BadCell(CsvColumn.NEVER, "one of these stops is also to be drawn always");
        }
        return new Locks(always, never);
    }

    private List<Silenced> silenced(Csv.Row row) throws BadCell {
        List<String> rules = Arrays.stream(Rule.values()).map(Rule::word).toList();
        List<Silenced> silenced = new ArrayList<>();
        IndexSet seen = IndexSet.EMPTY;
        for (String part : CsvList.parts(cell.apply(row, CsvColumn.SILENCED), ';')) {
            List<String> sides = CsvList.parts(part, ':');
            String rule = CsvList.name(sides.get(0));
            int found = index(rule, rules, CsvColumn.SILENCED, "there is no rule ", "The rules are");
            seen = with(seen, found, rule, CsvColumn.SILENCED);
            silenced.add(
                    new Silenced(rule, sides.stream().skip(1).map(CsvList::name).collect(Collectors.joining(": "))));
        }
        return silenced;
    }

    private Optional<Feedback> answer(Csv.Row row) throws BadCell {
        if (isBlank(row, CsvColumn.HEARD)) {
            return Optional.empty();
        }
        HeardAs heard = word(row, CsvColumn.HEARD, HeardAs.values(), HeardAs::word);
        int present = number(cell.apply(row, CsvColumn.PRESENT), CsvColumn.PRESENT, 1, Verse.MOST_PEOPLE)
                .orElseThrow(() -> new BadCell(CsvColumn.PRESENT, "this must not be blank where something was heard"));
        return Optional.of(new Feedback(heard, present));
    }

    private boolean isBlank(Csv.Row row, CsvColumn column) {
        return cell.apply(row, column).isBlank();
    }

    private OptionalInt singers(Csv.Row row) throws BadCell {
        Optional<Integer> singers = number(cell.apply(row, CsvColumn.SINGERS), CsvColumn.SINGERS, 1, Verse.MOST_PEOPLE);
        return singers.isPresent() ? OptionalInt.of(singers.get()) : OptionalInt.empty();
    }

    /** A whole number within bounds; none where nothing is written. */
    static Optional<Integer> number(String written, CsvColumn column, int least, int most) throws BadCell {
        String digits = written.strip();
        if (digits.isEmpty()) {
            return Optional.empty();
        }
        boolean isNumber = digits.matches("[0-9]{1,9}");
        if (!isNumber || Integer.parseInt(digits) < least || Integer.parseInt(digits) > most) {
            throw new BadCell(
                    column,
                    "this is a whole number from " + least + " to " + most + ", and not " + Quoted.text(written));
        }
        return Optional.of(Integer.parseInt(digits));
    }

    private <T> T word(Csv.Row row, CsvColumn column, T[] values, Function<T, String> wordOf) throws BadCell {
        String typed = cell.apply(row, column).strip();
        List<String> words = Arrays.stream(values).map(wordOf).toList();
        return values[index(typed, words, column, "there is no such word as ", "The words here are")];
    }

    private static int index(String typed, List<String> names, CsvColumn column, String none, String those)
            throws BadCell {
        int found = names.indexOf(typed);
        if (found < 0) {
            throw new BadCell(column, none + Quoted.text(typed) + ". " + Nearest.sentence(typed, names, those));
        }
        return found;
    }

    private int division(String typed, CsvColumn column) throws BadCell {
        return index(typed, divisions, column, "the organ has no division ", "The divisions are");
    }

    private HandsAndFeet hands(Csv.Row row) throws BadCell {
        HandsAndFeet.Layout layout = isBlank(row, CsvColumn.HANDS)
                ? HandsAndFeet.Layout.FOUR_PARTS
                : word(row, CsvColumn.HANDS, HandsAndFeet.Layout.values(), HandsAndFeet.Layout::word);
        int right = manual(row, CsvColumn.RIGHT, instrument.mainDivision());
        return new HandsAndFeet(layout, right, manual(row, CsvColumn.LEFT, right));
    }

    private int manual(Csv.Row row, CsvColumn column, int otherwise) throws BadCell {
        if (isBlank(row, column)) {
            return otherwise;
        }
        int division = division(cell.apply(row, column).strip(), column);
        if (instrument.divisions().get(division).isPedal()) {
            throw new BadCell(column, "a hand cannot play the pedal. Name the division of a manual");
        }
        return division;
    }

    private Registration registration(Csv.Row row) throws BadCell {
        Registration drawn = Registration.silent(instrument).withStops(stops(row, CsvColumn.STOPS));
        List<String> couplers = instrument.couplerNames();
        List<String> tremulants = instrument.tremulantNames();
        drawn = drawn.withCouplers(knobs(row, CsvColumn.COUPLERS, couplers, "coupler"));
        for (int tremulant : knobs(row, CsvColumn.TREMULANTS, tremulants, "tremulant").stream()
                .toArray()) {
            drawn = drawn.toggleTremulant(tremulant);
        }
        return boxes(row, drawn);
    }

    /** The two sides of a colon. */
    private static List<String> sides(String part, CsvColumn column) throws BadCell {
        List<String> sides = CsvList.parts(part, ':');
        if (sides.size() != 2) {
            throw new BadCell(column, Quoted.text(part.strip()) + " is no division, a colon, and what belongs to it");
        }
        return sides;
    }

    private IndexSet stops(Csv.Row row, CsvColumn column) throws BadCell {
        IndexSet drawn = IndexSet.EMPTY;
        for (String part : CsvList.parts(cell.apply(row, column), ';')) {
            List<String> sides = sides(part, column);
            Division division = instrument.divisions().get(division(CsvList.name(sides.get(0)), column));
            List<String> labels = division.stops().stream().map(Stop::label).toList();
            for (String written : CsvList.parts(sides.get(1), ',')) {
                String label = CsvList.name(written);
                index(label, labels, column, division.name() + " has no stop ", division.name() + " has");
                drawn = with(
                        drawn,
                        instrument.stop(new StopName(division.name(), label)).orElseThrow(),
                        label,
                        column);
            }
        }
        return drawn;
    }

    private IndexSet knobs(Csv.Row row, CsvColumn column, List<String> names, String thing) throws BadCell {
        IndexSet drawn = IndexSet.EMPTY;
        for (String written : CsvList.parts(cell.apply(row, column), ',')) {
            String name = CsvList.name(written);
            int knob = index(name, names, column, "the organ has no " + thing + " ", "The " + thing + "s are");
            drawn = with(drawn, knob, name, column);
        }
        return drawn;
    }

    private static IndexSet with(IndexSet drawn, int knob, String name, CsvColumn column) throws BadCell {
        if (drawn.contains(knob)) {
            throw new BadCell(column, Quoted.text(name) + " stands here twice");
        }
        return drawn.with(knob);
    }

    private Registration boxes(Csv.Row row, Registration drawn) throws BadCell {
        Registration set = drawn;
        List<String> words =
                Arrays.stream(BoxPosition.values()).map(BoxPosition::word).toList();
        for (String part : CsvList.parts(cell.apply(row, CsvColumn.BOXES), ';')) {
            List<String> sides = sides(part, CsvColumn.BOXES);
            int division = division(CsvList.name(sides.get(0)), CsvColumn.BOXES);
            if (!instrument.divisions().get(division).isEnclosed()) {
                throw new BadCell(CsvColumn.BOXES, divisions.get(division) + " does not stand in a box");
            }
            int position = index(
                    CsvList.name(sides.get(1)), words, CsvColumn.BOXES, "a box has no position ", "The positions are");
            set = set.withBox(division, BoxPosition.values()[position]);
        }
        return set;
    }
}
