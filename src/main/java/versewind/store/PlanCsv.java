package versewind.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import versewind.organ.Instrument;
import versewind.organ.Quoted;
import versewind.plan.Hymn;
import versewind.plan.Plan;
import versewind.plan.SungBy;
import versewind.plan.Verse;
import versewind.plan.Verses;
import versewind.schema.Field;
import versewind.schema.HymnFields;
import versewind.schema.KnownOrgan;
import versewind.schema.OrganNames;
import versewind.schema.Refused;
import versewind.schema.ServiceFields;
import versewind.schema.Table;
import versewind.schema.VerseFields;

/**
 * A plan as a spreadsheet: a row a verse, with what belongs to its hymn and its service in every row; a row for a hymn
 * without verses and for a plan without hymns. Columns may be read in another order, and what belongs to service and
 * hymn may stand in their first rows only. All rows are read before anything comes of them.
 */
public final class PlanCsv {
    /** The column with the number of the hymn in the service, from 1. */
    private static final String HYMN = "hymn";

    private static final List<String> COLUMNS = Stream.of(
                    columns(ServiceFields.HEAD), Stream.of(HYMN), columns(HymnFields.HEAD), columns(VerseFields.TABLE))
            .flatMap(columns -> columns)
            .toList();

    private static Stream<String> columns(Table<?> table) {
        return table.fields().stream().map(Field::column);
    }

    /** The columns that there must be; the others may be left out, and the congregation sings where "mode" is blank. */
    public static List<String> needed() {
        Stream<String> needed = Stream.of(ServiceFields.HEAD, HymnFields.HEAD, VerseFields.TABLE)
                .flatMap(table -> table.fields().stream())
                .filter(field -> field.isNeededTyped() && field != VerseFields.MODE)
                .map(Field::column);
        return Stream.concat(Stream.of(HYMN), needed).toList();
    }

    /** Finds an instrument by the name of its file. */
    @FunctionalInterface
    public interface Instruments {
        /** The instrument, and what is known of it. */
        KnownOrgan find(String id) throws BadFile;
    }

    /** A plan and the instrument it is made for. */
    public record Read(Plan plan, KnownOrgan organ) {}

    private final List<Csv.Row> rows;
    private final CsvColumns columns;
    private final SortedMap<Integer, List<String>> troubles = new TreeMap<>();

    private PlanCsv(List<Csv.Row> rows, CsvColumns columns) {
        this.rows = rows;
        this.columns = columns;
    }

    /** All rows, the first of them with the names of the columns, as RFC 4180 has it. */
    public static String of(Plan plan, Instrument instrument) {
        OrganNames names = OrganNames.of(instrument);
        StringBuilder written = new StringBuilder(Csv.row(COLUMNS));
        List<String> service = cells(ServiceFields.HEAD, plan, names);
        if (plan.hymns().isEmpty()) {
            written.append(row(service, List.of()));
        }
        for (int i = 0; i < plan.hymns().size(); i++) {
            Hymn hymn = plan.hymns().get(i);
            List<String> head = new ArrayList<>(service);
            head.add(Integer.toString(i + 1));
            head.addAll(cells(HymnFields.HEAD, hymn, names));
            if (hymn.verses().isEmpty()) {
                written.append(row(head, List.of()));
            }
            for (Verse verse : hymn.verses()) {
                written.append(row(head, cells(VerseFields.TABLE, verse, names)));
            }
        }
        return written.toString();
    }

    private static <T> List<String> cells(Table<T> table, T value, OrganNames names) {
        return table.fields().stream().map(field -> field.typed(value, names)).toList();
    }

    private static String row(List<String> head, List<String> rest) {
        List<String> cells = new ArrayList<>(head);
        cells.addAll(rest);
        cells.addAll(Collections.nCopies(COLUMNS.size() - cells.size(), ""));
        return Csv.row(cells);
    }

    /**
     * Reads a plan.
     *
     * @throws BadRows with every row that is wrong
     */
    public static Read read(String text, Instruments instruments) throws BadRows {
        List<Csv.Row> all = new ArrayList<>(Csv.read(text));
        all.removeIf(row -> row.cells().stream().allMatch(String::isBlank));
        if (all.isEmpty()) {
            throw BadRows.at(
                    1,
                    "this is empty. Write the names of the columns here, " + String.join(", ", needed())
                            + ", and below a row for each verse");
        }
        if (all.size() < 2) {
            throw BadRows.at(1, "there is no row below the column names");
        }
        return new PlanCsv(all.subList(1, all.size()), columns(all.get(0))).read(instruments);
    }

