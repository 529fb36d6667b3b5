package versewind.sheet;

/**
 * What is wanted of a sheet.
 *
 * @param type how large it is set
 * @param content how much of every verse it has
 * @param steps whether it has the steps stronger and softer
 */
public record SheetOptions(Type type, Content content, Steps steps, Reader reader) {

    /** A sheet as it is when nothing is said. */
    public static final SheetOptions USUAL =
            new SheetOptions(Type.USUAL, Content.WHOLE, Steps.LEFT_OUT, Reader.ORGANIST);

    /** How large a sheet is set. */
    public enum Type {
        USUAL,
        LARGE
    }

    /** How much of every verse a sheet has. */
    public enum Content {
        WHOLE,
        /** Only what is moved, after the first verse of a hymn. */
        CHANGES
    }

    /** Whether a sheet has the steps stronger and softer. */
    public enum Steps {
        LEFT_OUT,
        SHOWN
    }

    /** Who plays from it. */
    public enum Reader {
        /** Whoever knows the organ. */
        ORGANIST,
        /** A deputy: the sheet begins with the organ, and ends with what a registrant does. */
        DEPUTY
    }

    public SheetOptions with(Type other) {
        return new SheetOptions(other, content, steps, reader);
    }

    public SheetOptions with(Content other) {
        return new SheetOptions(type, other, steps, reader);
    }

    public SheetOptions with(Steps other) {
        return new SheetOptions(type, content, other, reader);
    }

    public SheetOptions with(Reader other) {
        return new SheetOptions(type, content, steps, other);
    }

    /** Whether all that is drawn is listed for a verse of a hymn, counted from 0. */
    public boolean listsStopsOf(int verse) {
        return content == Content.WHOLE || verse == 0;
    }
}
