package versewind.sound;

/**
 * A procedure of band audibility with its tables: {@link #OCTAVE} or {@link #THIRD_OCTAVE}.
 *
 * <p>Source: ANSI S3.5-1997, Tables 3 (third octaves) and 4 (octaves), read through a public implementation of its
 * tables.
 */
public final class AudibilityProcedure {

    /** How one band masks others. */
    enum Masking {
        /** Not at all: a band masks within itself. */
        WITHIN_BAND,
        /** A band masks the higher ones too. */
        UPWARD
    }

    /** Six octaves, 250 Hz to 8 kHz; masking does not spread. */
    public static final AudibilityProcedure OCTAVE = new AudibilityProcedure(
            Masking.WITHIN_BAND,
            new double[] {250, 500, 1000, 2000, 4000, 8000},
            new double[] {0.0617, 0.1671, 0.2373, 0.2648, 0.2142, 0.0549},
            new double[] {34.75, 34.27, 25.01, 17.32, 9.33, 1.13},
            new double[] {-3.9, -9.7, -12.5, -17.7, -25.9, -7.1});

    /** Eighteen third octaves, 160 Hz to 8 kHz; masking spreads upward. */
    public static final AudibilityProcedure THIRD_OCTAVE = new AudibilityProcedure(
            Masking.UPWARD,
            new double[] {
                160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000
            },
            new double[] {
                0.0083, 0.0095, 0.0150, 0.0289, 0.0440, 0.0578, 0.0653, 0.0711, 0.0818, 0.0844, 0.0882, 0.0898, 0.0868,
                0.0844, 0.0771, 0.0527, 0.0364, 0.0185
            },
            new double[] {
                32.41, 34.48, 34.75, 33.98, 34.59, 34.27, 32.06, 28.30, 25.01, 23.00, 20.15, 17.32, 13.18, 11.55, 9.33,
                5.31, 2.59, 1.13
            },
            new double[] {
                0.6, -1.7, -3.9, -6.1, -8.2, -9.7, -10.8, -11.9, -12.5, -13.5, -15.4, -17.7, -21.2, -24.2, -25.9, -23.6,
                -15.8, -7.1
            });

    private final Masking masking;
    private final double[] centresHz;
    private final double[] importance;
    private final double[] normalSpeechDb;
    private final double[] internalNoiseDb;

    private AudibilityProcedure(
            Masking masking,
            double[] centresHz,
            double[] importance,
            double[] normalSpeechDb,
            double[] internalNoiseDb) {
        this.masking = masking;
        this.centresHz = centresHz;
        this.importance = importance;
        this.normalSpeechDb = normalSpeechDb;
        this.internalNoiseDb = internalNoiseDb;
    }

    /** How one band masks others. */
    Masking masking() {
        return masking;
    }

    /** Number of bands. */
    public int bands() {
        return centresHz.length;
    }

    /** Nominal centre in Hz. */
    public double centreHz(int band) {
        return centresHz[band];
    }

    /** Importance of a band for average speech; the sum over the bands is 1 to the table's rounding. */
    public double importance(int band) {
        return importance[band];
    }

    double[] importance() {
        return importance;
    }

    /** Spectrum level of speech at normal effort, 1 m in front of the lips, in dB. */
    public double normalSpeechDb(int band) {
        return normalSpeechDb[band];
    }

    /** Spectrum level in dB of the noise that would account for the normal threshold of hearing. */
    public double internalNoiseDb(int band) {
        return internalNoiseDb[band];
    }
}
