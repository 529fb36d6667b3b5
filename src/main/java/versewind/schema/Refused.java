package versewind.schema;

import java.util.Locale;

/** A value that cannot be used: where it stands, what is wrong with it, and what would be right. */
public final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final String place;
    private final String problem;
    private final String remedy;

    /**
     * A refusal.
     *
     * @param line line of the file, counted from 1; 0 where there is no file
     * @param place the field, "hymns[1].verses[2].drawn", or the column of a spreadsheet; "" for the whole
     * @param problem what is wrong, without a full stop
     * @param remedy what to do, a sentence; may be blank
     */
    public Refused(int line, String place, String problem, String remedy) {
        super(problem, null, false, false);
        this.line = line;
        this.place = place;
        this.problem = problem;
        this.remedy = remedy;
    }

    /** Line of the file, counted from 1; 0 where there is no file. */
    public int line() {
        return line;
    }

    /** The field or column. */
    public String place() {
        return place;
    }

    /** The problem, without a full stop. */
    public String problem() {
        return problem;
    }

    /** The remedy, a sentence; may be blank. */
    public String remedy() {
        return remedy;
    }

    /** Problem and remedy: "unknown value "loudly". Use gentle, ordinary, strong or full voice." */
    public String problemAndRemedy() {
        boolean isWhole = remedy.isEmpty() && (problem.endsWith("?") || problem.endsWith("."));
        return isWhole ? problem : (problem + ". " + remedy).strip();
    }

    /** The same as a sentence, for a form. */
    public String sentence() {
        String whole = problemAndRemedy();
        return whole.substring(0, 1).toUpperCase(Locale.ROOT) + whole.substring(1);
    }
}
