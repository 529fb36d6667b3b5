package versewind.stoplist;

import java.util.Set;
import java.util.stream.Stream;

/** Scale numbers, by which Italian, English and American lists tell the ranks of a mixture: "15.19.22". */
final class Intervals {

    private static final Set<String> FIRST =
            Set.of("1", "5", "8", "12", "15", "17", "19", "21", "22", "24", "26", "29", "33", "36");
    private static final Set<String> NEXT = Set.of(
            "5", "8", "10", "12", "15", "17", "19", "21", "22", "24", "26", "28", "29", "31", "33", "36", "40", "43");

    private Intervals() {}

    /** Whether figures, of which a point or comma may part two, can begin scale numbers. */
    static boolean areFirst(String figures) {
        String[] numbers = figures.split("[.,]", -1);
        return FIRST.contains(numbers[0]) && Stream.of(numbers).skip(1).allMatch(NEXT::contains);
    }

    /** Whether figures can go on with scale numbers. */
    static boolean areNext(String figures) {
        return Stream.of(figures.split("[.,]", -1)).allMatch(NEXT::contains);
    }
}
