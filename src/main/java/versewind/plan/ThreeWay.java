package versewind.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * A list merged from two versions of it, each made from a common base. What one version added, deleted or moved, the
 * result has; what one deleted and the other changed, stays.
 *
 * @param <T> what is in the list
 */
final class ThreeWay<T> {

    /** What is in all three; its two versions have still to become one. */
    @FunctionalInterface
    interface Both<T> {
        /** The item at an index of the result. */
        T merged(int index, T base, T mine, T theirs);
    }

    /** An item of the result: what it was, and what it is in the versions that have it. */
    private record Entry<T>(Optional<T> base, Optional<T> mine, Optional<T> theirs) {}

    private final List<T> base;
    private final List<T> mine;
    private final List<T> theirs;
    private final int[] inMine;
    private final int[] inTheirs;

    /**
     * Three versions.
     *
     * @param alike whether two items are the same thing, though changed
     */
    ThreeWay(List<T> base, List<T> mine, List<T> theirs, BiPredicate<T, T> alike) {
        this.base = base;
        this.mine = mine;
        this.theirs = theirs;
        this.inMine = partners(base, mine, alike);
        this.inTheirs = partners(base, theirs, alike);
    }

    /** The result. */
    List<T> merged(Both<T> both) {
        boolean theirOrder = isInOrder(inMine) && !isInOrder(inTheirs);
        List<Entry<T>> entries = theirOrder
                ? entries(theirs, inTheirs, mine, inMine, (base, lead, other) -> new Entry<>(base, other, lead))
                : entries(mine, inMine, theirs, inTheirs, Entry::new);
        List<T> merged = new ArrayList<>();
        for (Entry<T> each : entries) {
            if (each.mine().isPresent() && each.theirs().isPresent()) {
                T before = each.base().orElseGet(() -> each.mine().get());
                merged.add(both.merged(
                        merged.size(), before, each.mine().get(), each.theirs().get()));
            } else {
                merged.add(each.mine().or(each::theirs).orElseThrow());
            }
        }
        return merged;
    }

    @FunctionalInterface
    private interface Making<T> {
        Entry<T> entry(Optional<T> base, Optional<T> lead, Optional<T> other);
    }

    /** The items in the order of the version that leads; what only the other has follows what it follows there. */
    private List<Entry<T>> entries(List<T> lead, int[] inLead, List<T> other, int[] inOther, Making<T> making) {
        List<Entry<T>> entries = new ArrayList<>();
        Map<Integer, Entry<T>> ofOther = new LinkedHashMap<>();
        int[] baseOfLead = inverse(inLead, lead.size());
        int[] baseOfOther = inverse(inOther, other.size());
        for (int i = 0; i < lead.size(); i++) {
            T item = lead.get(i);
            int from = baseOfLead[i];
            int there = from < 0 ? added(item, other, baseOfOther, ofOther) : inOther[from];
            if (from >= 0 && there < 0 && item.equals(base.get(from))) {
                continue;
            }
            Entry<T> entry = making.entry(
                    from < 0 ? Optional.empty() : Optional.of(base.get(from)),
                    Optional.of(item),
                    there < 0 ? Optional.empty() : Optional.of(other.get(there)));
            entries.add(entry);
            if (there >= 0) {
                ofOther.put(there, entry);
            }
        }
        for (int j = 0; j < other.size(); j++) {
            boolean isDropped = baseOfOther[j] >= 0 && other.get(j).equals(base.get(baseOfOther[j]));
            if (!ofOther.containsKey(j) && !isDropped) {
                Entry<T> entry = making.entry(Optional.empty(), Optional.empty(), Optional.of(other.get(j)));
                entries.add(placeAfter(j, ofOther, entries), entry);
                ofOther.put(j, entry);
            }
        }
        return entries;
    }

    /** What both have added alike is added once. */
    private static <T> int added(T item, List<T> other, int[] baseOfOther, Map<Integer, Entry<T>> taken) {
        for (int j = 0; j < other.size(); j++) {
            if (baseOfOther[j] < 0 && !taken.containsKey(j) && other.get(j).equals(item)) {
                return j;
            }
        }
        return -1;
    }

    private static <T> int placeAfter(int j, Map<Integer, Entry<T>> ofOther, List<Entry<T>> entries) {
        for (int before = j - 1; before >= 0; before--) {
            if (ofOther.containsKey(before)) {
                return indexOf(entries, ofOther.get(before)) + 1;
            }
        }
        return 0;
    }

    /** By identity: a list may hold equal items. */
    @SuppressWarnings("ReferenceEquality")
    private static <T> int indexOf(List<Entry<T>> entries, Entry<T> wanted) {
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i) == wanted) {
                return i;
            }
        }
        throw new IllegalStateException("an entry is lost");
    }

    private static boolean isInOrder(int[] places) {
        int[] there = Arrays.stream(places).filter(place -> place >= 0).toArray();
        int[] sorted = there.clone();
        Arrays.sort(sorted);
        return Arrays.equals(there, sorted);
    }

    private static int[] inverse(int[] partners, int size) {
        int[] inverse = new int[size];
        Arrays.fill(inverse, -1);
        for (int i = 0; i < partners.length; i++) {
            if (partners[i] >= 0) {
                inverse[partners[i]] = i;
            }
        }
        return inverse;
    }

    /**
     * Where each item of the base is in another version, or -1: the longest common run of what is unchanged, then what
     * is alike, then what stands in the place of what was changed beyond likeness.
     */
    private static <T> int[] partners(List<T> base, List<T> other, BiPredicate<T, T> alike) {
        int[] partners = unchanged(base, other);
        boolean[] taken = new boolean[other.size()];
        Arrays.stream(partners).filter(place -> place >= 0).forEach(place -> taken[place] = true);
        pair(base, other, partners, taken, Object::equals);
        pair(base, other, partners, taken, alike);
        for (int i = 0; i < base.size(); i++) {
            int next = i == 0 ? 0 : partners[i - 1] + 1;
            boolean isFree = partners[i] < 0 && (i == 0 || partners[i - 1] >= 0);
            if (isFree && next < other.size() && !taken[next]) {
                partners[i] = next;
                taken[next] = true;
            }
        }
        return partners;
    }

    private static <T> void pair(
            List<T> base, List<T> other, int[] partners, boolean[] taken, BiPredicate<? super T, ? super T> same) {
        for (int i = 0; i < base.size(); i++) {
            for (int j = 0; j < other.size() && partners[i] < 0; j++) {
                if (!taken[j] && same.test(base.get(i), other.get(j))) {
                    partners[i] = j;
                    taken[j] = true;
                }
            }
        }
    }

    /** The longest common subsequence. */
    private static <T> int[] unchanged(List<T> base, List<T> other) {
        int[][] longest = new int[base.size() + 1][other.size() + 1];
        for (int i = base.size() - 1; i >= 0; i--) {
            for (int j = other.size() - 1; j >= 0; j--) {
                longest[i][j] = base.get(i).equals(other.get(j))
                        ? longest[i + 1][j + 1] + 1
                        : Math.max(longest[i + 1][j], longest[i][j + 1]);
            }
        }
        int[] partners = new int[base.size()];
        Arrays.fill(partners, -1);
        int i = 0;
        int j = 0;
        while (i < base.size() && j < other.size()) {
            if (base.get(i).equals(other.get(j))) {
                partners[i++] = j++;
            } else if (longest[i + 1][j] >= longest[i][j + 1]) {
                i++;
            } else {
                j++;
            }
        }
        return partners;
    }
}
