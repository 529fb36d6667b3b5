package versewind.organ;

/**
 * A swell box around a division.
 *
 * @param trimDb how much less than is usual it takes away when it is closed, in dB; negative where it takes away more
 */
public record SwellBox(double trimDb) {

    public SwellBox {
        if (Math.abs(trimDb) > Stop.WIDEST_TRIM_DB) {
            throw new IllegalArgumentException("a trim lies between -20 and 20 dB");
        }
    }
}
