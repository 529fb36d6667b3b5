package versewind.stoplist;

/**
 * A line, or part of one, that nothing was made of.
 *
 * @param line where it stands, counted from 1
 * @param text what stands there
 * @param why why nothing was made of it, a sentence
 * @param weight whether it wants a second look
 */
public record Unread(int line, String text, String why, Weight weight) {

    /** Why nothing was made of what precedes the organ itself. */
    static final String BEFORE = "above the first division";

    /** Why nothing was made of a remark. */
    static final String REMARK = "a remark on the organ or the page, not a stop";

    /** Why nothing was made of a line of figures. */
    static final String NUMBER = "a number without a name";

    /** The same, but in doubt where a remark holds the name of a stop and a pitch, or a pitch stands alone. */
    Unread weighed() {
        boolean remark = why.equals(REMARK) || why.equals(NUMBER);
        boolean isDoubt = remark && Pitches.isMarked(text);
        return isDoubt ? new Unread(line, text, "a pitch, but no stop was made of it", Weight.DOUBT) : this;
    }

    /** True if something may be missing from the organ because of it. */
    public enum Weight {
        /** It says something of the organ or the page, and is no stop, coupler or tremulant. */
        NOTE,
        /** It may be part of the organ. */
        DOUBT
    }
}
