package versewind.store;

/** What to do if a file was changed on disk since it was read. */
public enum WhenChanged {
    /** Leave it, and say so. */
    REFUSE,
    /** Write over it, unless what is there now cannot be read. */
    OVERWRITE
}
