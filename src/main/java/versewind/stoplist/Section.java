package versewind.stoplist;

import java.util.Optional;
import java.util.Set;
import versewind.organ.Coupler;

/**
 * The part of a list that a line stands in.
 *
 * @param kind what it holds; stops where it is empty
 * @param division the division; -1 before the first
 * @param hint pitches that the heading of couplers names
 * @param half the half of the keyboard that the stops play; "" for the whole
 */
record Section(Optional<SectionWord.Kind> kind, int division, Set<Coupler.Kind> hint, String half) {

    /** Above the first division. */
    static final Section BEFORE = ofStops(-1);

    Section {
        hint = Set.copyOf(hint);
    }

    /** Where the stops of a division stand. */
    static Section ofStops(int division) {
        return new Section(Optional.empty(), division, Set.of(), "");
    }

    /** Where the stops of one half of a keyboard stand. */
    Section ofHalf(String name) {
        return new Section(Optional.empty(), division, Set.of(), name);
    }

    /** Where what is no stop stands. */
    Section ofOthers(SectionWord.Kind others, Set<Coupler.Kind> pitches) {
        return new Section(Optional.of(others), division, pitches, "");
    }

    boolean is(SectionWord.Kind other) {
        return kind.equals(Optional.of(other));
    }

    boolean isBeforeDivisions() {
        return division < 0;
    }

    CouplerLine.Where where() {
        return kind.map(each -> switch (each) {
                    case COUPLERS -> CouplerLine.Where.AMONG_COUPLERS;
                    case ACCESSORIES -> CouplerLine.Where.AMONG_ACCESSORIES;
                    case TREMULANTS, PISTONS, NOTES, TITLE -> CouplerLine.Where.ELSEWHERE;
                })
                .orElse(CouplerLine.Where.ELSEWHERE);
    }

    boolean isElsewhere() {
        return where() == CouplerLine.Where.ELSEWHERE;
    }
}
