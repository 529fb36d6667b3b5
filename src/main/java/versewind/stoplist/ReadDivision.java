package versewind.stoplist;

import java.util.List;
import java.util.OptionalInt;

/**
 * A division as it was read.
 *
 * @param name what it is called
 * @param manual the manual it is played from, from the list or else by the usual order; empty for the pedal
 * @param enclosed whether the list says that it stands in a swell box
 * @param keys its compass, if it is given
 * @param stops in the order of the list
 */
public record ReadDivision(String name, OptionalInt manual, boolean enclosed, OptionalInt keys, List<ReadStop> stops) {

    public ReadDivision {
        stops = List.copyOf(stops);
    }

    /** True if it is played with the feet. */
    public boolean isPedal() {
        return manual.isEmpty();
    }
}
