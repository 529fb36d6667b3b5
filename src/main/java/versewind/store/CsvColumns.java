package versewind.store;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.organ.Nearest;
import versewind.organ.Quoted;

/** The columns of a spreadsheet, found by their names in its first row, in any order. */
final class CsvColumns {
    private final Map<String, Integer> places = new HashMap<>();

    /**
     * Finds the columns.
     *
     * @param head the first row
     * @param known the columns that there may be
     * @param needed those that there must be
     */
    CsvColumns(Csv.Row head, List<String> known, List<String> needed) throws BadRows {
        for (int i = 0; i < head.cells().size(); i++) {
            String name = head.cells().get(i).strip();
            Optional<String> column =
                    known.stream().filter(name::equalsIgnoreCase).findFirst();
            if (column.isEmpty()) {
                throw BadRows.at(
                        head.line(),
                        "there is no column " + Quoted.text(name) + ". "
                                + Nearest.to(name, known)
                                        .map(near -> "Did you mean " + Quoted.text(near) + "?")
                                        .orElse("The columns are " + String.join(", ", known)));
            }
            if (places.put(column.get(), i) != null) {
                throw BadRows.at(head.line(), "the column " + Quoted.text(name) + " stands here twice");
            }
        }
        List<String> missing =
                needed.stream().filter(column -> !places.containsKey(column)).toList();
        if (!missing.isEmpty()) {
            throw BadRows.at(
                    head.line(),
                    (missing.size() == 1
                                    ? "the column " + Quoted.names(missing) + " is"
                                    : "the columns " + Quoted.names(missing) + " are")
                            + " missing");
        }
    }

    /** The cell of a row in a column; blank where there is none. */
    String cell(Csv.Row row, String column) {
        Integer place = places.get(column);
        return place == null || place >= row.cells().size() ? "" : row.cells().get(place);
    }

    /** What is wrong with a row that has cells beyond its columns, so that none of them is surely in its place. */
    Optional<String> excess(Csv.Row row) {
        boolean isExcess = row.cells().stream().skip(places.size()).anyMatch(cell -> !cell.isBlank());
        return isExcess
                ? Optional.of("there are more cells than columns. Put what contains commas or semicolons, such as a"
                        + " registration, in quotation marks.")
                : Optional.empty();
    }
}
