package versewind.organ;

import java.util.Arrays;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * An immutable set of small indices: which of an instrument's stops, couplers or tremulants are drawn. Indices count in
 * the order of {@link Instrument#stops()}, {@link Instrument#couplers()}, {@link Instrument#tremulants()}.
 */
public final class IndexSet {

    /** The empty set. */
    public static final IndexSet EMPTY = new IndexSet(new long[0]);

    /** Stands for no index. */
    public static final int NONE = -1;

    private final long[] words;

    private IndexSet(long[] words) {
        int length = words.length;
        while (length > 0 && words[length - 1] == 0) {
            length--;
        }
        this.words = length == words.length ? words : Arrays.copyOf(words, length);
    }

    /** The set of these indices. */
    public static IndexSet of(int... indices) {
        return of(IntStream.of(indices));
    }

    /** The set of these indices. */
    public static IndexSet of(IntStream indices) {
        IndexSet set = EMPTY;
        for (int index : indices.toArray()) {
            set = set.with(index);
        }
        return set;
    }

    /** The indices from 0 to below a limit. */
    public static IndexSet range(int limit) {
        return of(IntStream.range(0, limit));
    }

    /** True if the index is in the set. */
    public boolean contains(int index) {
        int word = index >> 6;
        return word < words.length && (words[word] & (1L << index)) != 0;
    }

    /** This set and the index. */
    public IndexSet with(int index) {
        if (index < 0) {
            throw new IllegalArgumentException("an index counts from 0");
        }
        long[] more = Arrays.copyOf(words, Math.max(words.length, (index >> 6) + 1));
        more[index >> 6] |= 1L << index;
        return new IndexSet(more);
    }

    /** The first index of the set from an index on, or {@link #NONE}. */
    public int next(int from) {
        for (int i = from >> 6; i < words.length; i++) {
            long rest = i == from >> 6 ? words[i] & (-1L << from) : words[i];
            if (rest != 0) {
                return 64 * i + Long.numberOfTrailingZeros(rest);
            }
        }
        return NONE;
    }

    /** This set without the index. */
    public IndexSet without(int index) {
        if (!contains(index)) {
            return this;
        }
        long[] fewer = words.clone();
        fewer[index >> 6] &= ~(1L << index);
        return new IndexSet(fewer);
    }

    /** This set with the index added, or removed if it was there. */
    public IndexSet toggled(int index) {
        return contains(index) ? without(index) : with(index);
    }

    /** True if the sets have an index in common. */
    public boolean meets(IndexSet other) {
        for (int i = 0; i < Math.min(words.length, other.words.length); i++) {
            if ((words[i] & other.words[i]) != 0) {
                return true;
            }
        }
        return false;
    }

    /** The indices of this set that are not in the other. */
    public IndexSet minus(IndexSet other) {
        if (!meets(other)) {
            return this;
        }
        long[] rest = words.clone();
        for (int i = 0; i < Math.min(rest.length, other.words.length); i++) {
            rest[i] &= ~other.words[i];
        }
        return new IndexSet(rest);
    }

    /** The indices that are in both sets. */
    public IndexSet and(IndexSet other) {
        long[] both = Arrays.copyOf(words, Math.min(words.length, other.words.length));
        for (int i = 0; i < both.length; i++) {
            both[i] &= other.words[i];
        }
        return new IndexSet(both);
    }

    /** The indices of either set. */
    public IndexSet plus(IndexSet other) {
        if (other.isEmpty()) {
            return this;
        }
        long[] both = Arrays.copyOf(words, Math.max(words.length, other.words.length));
        for (int i = 0; i < other.words.length; i++) {
            both[i] |= other.words[i];
        }
        return new IndexSet(both);
    }

    /** Number of indices in the set. */
    public int size() {
        int size = 0;
        for (long word : words) {
            size += Long.bitCount(word);
        }
        return size;
    }

    /** True if the set is empty. */
    public boolean isEmpty() {
        return words.length == 0;
    }

    /** True if every index is below a limit. */
    public boolean isBelow(int limit) {
        return words.length == 0 || 64 * words.length - Long.numberOfLeadingZeros(words[words.length - 1]) <= limit;
    }

    /** Performs an action for each index, ascending. */
    public void forEach(IntConsumer action) {
        for (int index = next(0); index != NONE; index = next(index + 1)) {
            action.accept(index);
        }
    }

    /** The indices, ascending. */
    public IntStream stream() {
        IntStream.Builder builder = IntStream.builder();
        forEach(builder::add);
        return builder.build();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof IndexSet set && Arrays.equals(words, set.words);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(words);
    }

    @Override
    public String toString() {
        return Arrays.toString(stream().toArray());
    }
}
