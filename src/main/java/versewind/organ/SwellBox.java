package versewind.organ;

/**
 * A swell box around a division.
 *
 * @param trimDb level of the closed box above the usual one, in dB; negative if it closes more tightly
 */
public record SwellBox(double trimDb) {

    public SwellBox {
        if (Math.abs(trimDb) > Stop.WIDEST_TRIM_DB) {
            throw new IllegalArgumentException("a trim lies between -20 and 20 dB");
        }
    }
}
