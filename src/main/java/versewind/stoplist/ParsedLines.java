package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What a list has said so far. */
final class ParsedLines {

    private final List<ParsedDivision> divisions = new ArrayList<>();
    private final List<PlacedCoupler> couplers = new ArrayList<>();
    private final List<PlacedTremulant> tremulants = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();

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

    /** Keeps what is no part of the organ, or was not understood. */
    void leaveOut(int line, String text, String why, Unread.Weight weight) {
        unread.add(new Unread(line, text, why, weight));
    }

    /** The division whose stops a section holds. */
    ParsedDivision division(Section section) {
        return divisions.get(section.division());
    }

    /** Whether a section belongs to the pedal. */
    boolean isInPedal(Section section) {
        return !section.isBeforeDivisions() && division(section).isPedal();
    }

    /** Opens the division of a heading, or goes on with it where it was opened before. */
    Section open(DivisionHeading heading, int line) {
        for (int i = 0; i < divisions.size(); i++) {
            if (divisions.get(i).isHeadedBy(heading)) {
                divisions.get(i).goesOn(heading);
                return Section.ofStops(i);
            }
        }
        divisions.add(new ParsedDivision(heading, line));
        return Section.ofStops(divisions.size() - 1);
    }

    /** Opens the manual of an organ that has no other. */
    Section openManual(String name, OptionalInt keys, int line) {
        DivisionWord word = new DivisionWord("", OptionalInt.of(1), false, "");
        return open(new DivisionHeading(name, word, Optional.empty(), keys, ""), line);
    }

    /** The division of a section; before the first, the manual of an organ whose list names none is opened. */
    Section opened(Section section, int line) {
        return section.isBeforeDivisions() ? openManual("Manual", OptionalInt.empty(), line) : section;
    }
}
