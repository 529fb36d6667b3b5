package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** A division while its stops are gathered. */
final class ParsedDivision {

    private final int line;
    private final List<ReadStop> stops = new ArrayList<>();
    private DivisionHeading heading;

    ParsedDivision(DivisionHeading heading, int line) {
        this.heading = heading;
        this.line = line;
    }

    /** Learns from a later heading what the first did not say. */
    void goesOn(DivisionHeading later) {
        heading = heading.and(later);
    }

    /** Learns from a note between its heading and its first stop. */
    void noted(String note) {
        heading = stops.isEmpty() ? heading.noted(note) : heading;
    }

    /** True if nothing but a number was said so far, and a heading says whose. */
    boolean isNumberOf(DivisionHeading below) {
        boolean numbered = word().role().isEmpty() && word().number().isPresent();
        return numbered
                && stops.isEmpty()
                && !below.word().role().isEmpty()
                && !below.word().isPedal()
                && below.word().number().isEmpty();
    }

    DivisionHeading heading() {
        return heading;
    }

    String name() {
        return heading.name();
    }

    DivisionWord word() {
        return heading.word();
    }

    boolean isPedal() {
        return word().isPedal();
    }

    /** Where its heading stands. */
    int line() {
        return line;
    }

    /** True if its stops stand in a box, but for those that say otherwise. */
    boolean isEnclosed() {
        return is(DivisionHeading.Boxed.WHOLLY)
                || (heading.enclosed().isEmpty() && areAllBoxed())
                || (is(DivisionHeading.Boxed.PARTLY)
                        && stops.stream().noneMatch(stop -> stop.isBoxed().orElse(false)));
    }

    /** True if every stop is said to stand in a box. */
    private boolean areAllBoxed() {
        return !stops.isEmpty()
                && stops.stream().allMatch(stop -> stop.isBoxed().orElse(false));
    }

    private boolean is(DivisionHeading.Boxed boxed) {
        return heading.enclosed().filter(boxed::equals).isPresent();
    }

    /** True if only some of its stops stand in a box, and none says whether it does. */
    boolean isUnclearWhichAreEnclosed() {
        return is(DivisionHeading.Boxed.PARTLY)
                && stops.stream().allMatch(stop -> stop.isBoxed().isEmpty());
    }

    OptionalInt keys() {
        return heading.keys();
    }

    /** Its stops, to be added to. */
    List<ReadStop> stops() {
        return stops;
    }
}
