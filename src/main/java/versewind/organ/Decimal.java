package versewind.organ;

import java.math.BigDecimal;

/** How numbers are written where they are read again: as short as they can be, and not a bit less. */
public final class Decimal {
    private Decimal() {}

    /** A number without zeros at its end and without an exponent: 6000, 1.5. */
    public static String of(double value) {
        return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
