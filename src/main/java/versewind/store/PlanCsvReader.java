package versewind.store;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import versewind.organ.Nearest;
import versewind.organ.Quoted;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Verse;
import versewind.plan.Verses;

/**
 * Reads a plan that {@link PlanCsv} has written, perhaps with its columns in another order, or with what belongs to the
 * service and the hymn only in their first rows. All rows are read before anything comes of them.
 */
public final class PlanCsvReader {

    /** Finds an instrument by the name of its file. */
    @FunctionalInterface
    public interface Instruments {
        /** The instrument, and what is known of it. */
        KnownOrgan find(String id) throws BadFile;
    }

    /** A plan and the instrument it is made for. */
    public record Read(Plan plan, KnownOrgan organ) {}

    private static final Pattern SECONDS = Pattern.compile("\\d{1,2}([.,]\\d{1,6})?");

    private final List<Csv.Row> rows;
    private final Map<CsvColumn, Integer> places;
    private final List<String> troubles = new ArrayList<>();

    private PlanCsvReader(List<Csv.Row> rows, Map<CsvColumn, Integer> places) {
        this.rows = rows;
        this.places = places;
    }

    /**
     * Reads a plan.
     *
     * @throws BadRows with every row that is wrong
     * @throws BadFile if its instrument cannot be read
     */
    public static Read read(String text, Instruments instruments) throws BadRows, BadFile {
        List<Csv.Row> all = new ArrayList<>(Csv.read(text));
        all.removeIf(row -> row.cells().stream().allMatch(String::isBlank));
        if (all.size() < 2) {
            throw BadRows.at(1, "there is no row below the names of the columns");
        }
        PlanCsvReader reader = new PlanCsvReader(all.subList(1, all.size()), places(all.get(0)));
        return reader.read(instruments);
    }

    private static Map<CsvColumn, Integer> places(Csv.Row head) throws BadRows {
        Map<CsvColumn, Integer> places = new EnumMap<>(CsvColumn.class);
        for (int i = 0; i < head.cells().size(); i++) {
            String name = head.cells().get(i);
            Optional<CsvColumn> column = CsvColumn.of(name);
            if (column.isEmpty()) {
                throw BadRows.at(
                        head.line(),
                        "there is no column " + Quoted.text(name) + ". "
                                + Nearest.sentence(name, CsvColumn.heads(), "The columns are"));
            }
            if (places.put(column.get(), i) != null) {
                throw BadRows.at(head.line(), "the column " + Quoted.text(name) + " stands here twice");
            }
        }
        for (CsvColumn needed : CsvColumn.NEEDED) {
            if (!places.containsKey(needed)) {
                throw BadRows.at(head.line(), "the column \"" + needed.head() + "\" is missing");
            }
        }
        return places;
    }

    private String cell(Csv.Row row, CsvColumn column) {
        Integer place = places.get(column);
        return place == null || place >= row.cells().size() ? "" : row.cells().get(place);
    }

    private Read read(Instruments instruments) throws BadRows, BadFile {
        Csv.Row first = rows.get(0);
        String id = cell(first, CsvColumn.INSTRUMENT).strip();
        if (!Format.isId(id)) {
            throw BadRows.at(
                    first.line(), "instrument: " + Quoted.text(id) + " is not the name of an instrument's file");
        }
        KnownOrgan organ = instruments.find(id);
        Optional<ServiceHeading> heading = heading(first);
        List<Hymn> hymns = hymns(new VerseCsvReader(organ.instrument(), this::cell));
        for (Csv.Row row : rows) {
            sameAs(first, row, CsvColumn.OF_SERVICE);
        }
        if (!troubles.isEmpty() || heading.isEmpty()) {
            throw new BadRows(troubles);
        }
        return new Read(new Plan(heading.get(), id, hymns), organ);
    }

    private void trouble(Csv.Row row, CsvColumn column, String problem) {
        troubles.add(BadRows.sentence(row.line(), column.head() + ": " + problem));
    }

    /** Cells of a later row may be left blank; if they are not they have to be those of the first. */
    private void sameAs(Csv.Row first, Csv.Row row, List<CsvColumn> columns) {
        for (CsvColumn column : columns) {
            String cell = cell(row, column);
            if (!cell.isBlank() && !cell.equals(cell(first, column))) {
                trouble(
                        row,
                        column,
                        "this is not what line " + first.line() + " has, " + Quoted.text(cell(first, column)));
            }
        }
    }

