package versewind.organ;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The pistons of an instrument. Many instruments have none.
 *
 * @param generals number of general pistons, which set the whole organ
 * @param divisionals number of divisional pistons by the division's name, in the order of the divisions
 * @param memoryLevels number of memory levels; 0 without pistons
 * @param setsCouplers whether a divisional also sets the couplers of its keyboard
 */
public record Pistons(int generals, Map<String, Integer> divisionals, int memoryLevels, boolean setsCouplers) {

    /** An instrument without pistons. */
    public static final Pistons NONE = new Pistons(0, Map.of(), 0);

    public Pistons {
        divisionals = Collections.unmodifiableMap(new LinkedHashMap<>(divisionals));
        if (generals < 0 || memoryLevels < 0) {
            throw new IllegalArgumentException("pistons and memory levels are counted from 0");
        }
        if (divisionals.values().stream().anyMatch(count -> count < 1)) {
            throw new IllegalArgumentException("a division with divisional pistons has one at least");
        }
        boolean any = generals > 0 || !divisionals.isEmpty();
        if (any && memoryLevels < 1) {
            throw new IllegalArgumentException("pistons hold one memory level at least");
        }
        if (!any && memoryLevels > 0) {
            throw new IllegalArgumentException("memory levels need pistons");
        }
    }

    /** Pistons whose divisionals set no couplers. */
    public Pistons(int generals, Map<String, Integer> divisionals, int memoryLevels) {
        this(generals, divisionals, memoryLevels, false);
    }

    /** True if there are any pistons. */
    public boolean any() {
        return memoryLevels > 0;
    }
}
