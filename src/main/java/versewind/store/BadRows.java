package versewind.store;

import java.util.List;

/** Rows of a spreadsheet that cannot be read as a plan: every one of them, and what is wrong with it. */
public final class BadRows extends Exception {
    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // a list of texts, which can be written
    private final List<String> sentences;

    BadRows(List<String> sentences) {
        super(String.join("\n", sentences), null, false, false);
        this.sentences = List.copyOf(sentences);
    }

    static BadRows at(int line, String problem) {
        return new BadRows(List.of(sentence(line, problem)));
    }

    /** "line 7: kind: unknown value ...". */
    static String sentence(int line, String problem) {
        return "line " + line + ": " + problem + (problem.endsWith(".") || problem.endsWith("?") ? "" : ".");
    }

    /** A sentence for each row that is wrong, with its line. */
    public List<String> sentences() {
        return sentences;
    }
}