    private static CsvColumns columns(Csv.Row head) throws BadRows {
        return new CsvColumns(head, COLUMNS, needed());
    }

    private String cell(Csv.Row row, String column) {
        String cell = columns.cell(row, column);
        boolean isSungBy = column.equals(VerseFields.MODE.column());
        return isSungBy && cell.isBlank() ? SungBy.CONGREGATION.word() : cell;
    }

    private Read read(Instruments instruments) throws BadRows {
        Csv.Row first = rows.get(0);
        for (Csv.Row row : rows) {
            columns.excess(row)
                    .ifPresent(problem -> troubles.put(row.line(), List.of(BadRows.sentence(row.line(), problem))));
        }
        requireNoTroubles();
        Optional<KnownOrgan> organ = organ(first, instruments);
        OrganNames names = organ.map(known -> OrganNames.of(known.instrument(), known.former()))
                .orElse(OrganNames.NONE);
        Optional<Plan> plan = read(first, ServiceFields.HEAD, names);
        List<Hymn> hymns = hymns(names);
        for (Csv.Row row : rows) {
            requireSame(first, row, ServiceFields.HEAD);
        }
        requireNoTroubles();
        return new Read(plan.orElseThrow().withHymns(hymns), organ.orElseThrow());
    }

    private void requireNoTroubles() throws BadRows {
        if (!troubles.isEmpty()) {
            throw new BadRows(troubles.values().stream().flatMap(List::stream).toList());
        }
    }

    /** The organ that the first row names; where it names none, the row is read without it and says so itself. */
    private Optional<KnownOrgan> organ(Csv.Row first, Instruments instruments) {
        String column = ServiceFields.INSTRUMENT.column();
        try {
            return Optional.of(instruments.find(ServiceFields.INSTRUMENT.parse(cell(first, column))));
        } catch (BadFile wrong) {
            trouble(first, column, wrong.getMessage());
        } catch (Refused saidWithTheRow) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    private <T> Optional<T> read(Csv.Row row, Table<T> table, OrganNames names) {
        return table.read(
                field -> cell(row, field.column()),
                names,
                wrong -> trouble(row, wrong.place(), wrong.problemAndRemedy()));
    }

    private void trouble(Csv.Row row, String column, String problem) {
        troubles.computeIfAbsent(row.line(), line -> new ArrayList<>())
                .add(BadRows.sentence(row.line(), column + ": " + problem));
    }

    /** Cells of a later row may be left blank; otherwise they must be those of the first. */
    private void requireSame(Csv.Row first, Csv.Row row, Table<?> table) {
        for (Field<?, ?> field : table.fields()) {
            String expected = cell(first, field.column());
            String cell = cell(row, field.column());
            if (!cell.isBlank() && !cell.equals(expected)) {
                trouble(row, field.column(), "line " + first.line() + " has " + Quoted.text(expected) + " here");
            }
        }
    }

    private List<Hymn> hymns(OrganNames names) {
        List<Hymn> hymns = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int from = 0; from < rows.size(); ) {
            Csv.Row first = rows.get(from);
            String group = cell(first, HYMN).strip();
            int to = from + 1;
            while (to < rows.size() && cell(rows.get(to), HYMN).strip().equals(group)) {
                to++;
            }
            if (!seen.add(group)) {
                trouble(first, HYMN, "the rows of hymn " + Quoted.text(group) + " do not stand together");
            }
            if (!group.isEmpty()) {
                hymn(rows.subList(from, to), names).ifPresent(hymns::add);
            } else if (rows.size() > 1) {
                trouble(first, HYMN, "this must not be blank. Number the hymns in the order of the service");
            }
            from = to;
        }
        return hymns;
    }

    private Optional<Hymn> hymn(List<Csv.Row> group, OrganNames names) {
        Csv.Row first = group.get(0);
        List<Verse> verses = new ArrayList<>();
        for (Csv.Row row : group) {
            requireSame(first, row, HymnFields.HEAD);
            if (group.size() > 1 || !cell(row, VerseFields.KIND.column()).isBlank()) {
                read(row, VerseFields.TABLE, names).ifPresent(verses::add);
            }
        }
        return read(first, HymnFields.HEAD, names).map(hymn -> hymn.withVerses(Verses.allLabelled(verses)));
    }
}
