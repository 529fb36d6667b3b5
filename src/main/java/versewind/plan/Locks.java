package versewind.plan;

import versewind.organ.IndexSet;

/**
 * Stops that must be drawn for a verse and stops that must not, as the organist wishes it.
 *
 * @param always must be drawn
 * @param never must not be drawn; none that must
 */
public record Locks(IndexSet always, IndexSet never) {

    /** Nothing locked. */
    public static final Locks NONE = new Locks(IndexSet.EMPTY, IndexSet.EMPTY);

    public Locks {
        if (!always.minus(never).equals(always)) {
            throw new IllegalArgumentException("a stop is locked one way");
        }
    }

    /** With a stop that must be drawn. */
    public Locks withAlways(int stop) {
        return new Locks(always.with(stop), never.without(stop));
    }

    /** With a stop that must not be drawn. */
    public Locks withNever(int stop) {
        return new Locks(always.without(stop), never.with(stop));
    }

    /** With a stop that may be drawn or not. */
    public Locks without(int stop) {
        return new Locks(always.without(stop), never.without(stop));
    }

    /** With all that others lock, as they lock it. */
    public Locks with(Locks others) {
        return new Locks(
                always.minus(others.never).plus(others.always),
                never.minus(others.always).plus(others.never));
    }

    /** What is locked the same way here and there. */
    public Locks shared(Locks others) {
        return new Locks(always.minus(always.minus(others.always)), never.minus(never.minus(others.never)));
    }
}