    private Optional<ServiceHeading> heading(Csv.Row row) {
        try {
            int people = VerseCsvReader.number(cell(row, CsvColumn.PEOPLE), CsvColumn.PEOPLE, 1, Verse.MOST_PEOPLE)
                    .orElseThrow(() -> new BadCell(CsvColumn.PEOPLE, "this must not be blank"));
            String title = cell(row, CsvColumn.SERVICE);
            if (title.isBlank()) {
                throw new BadCell(CsvColumn.SERVICE, "this must not be blank");
            }
            return Optional.of(new ServiceHeading(
                    title,
                    date(cell(row, CsvColumn.DATE).strip()),
                    people,
                    cell(row, CsvColumn.SERVICE_NOTES),
                    moveS(cell(row, CsvColumn.SECONDS_A_MOVE).strip())));
        } catch (BadCell bad) {
            trouble(row, bad.column(), bad.getMessage());
            return Optional.empty();
        }
    }

    private static double moveS(String written) throws BadCell {
        if (written.isEmpty()) {
            return ServiceHeading.USUAL_MOVE_S;
        }
        if (SECONDS.matcher(written).matches()) {
            double moveS = Double.parseDouble(written.replace(',', '.'));
            if (moveS >= ServiceHeading.SHORTEST_MOVE_S && moveS <= ServiceHeading.LONGEST_MOVE_S) {
                return moveS;
            }
        }
        throw new BadCell(
                CsvColumn.SECONDS_A_MOVE,
                Quoted.text(written) + " is no time from 0.1 to 5 seconds. Write it like 0.6");
    }

    private static Optional<LocalDate> date(String written) throws BadCell {
        try {
            return written.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(written));
        } catch (DateTimeException noDate) {
            throw new BadCell(
                    CsvColumn.DATE, Quoted.text(written) + " is no date. Write it like 2026-10-04, year, month, day");
        }
    }

    private List<Hymn> hymns(VerseCsvReader verses) {
        List<Hymn> hymns = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int from = 0; from < rows.size(); ) {
            Csv.Row first = rows.get(from);
            String group = cell(first, CsvColumn.HYMN).strip();
            int to = from + 1;
            while (to < rows.size()
                    && cell(rows.get(to), CsvColumn.HYMN).strip().equals(group)) {
                to++;
            }
            if (!seen.add(group)) {
                trouble(first, CsvColumn.HYMN, "the rows of hymn " + Quoted.text(group) + " do not stand together");
            }
            if (!group.isEmpty()) {
                hymn(rows.subList(from, to), verses).ifPresent(hymns::add);
            } else if (rows.size() > 1) {
                trouble(
                        first,
                        CsvColumn.HYMN,
                        "this must not be blank; every hymn has its number in the order of the service");
            }
            from = to;
        }
        return hymns;
    }

    private Optional<Hymn> hymn(List<Csv.Row> group, VerseCsvReader reader) {
        Csv.Row first = group.get(0);
        List<Verse> verses = new ArrayList<>();
        for (Csv.Row row : group) {
            sameAs(first, row, CsvColumn.OF_HYMN);
            if (group.size() > 1 || !cell(row, CsvColumn.KIND).isBlank()) {
                try {
                    verses.add(reader.verse(row));
                } catch (BadCell bad) {
                    trouble(row, bad.column(), bad.getMessage());
                }
            }
        }
        try {
            Optional<Integer> beats = VerseCsvReader.number(
                    cell(first, CsvColumn.TEMPO), CsvColumn.TEMPO, Hymn.SLOWEST_TEMPO, Hymn.FASTEST_TEMPO);
            OptionalInt tempo = beats.isPresent() ? OptionalInt.of(beats.get()) : OptionalInt.empty();
            return Optional.of(new Hymn(
                    cell(first, CsvColumn.NUMBER),
                    cell(first, CsvColumn.TITLE),
                    cell(first, CsvColumn.TUNE),
                    cell(first, CsvColumn.METRE),
                    cell(first, CsvColumn.KEY),
                    tempo,
                    cell(first, CsvColumn.HYMN_NOTES),
                    Verses.allLabelled(verses)));
        } catch (BadCell bad) {
            trouble(first, bad.column(), bad.getMessage());
            return Optional.empty();
        }
    }
}
