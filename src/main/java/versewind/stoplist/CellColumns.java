package versewind.stoplist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
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
    private final Place[] places;
    private int[] best = {};
    private int least = Integer.MAX_VALUE;

    private CellColumns(List<PageText.Numbered> headings, List<PageText.Numbered> cells) {
        this.headings = headings;
        this.cells = cells;
        this.places = cells.stream()
                .map(cell -> Place.of(stop(cell.text()).orElseThrow()))
                .toArray(Place[]::new);
    }

    /** The lines with every cell below the heading of its column; the same lines where there are no such cells. */
    static List<PageText.Numbered> sorted(List<PageText.Numbered> lines, LineReader.Readings readings) {
        List<PageText.Numbered> filled =
                lines.stream().filter(each -> !each.text().isBlank()).toList();
        Predicate<PageText.Numbered> heads = each -> readings.heading(each.text())
                .filter(head ->
                        head.inline().isEmpty() && Compass.without(each.text()).equals(each.text()))
                .isPresent();
        int first = (int) filled.stream().takeWhile(heads.negate()).count();
        int end = first + (int) filled.stream().skip(first).takeWhile(heads).count();
        int columns = end - first;
        if (columns < 2 || columns > MOST_COLUMNS) {
            return lines;
        }
        int last = end
                + (int) filled.stream()
                        .skip(end)
                        .limit(MOST_CELLS + 1L)
                        .takeWhile(each -> stop(each.text()).isPresent() && !heads.test(each))
                        .count();
        if (last - end < 2 * columns || last - end > MOST_CELLS) {
            return lines;
        }
        List<PageText.Numbered> sorted = new ArrayList<>(filled.subList(0, first));
        sorted.addAll(new CellColumns(filled.subList(first, end), filled.subList(end, last)).byColumn(readings));
        sorted.addAll(filled.subList(last, filled.size()));
        return List.copyOf(sorted);
    }

    private static Optional<ReadStop> stop(String text) {
        return StopClassifier.of(text, 0, ListStyle.PLAIN, NameContext.Keyboard.MANUAL)
                        instanceof StopClassifier.OneStop one
                ? Optional.of(one.stop())
                : Optional.empty();
    }

    private List<PageText.Numbered> byColumn(LineReader.Readings readings) {
        boolean[] pedal = new boolean[headings.size()];
        for (int i = 0; i < pedal.length; i++) {
            pedal[i] = readings.heading(headings.get(i).text())
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
            int disorder = disorder(lengths, pedal);
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

    /** How badly the cells suit columns of these lengths. There may be 150,000 ways, so no list is made. */
    private int disorder(int[] lengths, boolean[] pedal) {
        int most = 0;
        int fewest = Integer.MAX_VALUE;
        for (int i = 0; i < lengths.length; i++) {
            most = pedal[i] ? most : Math.max(most, lengths[i]);
            fewest = pedal[i] ? fewest : Math.min(fewest, lengths[i]);
        }
        int disorder = most == 0 ? 0 : most - fewest;
        Place[] before = new Place[lengths.length];
        int cell = 0;
        for (int row = 0; cell < places.length && disorder < least; row++) {
            for (int i = 0; i < lengths.length; i++) {
                if (row < lengths[i]) {
                    Place place = places[cell++];
                    disorder += ORDER * place.disorder(before[i], pedal[i]);
                    before[i] = place;
                }
            }
        }
        return disorder;
    }

    /**
     * Where a stop belongs in its division.
     *
     * @param group 0 for flues, 1 for compound stops, 2 for reeds
     * @param feet its pitch, ft; 0 for a compound stop or without one
     * @param isLow true if it is of 16 ft or lower, or has a name of the pedal
     */
    private record Place(int group, double feet, boolean isLow) {

        private static Place of(ReadStop stop) {
            boolean compound = stop.family().isCompound();
            double feet = compound ? 0 : stop.footage().map(Footage::feet).orElse(0.0);
            return new Place(
                    stop.family().isReed() ? 2 : compound ? 1 : 0,
                    feet,
                    feet >= LOW_FT || WordList.of("name of pedal").in(stop.name()));
        }

        /** How much speaks against this place below another one, or at the head of a column (null). */
        private int disorder(Place before, boolean isPedal) {
            int disorder = isPedal && before == null && !isLow ? 2 : 0;
            disorder += !isPedal && isLow && (before != null || feet < LOW_FT) ? 1 : 0;
            boolean isEarlier =
                    before != null && (group < before.group || (group == before.group && feet > before.feet));
            return disorder + (isEarlier ? 2 : 0);
        }
    }
}
