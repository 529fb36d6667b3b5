package versewind.store;

/** Watches how plans get the new names of an organ's parts, and may stop that between two plans. */
@FunctionalInterface
public interface Rewriting {

    /** True if it is to go on, with so many plans done. */
    boolean goesOn(int done, int of);
}
