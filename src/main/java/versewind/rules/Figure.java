package versewind.rules;

import java.util.OptionalDouble;

/**
 * A number on which a finding rests.
 *
 * @param name what it is: "margin"
 * @param value how much
 * @param unit of what
 * @param plusMinusDb how far a level or a margin may well be off, one standard deviation in dB; empty for other numbers
 */
public record Figure(String name, double value, Unit unit, OptionalDouble plusMinusDb) {

    /** A number that is as it is. */
    Figure(String name, double value, Unit unit) {
        this(name, value, unit, OptionalDouble.empty());
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
