package versewind.sheet;

import java.util.OptionalDouble;
import versewind.sound.Balance;
import versewind.sound.Dynamic;
import versewind.sound.Estimate;

/** Levels in whole dB, as people read them; a hyphen where there is none. */
public final class LevelText {

    /** Stands where there is nothing to say. */
    public static final String NONE = "-";

    private LevelText() {}

    /** "78". */
    public static String whole(OptionalDouble level) {
        return level.isPresent() ? whole(level.getAsDouble()) : NONE;
    }

    /** "78". */
    public static String whole(double number) {
        return Long.toString(Math.round(number));
    }

    /** "78±6": the level and what it may well be off. */
    public static String whole(OptionalDouble level, double plusMinusDb) {
        return level.isPresent() ? whole(level) + plusMinus(plusMinusDb) : NONE;
    }

    /** "±6"; at least 1, since nothing is known more exactly. */
    public static String plusMinus(double plusMinusDb) {
        return "±" + Math.max(1, Math.round(plusMinusDb));
    }

    /** A difference: "+3±1"; "0" where both are the same. */
    public static String signed(double db, double plusMinusDb) {
        return signed(db) + (db == 0 && plusMinusDb == 0 ? "" : plusMinus(plusMinusDb));
    }

    /** "+3", "0", "-2"; a hyphen where there is none. */
    public static String signed(OptionalDouble db) {
        return db.isPresent() ? signed(db.getAsDouble()) : NONE;
    }

    /** "+3", "0", "-2". */
    public static String signed(double db) {
        long rounded = Math.round(db);
        return rounded > 0 ? "+" + rounded : Long.toString(rounded);
    }

    /** A share, 0 to 1, as "23%". */
    public static String percent(double share) {
        return Balance.percent(share) + "%";
    }

    /** The organ's dynamic and level: "fff 84±4", or "silent". */
    public static String words(Estimate estimate) {
        return estimate.organDba().isEmpty()
                ? "silent"
                : (estimate.dynamic().map(Dynamic::word).orElse("") + " "
                                + whole(
                                        estimate.organDba(),
                                        estimate.plusMinus().organDb()))
                        .strip();
    }

    /** The organ in the nave, if it sounds: "78±4 dB(A), 44±9 sone, 94±3 phon". */
    public static String organ(Estimate estimate) {
        Estimate.LoudnessStdDevs loudness = estimate.loudnessPlusMinus();
        return whole(estimate.organDba(), estimate.plusMinus().organDb()) + " dB(A), "
                + whole(OptionalDouble.of(estimate.sone()), loudness.sone()) + " sone, "
                + whole(estimate.phon(), loudness.phon()) + " phon";
    }
}
