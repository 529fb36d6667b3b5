package versewind.organ;

import java.math.BigDecimal;

/** Decimal numbers in files: as short as possible without losing precision. */
public final class Decimal {
    private Decimal() {}

    /** A number without zeros at its end and without an exponent: 6000, 1.5. */
    public static String of(double value) {
        return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
