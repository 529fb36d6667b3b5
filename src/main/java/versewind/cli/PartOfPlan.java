package versewind.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.plan.Plan;
import versewind.plan.VersePlace;

/**
 * What a report shows of a plan: all of it, a hymn, or a verse.
 *
 * @param hymn index of the only hymn that is shown
 * @param verse the only verse that is shown
 */
record PartOfPlan(Optional<Integer> hymn, Optional<VersePlace> verse) {

    static final PartOfPlan ALL = new PartOfPlan(Optional.empty(), Optional.empty());

    /** Whether a verse is in it. */
    boolean has(VersePlace place) {
        return hasHymn(place.hymn()) && verse.map(place::equals).orElse(true);
    }

    /** Whether a hymn, or a verse of it, is in it. */
    boolean hasHymn(int index) {
        return verse.map(VersePlace::hymn)
                .or(() -> hymn)
                .map(only -> only == index)
                .orElse(true);
    }

    /** Indices of its hymns. */
    List<Integer> hymns(Plan plan) {
        return IntStream.range(0, plan.hymns().size())
                .filter(this::hasHymn)
                .boxed()
                .toList();
    }

    /** The places in a hymn that are in it. */
    List<VersePlace> places(Plan plan, int index) {
        return plan.places(index).stream().filter(this::has).toList();
    }
}
