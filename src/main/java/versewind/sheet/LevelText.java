package versewind.sheet;

import java.util.OptionalDouble;

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
        return Math.round(100 * share) + "%";
    }

    /** Two figures at least below ten: "9.4", "22". */
    public static String sone(double sone) {
        long tenths = Math.round(10 * sone);
        return tenths < 100 ? tenths / 10 + "." + tenths % 10 : whole(sone);
    }
}
