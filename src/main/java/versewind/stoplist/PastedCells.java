package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Tables that were pasted cell by cell, one cell a line: names with their pitches and numbers below or above them are
 * put into one line again.
 */
final class PastedCells {

    private static final int FEWEST = 4;
    private static final int MOST_DIGITS = 4;

    private final List<PageText.Numbered> lines;

    private PastedCells(List<PageText.Numbered> lines) {
        this.lines = lines;
    }

    /** The lines of a page, those of cells joined by tabs. */
    static List<PageText.Numbered> joined(List<PageText.Numbered> lines) {
        List<PageText.Numbered> filled =
                lines.stream().filter(each -> !each.text().isBlank()).toList();
        long figures = filled.stream()
                .filter(each -> isFigures(each.text()) || isParticulars(each.text()))
                .count();
        List<PageText.Numbered> rows =
                figures < FEWEST || figures * 4 < filled.size() ? lines : new PastedCells(filled).inColumns();
        return rows == lines ? lines : new PastedCells(rows).joined();
    }

    /**
     * Cells of divisions side by side, told apart by their running numbers: of "1 Principal 5 Gedackt 2 Oktave" the
     * numbers from 5 on belong to the second column. Where there are none such, the lines as they are.
     */
    private List<PageText.Numbered> inColumns() {
        int headings = 0;
        while (headings < lines.size() && number(lines.get(headings).text()).isEmpty()) {
            headings++;
        }
        int next = headings + 1;
        while (next < lines.size()
                && (!Spelling.hasWord(lines.get(next).text())
                        || DivisionHeading.read(lines.get(next).text(), "").isEmpty())) {
            next++;
        }
        if (headings < lines.size() && next < lines.size()) {
            List<PageText.Numbered> rows = new ArrayList<>(new PastedCells(lines.subList(0, next)).inColumns());
            rows.addAll(new PastedCells(lines.subList(next, lines.size())).inColumns());
            return rows;
        }
        TreeMap<Integer, List<PageText.Numbered>> columns = new TreeMap<>();
        List<PageText.Numbered> current = new ArrayList<>();
        for (PageText.Numbered each : lines.subList(headings, lines.size())) {
            OptionalInt number = number(each.text());
            if (number.isPresent()) {
                Integer column = columns.size() < headings ? null : columns.floorKey(number.getAsInt());
                current =
                        columns.computeIfAbsent(column == null ? number.getAsInt() : column, key -> new ArrayList<>());
            }
            current.add(each);
        }
        boolean several = headings > 1 && columns.size() == headings && columns.firstKey() == 1;
        boolean sorted = columns.size() < 2 || columns.higherKey(columns.firstKey()) == 2;
        if (!several || sorted) {
            return lines;
        }
        List<PageText.Numbered> rows = new ArrayList<>();
        int heading = 0;
        for (List<PageText.Numbered> column : columns.values()) {
            rows.add(lines.get(heading++));
            rows.addAll(column);
        }
        return rows;
    }

    /** True if a line holds pitches, ranks or numbers alone. */
    private static boolean isFigures(String text) {
        Line line = new Line(text);
        boolean pair = line.size() == 3
                && line.is(0, Token.Kind.ROMAN)
                && line.at(0).count() > line.at(2).count();
        return line.size() > 0
                && !pair
                && (Segments.figures(line, 0) == line.size() || number(text).isPresent());
    }

    /** "8 feet, 54 pipes" and "8 voet, vanaf c": what says more of the stop in the line before. */
    private static boolean isParticulars(String text) {
        Line line = new Line(text);
        boolean begins = line.size() > 0
                && Pitches.marked(line, 0) + RankCount.marked(line, 0).length() > 0;
        return begins
                && Lexicon.get().known(line.letters(), NameContext.NONE).isEmpty()
                && Lexicon.get()
                        .known(StopLine.of(text, ListStyle.PLAIN).name(), NameContext.NONE)
                        .isEmpty();
    }

    /** "12" and "12.". */
    private static OptionalInt number(String text) {
        Line line = new Line(text);
        boolean number = line.is(0)
                && line.at(0).isWhole(MOST_DIGITS)
                && (line.size() == 1 || (line.size() == 2 && line.isSign(1, ".")));
        return number ? OptionalInt.of(Integer.parseInt(line.at(0).text())) : OptionalInt.empty();
    }

    private List<PageText.Numbered> joined() {
        List<PageText.Numbered> rows = new ArrayList<>();
        boolean numbered = isNumbered();
        int last = 0;
        String waiting = "";
        for (PageText.Numbered each : lines) {
            boolean figures = isFigures(each.text()) || isParticulars(each.text());
            OptionalInt number = number(each.text());
            boolean runs = numbered && figures && number.isPresent() && number.getAsInt() == last + 1;
            if (runs) {
                last++;
                waiting = each.text().strip() + "\t";
            } else if (figures && !rows.isEmpty() && waiting.isEmpty()) {
                PageText.Numbered row = rows.remove(rows.size() - 1);
                rows.add(new PageText.Numbered(
                        row.number(),
                        row.text()
                                + (isFigures(each.text()) ? "\t" : " ")
                                + each.text().strip()));
            } else if (!each.text().isBlank() || waiting.isEmpty()) {
                rows.add(new PageText.Numbered(each.number(), waiting + each.text()));
                waiting = "";
            }
        }
        return List.copyOf(rows);
    }

    /** True if running numbers stand before the names, each in a line of its own. */
    private boolean isNumbered() {
        int last = 0;
        int names = 0;
        for (int i = 0; i + 1 < lines.size(); i++) {
            OptionalInt number = number(lines.get(i).text());
            boolean before = !isFigures(lines.get(i + 1).text())
                    && !lines.get(i + 1).text().isBlank();
            last += number.isPresent() && number.getAsInt() == last + 1 && before ? 1 : 0;
            names += isFigures(lines.get(i).text()) && before ? 1 : 0;
        }
        return last >= FEWEST - 1 && last * 2 >= names;
    }
}
