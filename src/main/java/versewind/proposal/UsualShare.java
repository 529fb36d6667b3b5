package versewind.proposal;

import java.util.OptionalDouble;
import versewind.plan.Verse;

/** The share that the organist calls right where people sing as in a verse: that of what is usually drawn for them. */
@FunctionalInterface
public interface UsualShare {

    /** Nothing is usual yet. */
    UsualShare NONE = (verse, people) -> OptionalDouble.empty();

    /**
     * The share, 0 to 1; empty where nothing is usual, or what is usual is not right.
     *
     * @param verse a verse that is sung
     * @param people present
     */
    OptionalDouble of(Verse verse, int people);
}
