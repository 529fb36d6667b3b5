package versewind.acoustics;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A procedure of ANSI S3.5-1997 with its tables. The arrays it gives are shared and not to be written to.
 *
 * <p>Source: ANSI S3.5-1997, Tables 1 to 4, read through a public implementation; {@code audibility.csv}.
 *
 * <p>Differences: none known. The importance of the seventeen equal bands is 0.0588 as printed, so that it sums to
 * 0.9996.
 *
 * <p>Checked against: {@code BandAudibilityTest}, every cell.
 */
public enum AudibilityProcedure {
    /** Six octaves, 250 Hz to 8 kHz; masking does not spread. */
    OCTAVE(Masking.WITHIN_BAND),
    /** Seventeen critical bands of equal importance, 300 Hz to 6.4 kHz; masking spreads upward. */
    EQUALLY_CONTRIBUTING(Masking.UPWARD_FROM_EDGES),
    /** Eighteen third octaves, 160 Hz to 8 kHz; masking spreads upward. */
    THIRD_OCTAVE(Masking.UPWARD_FROM_CENTRES),
    /** Twenty-one critical bands, 100 Hz to 9.5 kHz; masking spreads upward. */
    CRITICAL_BAND(Masking.UPWARD_FROM_EDGES);

    /** Masking of one band by another. */
    enum Masking {
        /** A band masks within itself only. */
        WITHIN_BAND,
        /** A band masks higher ones, with a slope computed from its centre. */
        UPWARD_FROM_CENTRES,
        /** A band masks higher ones, with a slope computed from its upper edge. */
        UPWARD_FROM_EDGES
    }

    private enum Column {
        CENTRE_HZ,
        LOWER_HZ,
        UPPER_HZ,
        IMPORTANCE,
        SPEECH_DB,
        NOISE_DB
    }

    private final String word;
    private final Masking masking;

    AudibilityProcedure(Masking masking) {
        this.word = name().toLowerCase(Locale.ROOT).replace('_', ' ');
        this.masking = masking;
    }

    /** The tables, by procedure, column and band. */
    private static final class Table {
        private static final double[][][] VALUES = new double[values().length][Column.values().length][];

        static {
            List<List<String>> rows = TableResource.rows("audibility.csv");
            // loops: streams would cost milliseconds at the start of the program
            for (AudibilityProcedure each : values()) {
                int from = 0;
                while (!rows.get(from).get(0).equals(each.word)) {
                    from++;
                }
                int to = from;
                while (to < rows.size() && rows.get(to).get(0).equals(each.word)) {
                    to++;
                }
                for (int column = 0; column < VALUES[0].length; column++) {
                    double[] values = new double[to - from];
                    for (int band = 0; band < values.length; band++) {
                        String cell = rows.get(from + band).get(1 + column);
                        values[band] = cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
                    }
                    VALUES[each.ordinal()][column] = values;
                }
            }
        }
    }

    private double[] column(Column column) {
        return Table.VALUES[ordinal()][column.ordinal()];
    }

    /** In words: "third octave". */
    public String word() {
        return word;
    }

    /** The procedure of a word, if there is one. */
    public static Optional<AudibilityProcedure> ofWord(String word) {
        return Stream.of(values()).filter(each -> each.word.equals(word)).findFirst();
    }

    Masking masking() {
        return masking;
    }

    /** Number of bands. */
    public int bands() {
        return importance().length;
    }

    /** Nominal centre of a band in Hz. */
    public double centreHz(int band) {
        return column(Column.CENTRE_HZ)[band];
    }

    /** Lower edge of a critical band in Hz. */
    double lowerEdgeHz(int band) {
        return column(Column.LOWER_HZ)[band];
    }

    /** Upper edge of a critical band in Hz. */
    double upperEdgeHz(int band) {
        return column(Column.UPPER_HZ)[band];
    }

    /** Importance of every band for average speech; the sum is 1 within the rounding of the table. */
    public double[] importance() {
        return column(Column.IMPORTANCE);
    }

    /** Spectrum level of speech at normal effort, 1 m in front of the lips, in dB. */
    public double normalSpeechDb(int band) {
        return column(Column.SPEECH_DB)[band];
    }

    /** Spectrum level of the internal noise that accounts for the normal threshold of hearing, in dB. */
    public double internalNoiseDb(int band) {
        return column(Column.NOISE_DB)[band];
    }
}
