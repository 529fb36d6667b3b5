package versewind.stoplist;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import versewind.organ.Division;

/** The compass of a keyboard as a heading gives it: "C-g3", "CC to A", "56 notes". */
final class Compass {

    private static final Pattern NOTES = Pattern.compile(
            "(\\d{2})\\s*-?\\s*(?:notes?|notas|note|tasten|keys|key|touches|toetsen|tasti|teclas|toner|tangenter|t\u00f6ne|nts)\\b\\.?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SPAN = Pattern.compile(
            "(?<![\\p{L}\\d])(?:[CFGA]{1,3}|Do|Ut)[\\d']{0,2}(?:\\s?,\\s?D)?\\s?(?:-|to|bis|tot|t/m|a|\u00e0)\\s?(do|re|mi|fa|sol|la|si|ut|[a-h])(#|is|\u266f|b)?\\s?((?:\\d)|[']{1,4}|\"'?|\u00b0)?(?![\\p{L}])",
            Pattern.CASE_INSENSITIVE);
    private static final String STEPS = "c d ef g a h";
    private static final int OCTAVE = 12;
    private static final int SMALL_C = Division.BOTTOM_KEY + OCTAVE;

    private Compass() {}

    /** A text without what it says of a compass. */
    static String without(String text) {
        return SPAN.matcher(NOTES.matcher(text).replaceAll(" ")).replaceAll(" ");
    }

    /** The number of keys, if it is said and can be. */
    static OptionalInt keys(String text, boolean isPedal) {
        Matcher notes = NOTES.matcher(text);
        if (notes.find()) {
            return sensible(Integer.parseInt(notes.group(1)), isPedal);
        }
        Matcher span = SPAN.matcher(text);
        return span.find() && span.group(3) != null ? sensible(span(span), isPedal) : OptionalInt.empty();
    }

    private static int span(Matcher span) {
        String note = span.group(1).toLowerCase(Locale.ROOT);
        if (note.length() > 1) {
            return 0;
        }
        int step = note.equals("b") ? 10 : STEPS.indexOf(note);
        String octave = span.group(3);
        int octaves = octave.matches("\\d")
                ? Integer.parseInt(octave)
                : octave.equals("\u00b0") ? 0 : octave.replace("\"", "''").length();
        int top = SMALL_C
                + OCTAVE * octaves
                + step
                + (span.group(2) == null || span.group(2).equals("b") ? 0 : 1);
        return top - Division.BOTTOM_KEY + 1;
    }

    private static OptionalInt sensible(int keys, boolean isPedal) {
        boolean possible = isPedal ? keys >= 12 && keys <= 37 : keys >= 24 && keys <= 73;
        return possible ? OptionalInt.of(keys) : OptionalInt.empty();
    }
}
