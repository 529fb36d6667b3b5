package versewind.plan;

import versewind.organ.IndexSet;

/**
 * Stops that proposals must always or never draw in a verse.
 *
 * @param always always drawn
 * @param never never drawn; disjoint from {@code always}
 */
public record Locks(IndexSet always, IndexSet never) {

    /** Nothing locked. */
    public static final Locks NONE = new Locks(IndexSet.EMPTY, IndexSet.EMPTY);

    public Locks {
        if (!always.minus(never).equals(always)) {
            throw new IllegalArgumentException("a stop is locked one way");
        }
    }

    /** With a stop always drawn. */
    public Locks withAlways(int stop) {
        return new Locks(always.with(stop), never.without(stop));
    }

    /** With a stop never drawn. */
    public Locks withNever(int stop) {
        return new Locks(always.without(stop), never.with(stop));
    }

    /** With a stop unlocked. */
    public Locks without(int stop) {
        return new Locks(always.without(stop), never.without(stop));
    }

    /** With the locks of others, which take precedence. */
    public Locks with(Locks others) {
        return new Locks(
                always.minus(others.never).plus(others.always),
                never.minus(others.always).plus(others.never));
    }

    /** The locks common to both. */
    public Locks shared(Locks others) {
        return new Locks(always.minus(always.minus(others.always)), never.minus(never.minus(others.never)));
    }
}
