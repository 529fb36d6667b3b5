package versewind.sheet;

import java.util.OptionalDouble;
import versewind.sound.Dynamic;
import versewind.sound.Margin;

/** Levels in whole dB, as they stand on the sheet. */
final class SheetLevels {

    private static final String PLUS_MINUS = "\u00b1";
    private static final String MINUS = "\u2212";

    private SheetLevels() {}

    /** "81±3 dB(A)"; "silent". */
    static String level(VerseSheet verse) {
        OptionalDouble organDba = verse.estimate().organDba();
        if (organDba.isEmpty()) {
            return "silent";
        }
        return Math.round(organDba.getAsDouble()) + plusMinus(verse.plusMinusDb()) + " dB(A)";
    }

    /** "mf"; blank where nothing sounds. */
    static String dynamic(VerseSheet verse) {
        return verse.estimate().dynamic().map(Dynamic::word).orElse("");
    }

    /** "leads, +2±4 dB". */
    static String verdict(VerseSheet verse) {
        Margin margin = verse.estimate().margin();
        return Wording.verdict(margin)
                + (margin.db().isPresent()
                        ? ", " + signed(margin.db().getAsDouble()) + plusMinus(margin.plusMinusDb()) + " dB"
                        : "");
    }

    private static String plusMinus(OptionalDouble db) {
        return db.isPresent() ? PLUS_MINUS + Math.round(db.getAsDouble()) : "";
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
