package versewind.plan;

import versewind.organ.IndexSet;
import versewind.organ.Worded;

/**
 * What proposals must keep in a verse.
 *
 * @param always stops that are always drawn
 * @param never stops that are never drawn; disjoint from {@code always}
 * @param kept what stays as the verse has it
 */
public record Locks(IndexSet always, IndexSet never, Kept kept) {

    /** Nothing locked. */
    public static final Locks NONE = new Locks(IndexSet.EMPTY, IndexSet.EMPTY);

    /** What stays as the verse has it, besides stops. */
    public enum Kept implements Worded {
        NOTHING("nothing"),
        /** The layout of hands and feet, and the manuals they play. */
        HANDS_AND_FEET("hands and feet"),
        /** The positions of the swell boxes. */
        BOXES("swell boxes"),
        HANDS_FEET_AND_BOXES("hands, feet and swell boxes");

        private final String word;

        Kept(String word) {
            this.word = word;
        }

        /** In words. */
        @Override
        public String word() {
            return word;
        }
    }

    public Locks {
        if (!always.minus(never).equals(always)) {
            throw new IllegalArgumentException("a stop is locked one way");
        }
    }

    /** Locks of stops alone. */
    public Locks(IndexSet always, IndexSet never) {
        this(always, never, Kept.NOTHING);
    }

    /** With a stop always drawn. */
    public Locks withAlways(int stop) {
        return new Locks(always.with(stop), never.without(stop), kept);
    }

    /** With a stop never drawn. */
    public Locks withNever(int stop) {
        return new Locks(always.without(stop), never.with(stop), kept);
    }

    /** With a stop unlocked. */
    public Locks without(int stop) {
        return new Locks(always.without(stop), never.without(stop), kept);
    }

    /** With the locks of others, which take precedence. */
    public Locks with(Locks others) {
        return new Locks(
                always.minus(others.never).plus(others.always),
                never.minus(others.always).plus(others.never),
                others.kept == Kept.NOTHING ? kept : others.kept);
    }

    /** Whether hands and feet play as the verse has them. */
    public boolean keepsHands() {
        return kept == Kept.HANDS_AND_FEET || kept == Kept.HANDS_FEET_AND_BOXES;
    }

    /** Whether the swell boxes stand as the verse has them. */
    public boolean keepsBoxes() {
        return kept == Kept.BOXES || kept == Kept.HANDS_FEET_AND_BOXES;
    }

    /** With something else kept. */
    public Locks keeping(Kept other) {
        return new Locks(always, never, other);
    }

    /** The locks common to both. */
    public Locks shared(Locks others) {
        return new Locks(
                always.minus(always.minus(others.always)),
                never.minus(never.minus(others.never)),
                kept == others.kept ? kept : Kept.NOTHING);
    }
}
