package versewind.agreement;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import versewind.agreement.Fault.Remark;

/** Cases counted by what they break and by the size of the organ, and the first of each in words. */
final class CaseCounts {

    private static final int KEPT = 10;
    private static final int KEPT_OF_ONE_ORGAN = 2;

    private final Map<Row, Map<String, Integer>> counts = new TreeMap<>();
    private final Map<Row, List<String>> cases = new LinkedHashMap<>();
    private final Map<String, Map<String, Integer>> judged = new LinkedHashMap<>();

    /**
     * A line of the table.
     *
     * @param claim what must hold
     * @param kind how it is broken: "bare mixture"
     */
    record Row(Claim claim, String kind) implements Comparable<Row> {

        /** As it stands in the table: "2 step out of order: wrong way". */
        String word() {
            return claim.agreement() + " " + claim.word() + ": " + kind;
        }

        @Override
        public int compareTo(Row other) {
            return word().compareTo(other.word());
        }
    }

    /** So many more of a kind were judged on an organ of a size. */
    synchronized void judged(String what, String size) {
        judged.computeIfAbsent(what, key -> new TreeMap<>()).merge(size, 1, Integer::sum);
    }

    /** How many of a kind were judged. */
    synchronized int judged(String what) {
        return judged.getOrDefault(what, Map.of()).values().stream()
                .mapToInt(Integer::intValue)
                .sum();
    }

    synchronized void broken(Claim claim, String kind, String size, String where) {
        Row row = new Row(claim, kind);
        counts.computeIfAbsent(row, key -> new TreeMap<>()).merge(size, 1, Integer::sum);
        List<String> first = cases.computeIfAbsent(row, key -> new ArrayList<>());
        String organ = where.substring(0, Math.max(0, where.indexOf(',')));
        long ofOrgan = first.stream().filter(each -> each.startsWith(organ)).count();
        if (first.size() < KEPT && ofOrgan < KEPT_OF_ONE_ORGAN) {
            first.add(where);
        }
    }

    /** What a teacher says, each kind of it once. */
    void broken(Claim claim, List<Remark> remarks, String size, String where) {
        Set<Fault> once = new HashSet<>();
        remarks.stream()
                .filter(remark -> once.add(remark.fault()))
                .forEach(remark -> broken(claim, remark.fault().word(), size, where + remark.sentence()));
    }

    /** The lines of an agreement that are broken. */
    List<Row> rows(int agreement) {
        return counts.keySet().stream()
                .filter(row -> row.claim().agreement() == agreement)
                .toList();
    }

    /** All lines that are broken. */
    synchronized List<Row> rows() {
        return List.copyOf(counts.keySet());
    }

    int count(Row row) {
        return counts.getOrDefault(row, Map.of()).values().stream()
                .mapToInt(Integer::intValue)
                .sum();
    }

    /** Counts by kind, and the first cases in words. */
    synchronized String told(List<Row> rows) {
        return rows.stream()
                .map(row -> row.word() + ", " + count(row) + " times\n    "
                        + String.join("\n    ", cases.getOrDefault(row, List.of())))
                .collect(Collectors.joining("\n", "\n", "\n"));
    }

    /** The table. */
    synchronized String table() {
        TreeSet<String> sizes = new TreeSet<>();
        judged.values().forEach(each -> sizes.addAll(each.keySet()));
        StringBuilder table = new StringBuilder(line("", sizes.stream().toList(), "all"));
        judged.forEach((what, by) -> table.append(line(what, sizes, by)));
        counts.forEach((row, by) -> table.append(line(row.word(), sizes, by)));
        return table.toString();
    }

    private static String line(String head, Set<String> sizes, Map<String, Integer> by) {
        int all = by.values().stream().mapToInt(Integer::intValue).sum();
        return line(
                head,
                sizes.stream()
                        .map(size -> String.valueOf(by.getOrDefault(size, 0)))
                        .toList(),
                String.valueOf(all));
    }

    private static String line(String head, List<String> cells, String last) {
        return String.format(Locale.ROOT, "%-72s", head)
                + cells.stream()
                        .map(cell -> String.format(Locale.ROOT, "%10s", cell))
                        .collect(Collectors.joining())
                + String.format(Locale.ROOT, "%8s%n", last);
    }
}
