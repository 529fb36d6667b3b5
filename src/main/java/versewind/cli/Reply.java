package versewind.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What a command has to say and how it ended.
 *
 * @param status exit status: {@link #GOOD}, {@link #WANTS_ATTENTION} or {@link #BAD}
 * @param results for the standard output, with a line end after every line
 * @param words for the standard error, likewise
 * @param letters in which letters the results are written
 */
public record Reply(int status, String results, String words, Letters letters) {

    /** In which letters the results are written. */
    public enum Letters {
        /** Those of the terminal. */
        OF_THE_TERMINAL,
        /** UTF-8 wherever it is read, for other programs. */
        UTF_8
    }

    /** In the letters of the terminal. */
    public Reply(int status, String results, String words) {
        this(status, results, words, Letters.OF_THE_TERMINAL);
    }

    /** All is well. */
    public static final int GOOD = 0;

    /** It was done, and something in it wants attention. */
    public static final int WANTS_ATTENTION = 1;

    /** It could not be done: something typed or read was wrong. */
    public static final int BAD = 2;

    /** It was done. */
    static Reply good(String results) {
        return new Reply(GOOD, results, "");
    }

    /** It could not be done. */
    static Reply bad(String sentence) {
        return new Reply(BAD, "", "versewind: " + sentence + "\n");
    }

    /** Something is wrong with the program itself. */
    public static Reply unexpected(Throwable mistake) {
        StringWriter trace = new StringWriter();
        mistake.printStackTrace(new PrintWriter(trace));
        return new Reply(
                BAD,
                "",
                "versewind: The program has made a mistake. Please report it with these lines:\n"
                        + trace.toString().replace(System.lineSeparator(), "\n"));
    }
}
