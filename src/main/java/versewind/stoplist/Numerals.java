package versewind.stoplist;

import java.util.Locale;
import versewind.organ.Stop;

/** Numbers in Arabic or Roman figures. */
final class Numerals {

    private Numerals() {}

    /** A number of one or two digits, or a Roman one from I to XII; 0 for what is none. */
    static int number(String figures) {
        boolean digits = !figures.isEmpty()
                && figures.length() <= 2
                && figures.chars().allMatch(each -> each >= '0' && each <= '9');
        return digits
                ? Integer.parseInt(figures)
                : Stop.NUMERALS.indexOf(figures.toUpperCase(Locale.ROOT)) + 1;
    }
}
