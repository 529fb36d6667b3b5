package versewind.store;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Comma-separated values. Source: RFC 4180.
 *
 * <p>A cell that a spreadsheet would take for a formula gets an apostrophe before it when it is written, and loses it
 * when it is read: one whose first character, after blanks and apostrophes, is {@code = + - @} or the wide form of one
 * of these, or that begins with a tab or a line end.
 *
 * <p>Differences: semicolons and tabs are read for commas where the first row has them, since spreadsheets of some
 * countries write these; a line end alone is read for both characters; a quotation mark within a cell that does not
 * begin with one is itself.
 */
final class Csv {

    private static final Pattern FORMULA =
            Pattern.compile("(?:[\\s']*[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20]|'*[\\t\\r\\n]).*", Pattern.DOTALL);
    private static final Pattern SPECIAL = Pattern.compile("[,;\\t\"\\r\\n]");
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}&&[^\\t\\r\\n]]");
    private static final String LINE_END = "\r\n";

    private static final String QUOTES =
            "a cell begins with a quotation mark but does not end with one. Close it, and double the marks inside";

    /**
     * A row.
     *
     * @param line the line it begins on, counted from 1
     * @param cells from left to right, without what makes them harmless
     */
    record Row(int line, List<String> cells) {}

    private Csv() {}

    /**
     * Writes a row with its line end. Characters that are not seen become question marks: they could disturb a
     * terminal or hide what a row says.
     */
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
        List<Row> rows = new ArrayList<>();
        int line = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format(text))) {
            // looking for the next row reads it, and so moves the parser's line
            for (Iterator<CSVRecord> each = parser.iterator(); each.hasNext(); ) {
                rows.add(new Row(line, each.next().stream().map(Csv::value).toList()));
                line = (int) parser.getCurrentLineNumber() + 1;
            }
            return rows;
        } catch (IOException | UncheckedIOException malformed) {
            throw BadRows.at(line, QUOTES);
        }
    }

    private static CSVFormat format(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char separator = first.contains(",") ? ',' : first.contains(";") ? ';' : first.contains("\t") ? '\t' : ',';
        return CSVFormat.RFC4180.builder().setDelimiter(separator).get();
    }
}
