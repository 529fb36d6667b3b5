package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import versewind.sound.Estimate;

/**
 * A number on which a finding rests.
 *
 * @param name what it is: "share"
 * @param value how much
 * @param unit of what
 * @param plusMinusDb how far a level may well be off, one standard deviation in dB; empty for other numbers
 */
public record Figure(String name, double value, Unit unit, OptionalDouble plusMinusDb) {

    /** A number that is as it is. */
    Figure(String name, double value, Unit unit) {
        this(name, value, unit, OptionalDouble.empty());
    }

    /** A level or a difference of levels. */
    static Figure db(String name, double db) {
        return new Figure(name, db, Unit.DB);
    }

    static Figure count(String name, int count) {
        return new Figure(name, count, Unit.COUNT);
    }

    /** The share of an estimate, and the levels behind it. */
    static List<Figure> balance(Estimate estimate) {
        List<Figure> figures = new ArrayList<>();
        estimate.balance().share().ifPresent(share -> figures.add(new Figure("share", share, Unit.SHARE)));
        add(figures, "organ", estimate.organDba(), estimate.plusMinus().organDb());
        add(figures, "singing", estimate.singersDba(), estimate.plusMinus().singersDb());
        return figures;
    }

    private static void add(List<Figure> figures, String name, OptionalDouble db, double plusMinusDb) {
        db.ifPresent(value -> figures.add(new Figure(name, value, Unit.DB, OptionalDouble.of(plusMinusDb))));
    }

    /** A difference as a sentence gives it: "about 4 dB". */
    static String about(double db) {
        return "about " + Math.round(Math.abs(db)) + " dB";
    }

    /** What is counted or measured, and with how many decimals it is worth telling. */
    public enum Unit {
        /** A level or a difference of levels; never told in tenths. */
        DB(0),
        SONE(1),
        SECONDS(1),
        BEATS(2),
        SHARE(2),
        COUNT(0);

        private final int decimals;

        Unit(int decimals) {
            this.decimals = decimals;
        }

        /** Decimals with which it is told. */
        public int decimals() {
            return decimals;
        }
    }
}
