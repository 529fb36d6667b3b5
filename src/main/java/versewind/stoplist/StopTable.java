package versewind.stoplist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import versewind.organ.Stop;

/**
 * A table with one stop a row, of which a column says the division and others the name, the pitch, the ranks: "Great,
 * 3, Stopped Diapason, 8, wood". Its rows become headings of divisions and lines of stops. Cells are parted by tabs,
 * bars, semicolons or commas; the head of the table says which column is which. Where none is for divisions, but one
 * for remarks, divisions are headed by rows of their own.
 *
 * @param sign what parts the cells
 * @param columns what each column holds
 */
record StopTable(char sign, List<StopTable.Column> columns) {

    /** What a column holds. */
    enum Column {
        DIVISION("column division"),
        STOP("column stop"),
        PITCH("column pitch"),
        RANKS("column ranks"),
        /** Running numbers and counts of pipes, which say nothing of a stop that is kept. */
        COUNT("column count"),
        REMARK("column remark");

        private final String words;

        Column(String words) {
            this.words = words;
        }

        private static Optional<Column> of(String head) {
            return Stream.of(values())
                    .filter(each -> WordList.of(each.words).isAll(Spelling.words(head)))
                    .findFirst();
        }
    }

    private static final String SIGNS = "\t|;,";
    private static final String TABULAR = "\t|";

    StopTable {
        columns = List.copyOf(columns);
    }

    /** The lines with the rows of such tables spelled out; the same lines where there are none. */
    static List<PageText.Numbered> spelledOut(List<PageText.Numbered> lines) {
        List<PageText.Numbered> spelled = new ArrayList<>();
        Optional<StopTable> table = Optional.empty();
        String division = "";
        boolean any = false;
        for (PageText.Numbered line : lines) {
            Optional<StopTable> begins = PageText.isRead(line.text()) ? of(line.text()) : Optional.empty();
            List<String> cells =
                    table.isPresent() && begins.isEmpty() ? table.get().row(line.text()) : List.of();
            if (begins.isPresent()) {
                table = begins;
                division = "";
                any = true;
            } else if (cells.isEmpty()) {
                spelled.add(line);
            } else {
                String named = table.get().first(Column.DIVISION, cells);
                boolean isPart = SectionWord.read(named + ":", "").isPresent();
                if (!named.isEmpty() && !named.equals(division)) {
                    division = named;
                    spelled.add(new PageText.Numbered(line.number(), isPart ? named + ":" : named));
                }
                spelled.add(new PageText.Numbered(line.number(), table.get().text(cells, isPart)));
            }
        }
        return any ? List.copyOf(spelled) : lines;
    }

    /** The table whose head a line is. */
    private static Optional<StopTable> of(String line) {
        return SIGNS.chars()
                .filter(sign -> line.indexOf(sign) >= 0)
                .mapToObj(sign -> of(line, (char) sign))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<StopTable> of(String line, char sign) {
        List<Column> columns = new ArrayList<>();
        for (String head : cells(line, sign)) {
            Optional<Column> column = Column.of(head);
            if (column.isEmpty()) {
                return Optional.empty();
            }
            columns.add(column.get());
        }
        boolean isHeaded = columns.contains(Column.REMARK) && TABULAR.indexOf(sign) >= 0;
        boolean once = Stream.of(Column.DIVISION, Column.STOP).allMatch(each -> {
            long count = columns.stream().filter(each::equals).count();
            return count == 1 || (count == 0 && isHeaded && each == Column.DIVISION);
        });
        return once && columns.contains(Column.PITCH) ? Optional.of(new StopTable(sign, columns)) : Optional.empty();
    }

    /** The cells of a row; none where a line is no row of the table. */
    private List<String> row(String line) {
        List<String> cells = PageText.isRead(line) && line.indexOf(sign) >= 0 ? cells(line, sign) : List.of();
        return cells.size() > columns.indexOf(Column.STOP)
                        && !first(Column.STOP, cells).isEmpty()
                ? cells
                : List.of();
    }

    /** The cells of a line, parted by a sign that does not stand in quotes; bars may stand at its ends too. */
    private static List<String> cells(String line, char sign) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char each = line.charAt(i);
            boolean parts = each == sign && !quoted;
            quoted ^= each == '"' && (quoted || cell.toString().isBlank());
            if (parts) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(each);
            }
        }
        cells.add(cell.toString());
        if (sign == '|' && cells.get(0).isBlank()) {
            cells.remove(0);
        }
        if (sign == '|' && !cells.isEmpty() && cells.get(cells.size() - 1).isBlank()) {
            cells.remove(cells.size() - 1);
        }
        return cells.stream().map(StopTable::unquoted).toList();
    }

    private static String unquoted(String cell) {
        String text = cell.strip();
        boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
        return quoted ? text.substring(1, text.length() - 1).strip() : text;
    }

    private String first(Column column, List<String> cells) {
        int at = columns.indexOf(column);
        return at >= 0 && at < cells.size() ? cells.get(at) : "";
    }

    /** A row as a line of a list; among couplers a figure alone is no pitch of pipes. */
    private String text(List<String> cells, boolean isPart) {
        List<String> name = Arrays.asList(first(Column.STOP, cells).split("\\s*,\\s*", 2));
        boolean numbered = !columns.contains(Column.DIVISION)
                && columns.get(0) == Column.COUNT
                && !cells.get(0).isEmpty();
        StringBuilder text = new StringBuilder(numbered ? cells.get(0) + ". " : "");
        text.append(isPart ? first(Column.STOP, cells) : name.get(0));
        List<String> remarks = new ArrayList<>(isPart ? List.of() : name.subList(1, name.size()));
        for (int i = 0; i < Math.min(cells.size(), columns.size()); i++) {
            String cell = cells.get(i);
            if (!cell.isEmpty() && !cell.equals("-")) {
                switch (columns.get(i)) {
                    case PITCH -> text.append(' ').append(cell).append(isPart || !isBare(cell) ? "" : "'");
                    case RANKS -> text.append(numeral(cell));
                    case REMARK -> remarks.add(cell);
                    case DIVISION, STOP, COUNT -> {}
                }
            }
        }
        remarks.forEach(each -> text.append(" (").append(each).append(')'));
        return text.toString();
    }

    /** "8" and "2 2/3". */
    private static boolean isBare(String pitch) {
        Line line = new Line(pitch);
        return Pitches.isBare(line, 0) && line.size() == 1;
    }

    /** A number of ranks; "" for one, which goes without saying. */
    private static String numeral(String cell) {
        Line line = new Line(cell);
        int count = line.size() == 1 && line.at(0).isWhole(2) ? line.at(0).count() : 0;
        return count == 1 ? "" : " " + (count > 0 && count <= Stop.MOST_RANKS ? Stop.NUMERALS.get(count - 1) : cell);
    }
}
