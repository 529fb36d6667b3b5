package versewind.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The output of a command and its exit status.
 *
 * @param status exit status: {@link #GOOD}, {@link #WANTS_ATTENTION} or {@link #BAD}
 * @param results for the standard output, with a line end after every line
 * @param words for the standard error, likewise
 * @param letters in which letters the results are written
 */
public record Reply(int status, String results, String words, Letters letters) {

    private static final int MOST_SENTENCES = 20;

    /** The character set of the results. */
    public enum Letters {
        /** The terminal's. */
        OF_THE_TERMINAL,
        /** UTF-8, for other programs. */
        UTF_8
    }

    /** In the terminal's character set. */
    public Reply(int status, String results, String words) {
        this(status, results, words, Letters.OF_THE_TERMINAL);
    }

    /** Exit status of success. */
    public static final int GOOD = 0;

    /** Exit status when a verse needs attention. */
    public static final int WANTS_ATTENTION = 1;

    /** Exit status when an argument or a file was wrong. */
    public static final int BAD = 2;

    /** Success. */
    static Reply good(String results) {
        return new Reply(GOOD, results, "");
    }

    /** Success, with results for other programs. */
    static Reply utf8(String results) {
        return new Reply(GOOD, results, "", Letters.UTF_8);
    }

    /** A sentence on the standard error; nothing for an empty one. */
    static String line(String sentence) {
        return sentence.isEmpty() ? "" : "versewind: " + sentence + "\n";
    }

    /**
     * Failure for several reasons; the first few are named, each after its place.
     */
    static Reply bad(String place, List<String> sentences, String end) {
        String some = sentences.stream()
                .limit(MOST_SENTENCES)
                .map(sentence -> line(place + sentence))
                .collect(Collectors.joining());
        int more = sentences.size() - MOST_SENTENCES;
        return new Reply(BAD, "", some + (more > 0 ? line("And " + more + " more.") : "") + line(end));
    }

    /** Failure. */
    static Reply bad(String sentence) {
        return new Reply(BAD, "", line(sentence));
    }

    /**
     * An error in the program itself.
     *
     * @param log the file that describes it, if one could be written
     */
    public static Reply unexpected(Throwable mistake, Optional<Path> log) {
        if (log.isPresent()) {
            return bad("This is a fault in the program. Edits that were not saved are kept. Please report it with the"
                    + " file " + log.get() + ".");
        }
        StringWriter trace = new StringWriter();
        mistake.printStackTrace(new PrintWriter(trace));
        return new Reply(
                BAD,
                "",
                "versewind: This is a fault in the program. Please report it with these lines:\n"
                        + trace.toString().replace(System.lineSeparator(), "\n"));
    }
}
