package versewind.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.NameList;
import versewind.organ.Nearest;
import versewind.organ.NotationException;
import versewind.organ.Quoted;
import versewind.organ.Registration;
import versewind.organ.RegistrationText;
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
    private final RegistrationText text;

    /**
     * A reader.
     *
     * @param cell what stands in a column of a row; blank where there is no such column
     */
    VerseCsvReader(Instrument instrument, BiFunction<Csv.Row, CsvColumn, String> cell) {
        this.instrument = instrument;
        this.cell = cell;
        this.text = new RegistrationText(instrument);
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
        IndexSet always = read(row, CsvColumn.ALWAYS, text::stops);
        IndexSet never = read(row, CsvColumn.NEVER, text::stops);
        if (!always.minus(never).equals(always)) {
            throw new BadCell(CsvColumn.NEVER, "one of these stops is also to be drawn always");
        }
        return new Locks(always, never);
    }

    private List<Silenced> silenced(Csv.Row row) throws BadCell {
        List<String> rules = Arrays.stream(Rule.values()).map(Rule::word).toList();
        List<Silenced> silenced = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        for (String part : NameList.parts(cell.apply(row, CsvColumn.SILENCED), ";")) {
            List<String> sides = NameList.parts(part, ":");
            String rule = NameList.name(sides.get(0));
            int found = index(rule, rules, CsvColumn.SILENCED, "there is no rule ", "The rules are");
            if (!seen.add(found)) {
                throw new BadCell(CsvColumn.SILENCED, Quoted.text(rule) + " stands here twice");
            }
            silenced.add(new Silenced(
                    rule, sides.stream().skip(1).map(NameList::name).collect(Collectors.joining(": "))));
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

    private HandsAndFeet hands(Csv.Row row) throws BadCell {
        HandsAndFeet.Layout layout = isBlank(row, CsvColumn.HANDS)
                ? HandsAndFeet.Layout.FOUR_PARTS
                : word(row, CsvColumn.HANDS, HandsAndFeet.Layout.values(), HandsAndFeet.Layout::word);
        int right = manual(row, CsvColumn.RIGHT, instrument.mainDivision());
        return new HandsAndFeet(layout, right, manual(row, CsvColumn.LEFT, right));
    }

    private int manual(Csv.Row row, CsvColumn column, int otherwise) throws BadCell {
        return isBlank(row, column) ? otherwise : read(row, column, text::manual);
    }

    private Registration registration(Csv.Row row) throws BadCell {
        Registration drawn = new Registration(
                read(row, CsvColumn.STOPS, text::stops),
                read(row, CsvColumn.COUPLERS, text::readCouplers),
                read(row, CsvColumn.TREMULANTS, text::readTremulants),
                Registration.silent(instrument).boxes());
        return read(row, CsvColumn.BOXES, typed -> text.withBoxes(drawn, typed));
    }

    /** Reads part of a registration. */
    @FunctionalInterface
    private interface Notation<T> {
        T read(String typed) throws NotationException;
    }

    private <T> T read(Csv.Row row, CsvColumn column, Notation<T> notation) throws BadCell {
        try {
            return notation.read(cell.apply(row, column));
        } catch (NotationException wrong) {
            throw new BadCell(column, wrong.getMessage());
        }
    }
}
