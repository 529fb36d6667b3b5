package versewind.stoplist;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * The pistons of a list.
 *
 * @param generals number of general pistons
 * @param divisionals number of divisional pistons by the division's name
 * @param levels number of memory levels; 0 where the list does not say
 * @param lines where this stands, counted from 1
 */
public record ReadPistons(int generals, Map<String, Integer> divisionals, int levels, Set<Integer> lines) {

    /** No pistons. */
    static final ReadPistons NONE = new ReadPistons(0, Map.of(), 0, Set.of());

    public ReadPistons {
        divisionals = Collections.unmodifiableMap(new LinkedHashMap<>(divisionals));
        lines = Set.copyOf(lines);
    }

    /** True if there are any. */
    public boolean any() {
        return generals > 0 || !divisionals.isEmpty();
    }
}
