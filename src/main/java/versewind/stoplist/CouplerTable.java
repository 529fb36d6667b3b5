package versewind.stoplist;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table of couplers, with a column for each pitch: below the head "16' 8' 4'" rows such as "Swell to Great x x -".
 * Its rows become lines that name the pitches.
 */
final class CouplerTable {

    private static final Set<String> PITCHES = Set.of("16", "8", "4");
    private static final String SIGNS = "*+\u2022\u25cf\u2713\u2714";
    private static final String BETWEEN = "\\s{2,}|\\t|\\|";

    private static final Pattern CELL = Pattern.compile("[^\\s|]+(?: [^\\s|]+)*");

    private CouplerTable() {}

    /** The lines with the rows of such tables spelled out; the same lines where there are none. */
    static List<PageText.Numbered> spelledOut(List<PageText.Numbered> lines) {
        List<PageText.Numbered> spelled = new ArrayList<>();
        List<String> head = List.of();
        List<Integer> columns = List.of();
        boolean any = false;
        for (PageText.Numbered line : lines) {
            List<String> cells = cells(line.text());
            List<String> filled = filled(line.text(), cells, columns);
            String row = head.isEmpty() || filled.size() != head.size() + 1 ? "" : row(filled, head);
            boolean begins = row.isEmpty() && isHead(cells);
            List<Integer> centres = begins ? centres(line.text()) : List.of();
            columns = begins ? centres.subList(centres.size() - pitches(cells).size(), centres.size()) : columns;
            head = begins ? pitches(cells) : row.isEmpty() && !cells.isEmpty() ? List.of() : head;
            any |= !row.isEmpty();
            spelled.add(row.isEmpty() ? line : new PageText.Numbered(line.number(), row));
        }
        return any ? withoutHeads(spelled) : lines;
    }

    /** Without the heads above such rows, which name no coupler. */
    private static List<PageText.Numbered> withoutHeads(List<PageText.Numbered> lines) {
        return lines.stream().filter(each -> !isHead(cells(each.text()))).toList();
    }

    private static List<String> cells(String line) {
        return Stream.of(line.split(BETWEEN, -1))
                .map(String::strip)
                .filter(each -> !each.isEmpty())
                .toList();
    }

    /** The cells of a row in which blanks stand for signs, each below the head of its column. */
    private static List<String> filled(String line, List<String> cells, List<Integer> columns) {
        List<Integer> centres = centres(line);
        if (cells.size() < 2 || cells.size() > columns.size() || cells.size() != centres.size()) {
            return cells;
        }
        List<String> filled = new ArrayList<>(Collections.nCopies(columns.size() + 1, "-"));
        String[] barred = Spelling.trimmed(line, "|").split("[|\t]", -1);
        if (barred.length > 1) {
            for (int i = 0; i < Math.min(barred.length, filled.size()); i++) {
                filled.set(i, barred[i].isBlank() ? "-" : barred[i].strip());
            }
            return barred.length > filled.size() ? cells : filled;
        }
        for (int i = 0; i < cells.size(); i++) {
            int centre = centres.get(i);
            List<Integer> near = columns.stream()
                    .sorted(Comparator.comparingInt(each -> Math.abs(each - centre)))
                    .toList();
            filled.set(i == 0 ? 0 : 1 + columns.indexOf(near.get(0)), cells.get(i));
        }
        return filled;
    }

    /** Where the middle of each cell stands. */
    private static List<Integer> centres(String line) {
        return CELL.matcher(line)
                .results()
                .map(cell -> (cell.start() + cell.end()) / 2)
                .toList();
    }

    private static boolean isHead(List<String> cells) {
        List<String> pitches = pitches(cells);
        return pitches.size() > 1
                && PITCHES.containsAll(pitches)
                && Set.copyOf(pitches).size() == pitches.size();
    }

    /** The pitches of a head; what stands before them may name the column of the couplers. */
    private static List<String> pitches(List<String> cells) {
        boolean named = !cells.isEmpty() && WordList.of("part couplers").in(cells.get(0));
        return cells.stream()
                .skip(named ? 1 : 0)
                .map(each -> new Line(each))
                .map(each -> each.is(0) ? each.at(0).text() : "")
                .toList();
    }

    /** A row as a line of couplers; "" where its cells are no marks. */
    private static String row(List<String> cells, List<String> head) {
        List<String> marks = cells.subList(1, cells.size());
        boolean all = marks.stream().allMatch(each -> isNone(each) || isMark(each) || isOff(each));
        String pitches = IntStream.range(0, head.size())
                .filter(i -> all && !isNone(marks.get(i)))
                .mapToObj(i -> isOff(marks.get(i)) ? "UO" : head.get(i))
                .collect(Collectors.joining(", "));
        Line name = new Line(cells.get(0));
        int to = IntStream.range(1, name.size() - 1)
                .filter(i -> name.is(i, "coupled to"))
                .findFirst()
                .orElse(0);
        boolean own = to > 0 && name.part(0, to).equals(name.part(to + 1, name.size()));
        return pitches.isEmpty() ? "" : own ? name.part(0, to) + ": " + pitches : cells.get(0) + " " + pitches;
    }

    private static boolean isNone(String mark) {
        return mark.chars().noneMatch(each -> Character.isLetterOrDigit(each) || SIGNS.indexOf(each) >= 0);
    }

    private static boolean isMark(String mark) {
        return WordList.of("mark").isAll(Spelling.words(mark)) || (mark.length() == 1 && SIGNS.contains(mark));
    }

    private static boolean isOff(String mark) {
        return WordList.of("unison off").isAll(Spelling.words(mark));
    }
}
