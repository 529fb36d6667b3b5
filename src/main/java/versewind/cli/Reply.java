package versewind.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a command has to say and how it ended.
 *
 * @param status exit status: {@link #GOOD}, {@link #WANTS_ATTENTION} or {@link #BAD}
 * @param results for the standard output, with a line end after every line
 * @param words for the standard error, likewise
 * @param letters in which letters the results are written
 */
public record Reply(int status, String results, String words, Letters letters) {

    private static final int MOST_SENTENCES = 20;

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

    /** It was done, and the results are for other programs. */
    static Reply utf8(String results) {
        return new Reply(GOOD, results, "", Letters.UTF_8);
    }

    /** A sentence on the standard error; nothing for an empty one. */
    static String line(String sentence) {
        return sentence.isEmpty() ? "" : "versewind: " + sentence + "\n";
    }

    /**
     * It could not be done, for several reasons; the first of them are named, each after the place where it was found.
     */
    static Reply bad(String place, List<String> sentences, String end) {
        String some = sentences.stream()
                .limit(MOST_SENTENCES)
                .map(sentence -> line(place + sentence))
                .collect(Collectors.joining());
        int more = sentences.size() - MOST_SENTENCES;
        return new Reply(BAD, "", some + (more > 0 ? line("And " + more + " more.") : "") + line(end));
    }

    /** It could not be done. */
    static Reply bad(String sentence) {
        return new Reply(BAD, "", line(sentence));
    }

    /** Something is wrong with the program itself. */
    public static Reply unexpected(Throwable mistake) {
        StringWriter trace = new StringWriter();
        mistake.printStackTrace(new PrintWriter(trace));
        return new Reply(
                BAD,
                "",
                "versewind: This is a fault in the program. Please report it with these lines:\n"
                        + trace.toString().replace(System.lineSeparator(), "\n"));
    }
}
