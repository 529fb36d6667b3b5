package versewind.store;

import java.nio.file.Path;
import java.util.OptionalInt;
import versewind.schema.Refused;

/**
 * A file that cannot be read as what it should be: where, what is wrong, what to do.
 *
 * <p>Its message is made for the person at the desk: {@code plans/x.json, line 14, hymns[1].verses[2].drawn: Great
 * has no stop "Open Diapson 8". Did you mean "Open Diapason 8"?}
 */
public final class BadFile extends Exception {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final String place;
    private final String problem;
    private final String remedy;

    private BadFile(String file, int line, String place, String problem, String remedy) {
        super(message(file, line, place, problem, remedy), null, false, false);
        this.file = file;
        this.line = line;
        this.place = place;
        this.problem = problem;
        this.remedy = remedy;
    }

    /** A value in a file that cannot be used. */
    static BadFile of(Path file, Refused wrong) {
        return new BadFile(name(file), wrong.line(), wrong.place(), wrong.problem(), wrong.remedy());
    }

    /** A line that cannot be read. */
    static BadFile at(Path file, int line, String problem, String remedy) {
        return new BadFile(name(file), line, "", problem, remedy);
    }

    /** The file as a whole: not there, not readable, a folder. */
    static BadFile whole(Path file, String problem, String remedy) {
        return whole(name(file), problem, remedy);
    }

    /** A file as a whole, under the name that was given. */
    static BadFile whole(String file, String problem, String remedy) {
        return new BadFile(file, 0, "", problem, remedy);
    }

    private static String message(String file, int line, String field, String problem, String remedy) {
        String place = file + (line > 0 ? ", line " + line : "") + (field.isEmpty() ? "" : ", " + field);
        return (place + ": " + problem + ". " + remedy).strip();
    }

    /** The file. */
    public String file() {
        return file;
    }

    /** The line, counted from 1; empty where the file was not read at all. */
    public OptionalInt line() {
        return line > 0 ? OptionalInt.of(line) : OptionalInt.empty();
    }

    /** The field, "hymns[1].verses[2].drawn", lists counted from 0; "" for the file as a whole. */
    public String place() {
        return place;
    }

    /** The problem, without a full stop. */
    public String problem() {
        return problem;
    }

    /** The path as it is shown; the working folder has a name, too. */
    private static String name(Path file) {
        String name = file.normalize().toString();
        return name.isEmpty() ? "." : name;
    }

    /** The remedy, a sentence; may be blank. */
    public String remedy() {
        return remedy;
    }
}
