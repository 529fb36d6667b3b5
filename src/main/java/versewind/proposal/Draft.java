package versewind.proposal;

import java.util.Comparator;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;

/**
 * A registration and how it is played.
 *
 * @param registration what is drawn; boxes that nobody hears stand open
 * @param hands how it is played
 */
record Draft(Registration registration, HandsAndFeet hands) {

    /** An order of no meaning but always the same, for drafts of one score: fewer knobs first. */
    static final Comparator<Draft> ORDER = Comparator.<Draft>comparingInt(
                    draft -> draft.stops().size() + draft.couplers().size())
            .thenComparing(
                    Draft::hands,
                    Comparator.comparing(HandsAndFeet::layout)
                            .thenComparingInt(HandsAndFeet::right)
                            .thenComparingInt(HandsAndFeet::left))
            .thenComparing(Draft::stops, Draft::compare)
            .thenComparing(Draft::couplers, Draft::compare)
            .thenComparing(draft -> draft.registration.boxes().toString());

    /** Drafts that differ only in their hands are few. */
    @Override
    public int hashCode() {
        return registration.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Draft draft && registration.equals(draft.registration) && hands.equals(draft.hands);
    }

    private static int compare(IndexSet one, IndexSet other) {
        IndexSet mine = one.minus(other);
        IndexSet its = other.minus(one);
        return Integer.compare(lowest(mine), lowest(its));
    }

    private static int lowest(IndexSet set) {
        return set.stream().findFirst().orElse(Integer.MAX_VALUE);
    }

    IndexSet stops() {
        return registration.stops();
    }

    IndexSet couplers() {
        return registration.couplers();
    }

    Draft with(Registration other) {
        return new Draft(other, hands);
    }

    Draft withStops(IndexSet others) {
        return with(registration.withStops(others));
    }

    Draft withBox(int division, BoxPosition position) {
        return with(registration.withBox(division, position));
    }

    Draft withHands(HandsAndFeet others) {
        return new Draft(registration, others);
    }

    /** How many stops and couplers differ; another way to play it counts as one more. */
    int knobsFrom(Draft other) {
        return differing(stops(), other.stops())
                + differing(couplers(), other.couplers())
                + (hands.equals(other.hands) ? 0 : 1);
    }

    private static int differing(IndexSet one, IndexSet other) {
        return one.minus(other).size() + other.minus(one).size();
    }
}
