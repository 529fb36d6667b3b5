package versewind.stoplist;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Names of which no two are alike but for capitals: one that is taken already gets a number, "Flute (2)". */
final class DistinctNames {

    private final Map<String, Integer> counts = new HashMap<>();

    boolean isTaken(String name) {
        return counts.containsKey(key(name));
    }

    /** Takes a name, with a number where it is taken already, and gives it back. */
    String add(String name) {
        String distinct = name;
        int count = counts.getOrDefault(key(name), 1);
        while (isTaken(distinct)) {
            count++;
            distinct = name + " (" + count + ")";
        }
        counts.put(key(name), count);
        counts.putIfAbsent(key(distinct), 1);
        return distinct;
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
