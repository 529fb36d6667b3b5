package versewind.schema;

/** The common part of plan and instrument files: their names, and the number of their format. */
public final class FileFormat {
    /** The number of the format that is written, and the only one that is read. */
    public static final int NUMBER = 1;

    /** The name of the field of the number. */
    static final String FIELD = "format";

    private static final int LONGEST_ID = 100;
    private static final String MARKS = " ._-";

    private FileFormat() {}

    /** True if a text can be a file's name without its ending. It begins with a letter or digit: no hidden file. */
    public static boolean isId(String text) {
        if (text.isEmpty() || text.codePointCount(0, text.length()) > LONGEST_ID || !isLetter(text.codePointAt(0))) {
            return false;
        }
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (!isLetter(text.codePointAt(i)) && MARKS.indexOf(text.codePointAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** A letter or a number in the sense of Unicode's categories L and N. */
    private static boolean isLetter(int c) {
        int type = Character.getType(c);
        return Character.isLetter(c)
                || type == Character.DECIMAL_DIGIT_NUMBER
                || type == Character.LETTER_NUMBER
                || type == Character.OTHER_NUMBER;
    }

    /** The field of the number. */
    static <T> Field<T, Integer> field() {
        return new Field<>(FIELD, Kinds.whole(NUMBER, NUMBER), "number of this format", (owner, field) -> NUMBER);
    }

    /** Refuses a file of a later format before anything else in it can be misunderstood. */
    public static void require(Found root) throws Refused {
        root.entries("");
        Found format = root.at(FIELD);
        int number = format.whole(0, Integer.MAX_VALUE, "Enter the number of a format, such as 1.");
        if (number != NUMBER) {
            throw format.bad(
                    "this program reads format " + NUMBER + ", not format " + number,
                    "Use the version of the program that wrote the file.");
        }
    }
}
