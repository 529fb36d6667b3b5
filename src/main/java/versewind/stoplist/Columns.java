package versewind.stoplist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Follows the parts of a list that stand side by side, and gives every group of a row to the part above it. */
final class Columns {

    private static final int TOLERANCE = 3;

    private final LineReader reading;
    private final List<Grid.Row> rows;
    private final List<Column> columns = new ArrayList<>();
    private Section current = Section.BEFORE;

    private record Column(int x, Section section) {}

    Columns(LineReader reading, List<Grid.Row> rows) {
        this.reading = reading;
        this.rows = rows;
    }

    void read() {
        for (int i = 0; i < rows.size(); i++) {
            row(i);
        }
    }

    private void row(int index) {
        Grid.Row row = rows.get(index);
        List<Grid.Group> groups = row.groups();
        long headings =
                groups.stream().filter(group -> reading.isHeading(group.text())).count();
        if (headings >= 2) {
            columns.clear();
            List<Integer> places = places(index);
            for (int i = 0; i < groups.size(); i++) {
                Section section = reading.text(groups.get(i).text(), row.number(), current);
                if (!isTitle(groups.get(i)) || row.table()) {
                    columns.add(new Column(places.get(i), section));
                }
            }
            return;
        }
        boolean alone = groups.size() == 1 && (reading.isHeading(groups.get(0).text()) || isNamed(index));
        if (alone
                && row.afterBlank()
                && (columns.isEmpty() || groups.get(0).x() < columns.get(0).x() + TOLERANCE || isCentred(index))) {
            columns.clear();
        }
        if (row.missing() > 0) {
            String text = groups.stream().map(Grid.Group::text).collect(Collectors.joining(" "));
            String why = "fewer entries than divisions side by side: it is unclear to which they belong";
            reading.lines().leaveOut(row.number(), text, why, Unread.Weight.DOUBT);
        }
        for (int i = 0; i < groups.size(); i++) {
            group(index, i);
        }
    }

    /** "feet" beside the heading of a division: the figures below it are those of its stops. */
    private boolean isTitle(Grid.Group group) {
        return !reading.isHeading(group.text())
                && reading.readings().part(group.text()).isPresent();
    }

    /** True if the row after this one goes on in a single column, or in columns none of which begins below it. */
    private boolean isCentred(int index) {
        int x = rows.get(index).groups().get(0).x();
        List<Grid.Group> next = index + 1 < rows.size() ? rows.get(index + 1).groups() : List.of();
        return next.size() == 1
                || (!next.isEmpty()
                        && next.get(0).x() < x
                        && next.stream().noneMatch(group -> Math.abs(group.x() - x) < 2 * TOLERANCE));
    }

    private void group(int index, int place) {
        Grid.Row row = rows.get(index);
        Grid.Group group = row.groups().get(place);
        boolean heading = reading.isHeading(group.text());
        if (columns.isEmpty() && heading && place > 0) {
            columns.add(new Column(row.groups().get(0).x(), current));
            columns.add(new Column(group.x(), current));
        }
        if (columns.isEmpty()) {
            current = isNamed(index)
                    ? reading.openNamed(group.text(), row.number())
                    : reading.text(group.text(), row.number(), current);
            return;
        }
        int column = columnAt(group.x());
        if (heading && group.x() > columns.get(column).x() + 2 * TOLERANCE && place > 0) {
            column++;
            columns.add(column, new Column(group.x(), current));
        }
        Section section =
                reading.text(group.text(), row.number(), columns.get(column).section());
        columns.set(column, new Column(columns.get(column).x(), section));
        current = section;
    }

    private int columnAt(int x) {
        return IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).x() <= x + (isTable() ? 0 : TOLERANCE))
                .max()
                .orElse(0);
    }

    private boolean isTable() {
        return columns.size() > 1 && columns.get(columns.size() - 1).x() < 4 * columns.size();
    }

    /** True if a row alone between blank line and stops gives a division a name of its own. */
    private boolean isNamed(int index) {
        Grid.Row row = rows.get(index);
        boolean shape =
                row.groups().size() == 1 && row.afterBlank() && index + 1 < rows.size() && current.division() >= 0;
        return shape
                && !reading.isHeading(row.groups().get(0).text())
                && reading.isPitchedStop(rows.get(index + 1).groups().get(0).text())
                && reading.mayNameDivision(row.groups().get(0).text());
    }

    /**
     * Where the columns under a row of headings begin: where the stops below them begin, if there are as many places.
     */
    private List<Integer> places(int index) {
        List<Grid.Group> headings = rows.get(index).groups();
        TreeMap<Integer, Integer> counts = new TreeMap<>();
        for (int i = index + 1; i < rows.size(); i++) {
            Grid.Row row = rows.get(i);
            if (row.groups().stream()
                            .filter(group -> reading.isHeading(group.text()))
                            .count()
                    >= 2) {
                break;
            }
            if (row.groups().size() > 1 || row.groups().get(0).x() > 0) {
                row.groups().forEach(group -> counts.merge(group.x(), 1, Integer::sum));
            }
        }
        List<Integer> clusters = new ArrayList<>();
        for (int x : counts.keySet()) {
            if (clusters.isEmpty()
                    || x - clusters.get(clusters.size() - 1) > (rows.get(index).table() ? 0 : TOLERANCE)) {
                clusters.add(x);
            }
        }
        if (clusters.size() == headings.size() - 1 && headings.get(0).x() < clusters.get(0)) {
            clusters.add(0, headings.get(0).x());
        }
        List<Integer> own = headings.stream().map(Grid.Group::x).toList();
        return clusters.size() == headings.size()
                ? clusters.stream().sorted(Comparator.naturalOrder()).toList()
                : own;
    }
}
