package versewind.store;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Comma-separated values. Source: RFC 4180.
 *
 * <p>A cell that a spreadsheet would take for a formula gets an apostrophe before it when it is written, and loses it when
 * it is read: one whose first character, after blanks and apostrophes, is {@code = + - @} or the wide form of one of these,
 * or that begins with a tab or a line end.
 *
 * <p>Differences: semicolons and tabs are read for commas where the first row has them, since spreadsheets of some countries
 * write these; a line end alone is read for both characters; a quotation mark within a cell that does not begin with one is
 * itself.
 */
final class Csv {

    private static final Pattern FORMULA =
            Pattern.compile("(?:[\\s']*[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20]|'*[\\t\\r\\n]).*", Pattern.DOTALL);
    private static final Pattern SPECIAL = Pattern.compile("[,;\\t\"\\r\\n]");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}&&[^\\t\\r\\n]]");
    private static final String LINE_END = "\r\n";

    /**
     * A row.
     *
     * @param line the line it begins on, counted from 1
     * @param cells from left to right, without what makes them harmless
     */
    record Row(int line, List<String> cells) {}

    private final String text;
    private final char separator;
    private final List<Row> rows = new ArrayList<>();
    private List<String> cells = new ArrayList<>();
    private int at;
    private int line = 1;

    private Csv(String text, char separator) {
        this.text = text;
        this.separator = separator;
    }

    /** Writes a row with its line end. Control characters become question marks, since they could disturb a terminal. */
    static String row(List<String> cells) {
        return cells.stream().map(Csv::cell).collect(Collectors.joining(",", "", LINE_END));
    }

    private static String cell(String value) {
        String shown = CONTROL.matcher(value).replaceAll("?");
        String harmless = FORMULA.matcher(shown).matches() ? "'" + shown : shown;
        boolean isPlain = !SPECIAL.matcher(harmless).find() && harmless.equals(harmless.strip());
        return isPlain ? harmless : '"' + harmless.replace("\"", "\"\"") + '"';
    }

    private static String value(String cell) {
        return cell.startsWith("'") && FORMULA.matcher(cell).matches() ? cell.substring(1) : cell;
    }

    /** Reads all rows. */
    static List<Row> read(String text) throws BadRows {
        String first = text.lines().findFirst().orElse("");
        char separator = first.contains(",") ? ',' : first.contains(";") ? ';' : first.contains("\t") ? '\t' : ',';
        return new Csv(text, separator).rows();
    }

    private List<Row> rows() throws BadRows {
        while (at < text.length()) {
            int begun = line;
            cells = new ArrayList<>();
            cell();
            while (at < text.length() && text.charAt(at) == separator) {
                at++;
                cell();
            }
            lineEnd();
            rows.add(new Row(begun, List.copyOf(cells)));
        }
        return rows;
    }

    private void cell() throws BadRows {
        if (at < text.length() && text.charAt(at) == '"') {
            quoted();
            return;
        }
        int from = at;
        while (at < text.length() && !isEnd(text.charAt(at))) {
            at++;
        }
        cells.add(value(text.substring(from, at)));
    }

    private boolean isEnd(char c) {
        return c == separator || c == '\r' || c == '\n';
    }

    private void quoted() throws BadRows {
        int begun = line;
        StringBuilder cell = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c == '"' && at < text.length() && text.charAt(at) == '"') {
                at++;
            } else if (c == '"') {
                if (at < text.length() && !isEnd(text.charAt(at))) {
                    throw BadRows.at(line, "something stands behind the closing quotation mark of a cell");
                }
                cells.add(value(cell.toString()));
                return;
            }
            if (c == '\n') {
                line++;
            }
            cell.append(c);
        }
        throw BadRows.at(begun, "a cell begins with a quotation mark that is never closed");
    }

    private void lineEnd() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
        }
        line++;
    }
}
