package versewind.schema;

/** The name of a plan's or an instrument's file, without its ending. */
public final class FileId {
    static final int LONGEST = 100;
    private static final String MARKS = " ._-";

    private FileId() {}

    /** Whether a text can be one. It begins with a letter or digit, so that no file is hidden or in another folder. */
    public static boolean isId(String text) {
        if (text.isEmpty() || text.codePointCount(0, text.length()) > LONGEST || !isLetter(text.codePointAt(0))) {
            return false;
        }
        return text.codePoints().allMatch(c -> isLetter(c) || MARKS.indexOf(c) >= 0);
    }

    /** A letter or a number in the sense of Unicode's categories L and N. */
    private static boolean isLetter(int c) {
        return Character.isLetter(c)
                || Character.isDigit(c)
                || Character.getType(c) == Character.LETTER_NUMBER
                || Character.getType(c) == Character.OTHER_NUMBER;
    }
}
