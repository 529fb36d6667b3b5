package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A division while its stops are gathered. */
final class ParsedDivision {

    private final String name;
    private final DivisionWord word;
    private final int line;
    private final List<ReadStop> stops = new ArrayList<>();
    private Optional<Boolean> enclosed;
    private OptionalInt keys;

    ParsedDivision(DivisionHeading heading, int line) {
        this.name = heading.name();
        this.word = heading.word();
        this.line = line;
        this.enclosed = heading.enclosed();
        this.keys = heading.keys();
    }

    /** Learns from a later heading what the first did not say. */
    void goesOn(DivisionHeading heading) {
        enclosed = enclosed.or(heading::enclosed);
        keys = keys.isPresent() ? keys : heading.keys();
    }

    String name() {
        return name;
    }

    DivisionWord word() {
        return word;
    }

    boolean isPedal() {
        return word.isPedal();
    }

    /** Where its heading stands. */
    int line() {
        return line;
    }

    /** True if its heading says that it stands in a box. */
    boolean isEnclosed() {
        return enclosed.orElse(false);
    }

    OptionalInt keys() {
        return keys;
    }

    /** Its stops, to be added to. */
    List<ReadStop> stops() {
        return stops;
    }
}
