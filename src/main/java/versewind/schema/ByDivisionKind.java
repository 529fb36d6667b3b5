package versewind.schema;

import java.util.LinkedHashMap;
import java.util.Map;

/** Numbers of divisional pistons by division. */
final class ByDivisionKind extends Kind<Map<String, Integer>> {
    ByDivisionKind() {
        super("Enter ", "a whole number from 1");
    }

    @Override
    Map<String, Integer> read(Found found, OrganNames names) throws Refused {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Map.Entry<String, Found> each : found.entries("").entrySet()) {
            InstrumentFields.DIVISION_REF.require(each.getValue(), each.getKey(), names);
            counts.put(each.getKey(), each.getValue().whole(1, InstrumentFields.MOST, remedy()));
        }
        return counts;
    }

    @Override
    Object plain(Map<String, Integer> counts, OrganNames names) {
        Map<String, Integer> ordered = new LinkedHashMap<>();
        names.divisions().stream()
                .filter(counts::containsKey)
                .forEach(division -> ordered.put(division, counts.get(division)));
        return ordered;
    }
}
