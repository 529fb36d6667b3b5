package versewind.sheet;

import java.util.List;

/**
 * Knobs in one place of the console, or the position of its box.
 *
 * @param where the division's name; blank for couplers, which say themselves where they are
 * @param names what stands on the knobs
 */
public record Placed(String where, List<String> names) {

    public Placed {
        names = List.copyOf(names);
    }
}
