package versewind.store;

/** How to save a file that was changed on disk since it was read. */
public enum WhenChanged {
    /** Leave it, and say so. */
    REFUSE,
    /** Write over it, unless what is there now cannot be read. */
    OVERWRITE
}
