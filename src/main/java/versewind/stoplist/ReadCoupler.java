package versewind.stoplist;

import versewind.organ.Coupler;

/**
 * A coupler as it was read.
 *
 * @param name what it is called
 * @param source name of the division that sounds; "" where the list has none that fits
 * @param keyboard name of the division that it is played from; "" likewise
 * @param kind at which pitch
 * @param line where it stands, counted from 1
 */
public record ReadCoupler(String name, String source, String keyboard, Coupler.Kind kind, int line) {

    /** True if both its divisions are in the list and it can work between them. */
    public boolean isWhole() {
        boolean known = !source.isEmpty() && !keyboard.isEmpty();
        return known
                && switch (kind) {
                    case UNISON -> !source.equals(keyboard);
                    case UNISON_OFF -> source.equals(keyboard);
                    case OCTAVE, SUB_OCTAVE -> true;
                };
    }

    ReadCoupler named(String other) {
        return new ReadCoupler(other, source, keyboard, kind, line);
    }
}
