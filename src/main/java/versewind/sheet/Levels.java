package versewind.sheet;

import java.util.OptionalDouble;
import versewind.sound.Dynamic;
import versewind.sound.Margin;

/** Levels in whole dB, as they stand on the sheet. */
final class Levels {

    private static final String MINUS = "\u2212";

    private Levels() {}

    /** "81±3 dB(A)"; "silent". */
    static String level(VerseSheet verse) {
        OptionalDouble organDba = verse.estimate().organDba();
        if (organDba.isEmpty()) {
            return "silent";
        }
        return Math.round(organDba.getAsDouble()) + "\u00b1"
                + Math.round(verse.plusMinusDb().orElse(0)) + " dB(A)";
    }

    /** "mf"; blank where nothing sounds. */
    static String dynamic(VerseSheet verse) {
        return verse.estimate().dynamic().map(Dynamic::word).orElse("");
    }

    /** "leads, +2 dB". */
    static String verdict(VerseSheet verse) {
        Margin margin = verse.estimate().margin();
        String number = margin.db().isPresent() ? ", " + signed(margin) + " dB" : "";
        return Wording.verdict(margin) + number;
    }

    /** "−2±5". */
    private static String signed(Margin margin) {
        return signed(margin.db().getAsDouble()) + "\u00b1"
                + Math.round(margin.plusMinusDb().orElse(0));
    }

    /** "+3", "0", "−2". */
    static String signed(double db) {
        long rounded = Math.round(db);
        if (rounded == 0) {
            return "0";
        }
        return rounded > 0 ? "+" + rounded : MINUS + -rounded;
    }
}
