package versewind.stoplist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import versewind.organ.Footage;

/**
 * Divisions side by side whose cells were pasted one a line, row by row, with the headings first and without running
 * numbers. Empty cells are lost, so how long each column is follows from the order of stops within a division: flues
 * from low to high, compound stops, reeds. Common practice, no source.
 */
final class CellColumns {

    private static final int MOST_COLUMNS = 4;
    private static final int MOST_CELLS = 100;
    /** Disorder weighs so many times more than keyboards of different size. */
    private static final int ORDER = 100;

    private static final double LOW_FT = 16;

    private final List<PageText.Numbered> headings;
    private final List<PageText.Numbered> cells;
    private final List<Optional<ReadStop>> stops;
    private int[] best = {};
    private int least = Integer.MAX_VALUE;

    private CellColumns(List<PageText.Numbered> headings, List<PageText.Numbered> cells) {
        this.headings = headings;
        this.cells = cells;
        this.stops = cells.stream().map(cell -> stop(cell.text())).toList();
    }

    /** The lines with every cell below the heading of its column; the same lines where there are no such cells. */
    static List<PageText.Numbered> sorted(List<PageText.Numbered> lines, String language) {
        List<PageText.Numbered> filled =
                lines.stream().filter(each -> !each.text().isBlank()).toList();
        Predicate<PageText.Numbered> heads = each -> DivisionHeading.read(each.text(), language)
                .filter(head -> head.inline().isEmpty())
                .isPresent();
        int first = (int) filled.stream().takeWhile(heads.negate()).count();
        int end = first + (int) filled.stream().skip(first).takeWhile(heads).count();
        int last = end
                + (int) filled.stream()
                        .skip(end)
                        .takeWhile(each -> stop(each.text()).isPresent() && !heads.test(each))
                        .count();
        int columns = end - first;
        if (columns < 2 || columns > MOST_COLUMNS || last - end < 2 * columns || last - end > MOST_CELLS) {
            return lines;
        }
        List<PageText.Numbered> sorted = new ArrayList<>(filled.subList(0, first));
        sorted.addAll(new CellColumns(filled.subList(first, end), filled.subList(end, last)).byColumn(language));
        sorted.addAll(filled.subList(last, filled.size()));
        return List.copyOf(sorted);
    }

    private static Optional<ReadStop> stop(String text) {
        return StopClassifier.of(text, 0, ListStyle.PLAIN, NameContext.Keyboard.MANUAL)
                        instanceof StopClassifier.OneStop one
                ? Optional.of(one.stop())
                : Optional.empty();
    }

    private List<PageText.Numbered> byColumn(String language) {
        boolean[] pedal = new boolean[headings.size()];
        for (int i = 0; i < pedal.length; i++) {
            pedal[i] = DivisionHeading.read(headings.get(i).text(), language)
                    .filter(head -> head.word().isPedal())
                    .isPresent();
        }
        choose(new int[headings.size()], 0, cells.size(), pedal);
        List<PageText.Numbered> sorted = new ArrayList<>();
        List<List<Integer>> columns = columns(best);
        for (int i = 0; i < headings.size(); i++) {
            sorted.add(headings.get(i));
            columns.get(i).forEach(cell -> sorted.add(cells.get(cell)));
        }
        return sorted;
    }

    /** Tries all lengths of the columns from one on, and keeps those with the least disorder. */
    private void choose(int[] lengths, int column, int left, boolean[] pedal) {
        if (column == lengths.length - 1) {
            lengths[column] = left;
            List<List<Integer>> columns = columns(lengths);
            IntSummaryStatistics manuals = IntStream.range(0, lengths.length)
                    .filter(i -> !pedal[i])
                    .map(i -> lengths[i])
                    .summaryStatistics();
            int disorder = manuals.getMax()
                    - manuals.getMin()
                    + ORDER
                            * IntStream.range(0, lengths.length)
                                    .map(i -> disorder(columns.get(i), pedal[i]))
                                    .sum();
            if (disorder < least) {
                least = disorder;
                best = Arrays.copyOf(lengths, lengths.length);
            }
            return;
        }
        for (int length = left - (lengths.length - 1 - column); length >= 1; length--) {
            lengths[column] = length;
            choose(lengths, column + 1, left - length, pedal);
        }
    }

    /** Which cells stand in each column, if the columns have so many. */
    private List<List<Integer>> columns(int[] lengths) {
        List<List<Integer>> columns = new ArrayList<>();
        for (int length : lengths) {
            columns.add(new ArrayList<>(length));
        }
        int cell = 0;
        for (int row = 0; cell < cells.size(); row++) {
            for (int i = 0; i < lengths.length; i++) {
                if (row < lengths[i]) {
                    columns.get(i).add(cell++);
                }
            }
        }
        return columns;
    }

    /** How often a stop stands where its pitch and kind would have it stand earlier. */
    private int disorder(List<Integer> column, boolean isPedal) {
        int disorder = 0;
        for (int i = 0; i < column.size(); i++) {
            ReadStop stop = stops.get(column.get(i)).orElseThrow();
            boolean low = feet(stop) >= LOW_FT || WordList.of("name of pedal").in(stop.name());
            disorder += isPedal && i == 0 && !low ? 2 : 0;
            disorder += !isPedal && low && (i > 0 || feet(stop) < LOW_FT) ? 1 : 0;
            if (i > 0) {
                ReadStop before = stops.get(column.get(i - 1)).orElseThrow();
                int step = group(stop) - group(before);
                disorder += step < 0 || (step == 0 && feet(stop) > feet(before)) ? 2 : 0;
            }
        }
        return disorder;
    }

    private static int group(ReadStop stop) {
        return stop.family().isReed() ? 2 : stop.family().isCompound() ? 1 : 0;
    }

    private static double feet(ReadStop stop) {
        return stop.family().isCompound()
                ? 0
                : stop.footage().map(Footage::feet).orElse(0.0);
    }
}
