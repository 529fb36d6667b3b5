package versewind.stoplist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The parts of an organ read so far. Everything that is taken in or left out is counted, so that no text can be lost
 * unnoticed.
 */
final class ParsedLines {

    private final List<ParsedDivision> divisions = new ArrayList<>();
    private final Map<String, Integer> places = new HashMap<>();
    private final List<PlacedCoupler> couplers = new ArrayList<>();
    private final List<PlacedTremulant> tremulants = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();
    private Optional<Unread> unheaded = Optional.empty();
    private Optional<Unread> ofCouplers = Optional.empty();
    private int entries;

    /**
     * A coupler and where it stands.
     *
     * @param coupler what was read
     * @param here the division under whose heading it stands; -1 for none
     * @param line where it stands
     */
    record PlacedCoupler(UnresolvedCoupler coupler, int here, int line) {}

    /**
     * A tremulant and where it stands.
     *
     * @param text its name
     * @param division the division it names
     * @param here the division under whose heading it stands; -1 for none
     * @param line where it stands
     */
    record PlacedTremulant(String text, Optional<DivisionWord> division, int here, int line) {}

    List<ParsedDivision> divisions() {
        return divisions;
    }

    List<PlacedCoupler> couplers() {
        return couplers;
    }

    List<PlacedTremulant> tremulants() {
        return tremulants;
    }

    List<Unread> unread() {
        return unread;
    }

    /** How many times something was taken in or left out. */
    int entries() {
        return entries;
    }

    void add(PlacedCoupler coupler) {
        entries++;
        couplers.add(coupler);
    }

    void add(PlacedTremulant tremulant) {
        entries++;
        tremulants.add(tremulant);
    }

    void add(ReadStop stop, Section section) {
        entries++;
        division(section).stops().add(stop);
    }

    /** Puts what a later line says of a stop in its place. */
    void change(ReadStop stop, ReadStop changed, Section section) {
        entries++;
        List<ReadStop> stops = division(section).stops();
        stops.set(stops.lastIndexOf(stop), changed);
    }

    /** Adds a remark to the last stop of a section; false where it has none. */
    boolean remark(String remark, Section section) {
        boolean any = !section.isBeforeDivisions()
                && section.kind().isEmpty()
                && !division(section).stops().isEmpty();
        if (any) {
            List<ReadStop> stops = division(section).stops();
            change(stops.get(stops.size() - 1), stops.get(stops.size() - 1).remarked(remark), section);
        }
        return any;
    }

    /** The last stop of a section. */
    Optional<ReadStop> last(Section section) {
        return section.isBeforeDivisions() || division(section).stops().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        division(section).stops().get(division(section).stops().size() - 1));
    }

    /** Keeps what is no part of the organ, or was not understood. */
    void leaveOut(int line, String text, String why, Unread.Weight weight) {
        entries++;
        unread.add(new Unread(line, text, why, weight));
    }

    /** The first heading of a part that should hold couplers. */
    Optional<Unread> ofCouplers() {
        return ofCouplers;
    }

    /** Goes on below the heading of a part that should hold couplers. */
    Section beginCouplers(Section section, int line, String heading) {
        ofCouplers = ofCouplers.or(() ->
                Optional.of(new Unread(line, heading, "couplers, but none of them is named", Unread.Weight.DOUBT)));
        return begin(section);
    }

    /** Goes on in a section that a heading without anything else begins. */
    Section begin(Section section) {
        entries++;
        return section;
    }

    /** The division whose stops a section holds. */
    ParsedDivision division(Section section) {
        return divisions.get(section.division());
    }

    /** True if a section belongs to the pedal. */
    boolean isInPedal(Section section) {
        return !section.isBeforeDivisions() && division(section).isPedal();
    }

    /** Opens the division of a heading, or goes on with it where it was opened before. */
    Section open(DivisionHeading heading, int line) {
        int last = divisions.size() - 1;
        boolean goesOn = last >= 0 && divisions.get(last).isNumberOf(heading);
        int next = goesOn ? last : last + 1;
        DivisionHeading whole = goesOn ? heading.below(divisions.get(last).heading()) : heading;
        places.values().remove(next);
        int place = places.computeIfAbsent(Spelling.spelled(whole.name()), name -> next);
        if (place != next) {
            divisions.get(place).goesOn(whole);
        } else if (goesOn) {
            divisions.set(last, new ParsedDivision(whole, line));
        } else {
            divisions.add(new ParsedDivision(whole, line));
        }
        return begin(Section.ofStops(place));
    }

    /** Opens the manual of an organ that has no other. */
    Section openManual(String name, OptionalInt keys, int line) {
        return open(new DivisionHeading(name, DivisionWord.numbered("", 1), Optional.empty(), keys, ""), line);
    }

    /** The pedal that a list has without saying so, or the one that it has. */
    Section openPedal(int line) {
        String name = divisions.stream()
                .filter(ParsedDivision::isPedal)
                .map(ParsedDivision::name)
                .findFirst()
                .orElse("Pedal");
        DivisionWord word = new DivisionWord(DivisionWord.PEDAL, OptionalInt.empty(), false, "pedal");
        return open(new DivisionHeading(name, word, Optional.empty(), OptionalInt.empty(), ""), line);
    }

    /** The division of a section; before the first, the manual of an organ whose list names none is opened. */
    Section opened(Section section, int line) {
        if (!section.isBeforeDivisions()) {
            return section;
        }
        Section opened = openManual("Manual", OptionalInt.empty(), line);
        String why = "stops above the heading of any division: taken for a manual of their own";
        unheaded = Optional.of(new Unread(line, division(opened).name(), why, Unread.Weight.DOUBT));
        return opened;
    }

    /** A doubt about stops above every heading, where other manuals have one. */
    Optional<Unread> unheaded() {
        return unheaded.filter(each -> divisions.stream().skip(1).anyMatch(division -> !division.isPedal()));
    }
}
