package versewind.acoustics;

import java.util.List;
import java.util.Optional;

/**
 * A procedure of band audibility with its tables: {@link #OCTAVE}, {@link #THIRD_OCTAVE}, {@link #CRITICAL_BAND} or {@link
 * #EQUALLY_CONTRIBUTING}.
 *
 * <p>Source: ANSI S3.5-1997, Tables 1 (critical bands), 2 (equally contributing critical bands), 3 (third octaves) and 4
 * (octaves), read through a public implementation of its tables.
 *
 * <p>Differences: none. The importance of the seventeen equal bands is 0.0588 as printed, so that the whole is 0.9996.
 *
 * <p>Checked against: {@code BandAudibilityTest}, every cell.
 */
public final class AudibilityProcedure {

    /** How one band masks others. */
    enum Masking {
        /** Not at all: a band masks within itself. */
        WITHIN_BAND,
        /** A band masks the higher ones too, with a slope that is reckoned from its centre. */
        UPWARD_FROM_CENTRES,
        /** A band masks the higher ones too, with a slope that is reckoned from its upper edge. */
        UPWARD_FROM_EDGES
    }

    /** Six octaves, 250 Hz to 8 kHz; masking does not spread. */
    public static final AudibilityProcedure OCTAVE = new AudibilityProcedure(
            "octave",
            Masking.WITHIN_BAND,
            new double[] {250, 500, 1000, 2000, 4000, 8000},
            new double[0],
            new double[] {0.0617, 0.1671, 0.2373, 0.2648, 0.2142, 0.0549},
            new double[] {34.75, 34.27, 25.01, 17.32, 9.33, 1.13},
            new double[] {-3.9, -9.7, -12.5, -17.7, -25.9, -7.1});

    /** Eighteen third octaves, 160 Hz to 8 kHz; masking spreads upward. */
    public static final AudibilityProcedure THIRD_OCTAVE = new AudibilityProcedure(
            "third octave",
            Masking.UPWARD_FROM_CENTRES,
            new double[] {
                160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000
            },
            new double[0],
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

    /** Twenty-one critical bands, 100 Hz to 9.5 kHz; masking spreads upward. */
    public static final AudibilityProcedure CRITICAL_BAND = new AudibilityProcedure(
            "critical band",
            Masking.UPWARD_FROM_EDGES,
            new double[] {
                150, 250, 350, 450, 570, 700, 840, 1000, 1170, 1370, 1600, 1850, 2150, 2500, 2900, 3400, 4000, 4800,
                5800, 7000, 8500
            },
            new double[] {
                100, 200, 300, 400, 510, 630, 770, 920, 1080, 1270, 1480, 1720, 2000, 2320, 2700, 3150, 3700, 4400,
                5300, 6400, 7700, 9500
            },
            new double[] {
                0.0103, 0.0261, 0.0419, 0.0577, 0.0577, 0.0577, 0.0577, 0.0577, 0.0577, 0.0577, 0.0577, 0.0577, 0.0577,
                0.0577, 0.0577, 0.0577, 0.0577, 0.0460, 0.0343, 0.0226, 0.0110
            },
            new double[] {
                31.44, 34.75, 34.14, 34.58, 33.17, 30.64, 27.59, 25.01, 23.52, 22.28, 20.15, 18.29, 16.37, 13.80, 12.21,
                11.09, 9.33, 5.84, 3.47, 1.78, -0.14
            },
            new double[] {
                1.5, -3.9, -7.2, -8.9, -10.3, -11.4, -12.0, -12.5, -13.2, -14.0, -15.4, -16.9, -18.8, -21.2, -23.2,
                -24.9, -25.9, -24.2, -19.0, -11.7, -6.0
            });

    /** Seventeen critical bands of equal importance, 300 Hz to 6.4 kHz; masking spreads upward. */
    public static final AudibilityProcedure EQUALLY_CONTRIBUTING = new AudibilityProcedure(
            "equally contributing",
            Masking.UPWARD_FROM_EDGES,
            new double[] {
                350, 450, 570, 700, 840, 1000, 1170, 1370, 1600, 1850, 2150, 2500, 2900, 3400, 4000, 4800, 5800
            },
            new double[] {
                300, 400, 510, 630, 770, 920, 1080, 1270, 1480, 1720, 2000, 2320, 2700, 3150, 3700, 4400, 5300, 6400
            },
            new double[] {
                0.0588, 0.0588, 0.0588, 0.0588, 0.0588, 0.0588, 0.0588, 0.0588, 0.0588, 0.0588, 0.0588, 0.0588, 0.0588,
                0.0588, 0.0588, 0.0588, 0.0588
            },
            new double[] {
                34.14, 34.58, 33.17, 30.64, 27.59, 25.01, 23.52, 22.28, 20.15, 18.29, 16.37, 13.80, 12.21, 11.09, 9.33,
                5.84, 3.47
            },
            new double[] {
                -7.2, -8.9, -10.3, -11.4, -12.0, -12.5, -13.2, -14.0, -15.4, -16.9, -18.8, -21.2, -23.2, -24.9, -25.9,
                -24.2, -19.0
            });

    /** All procedures, from the fewest bands to the most. */
    public static final List<AudibilityProcedure> ALL =
            List.of(OCTAVE, EQUALLY_CONTRIBUTING, THIRD_OCTAVE, CRITICAL_BAND);

    private final String word;
    private final Masking masking;
    private final double[] centresHz;
    private final double[] edgesHz;
    private final double[] importance;
    private final double[] normalSpeechDb;
    private final double[] internalNoiseDb;

    private AudibilityProcedure(
            String word,
            Masking masking,
            double[] centresHz,
            double[] edgesHz,
            double[] importance,
            double[] normalSpeechDb,
            double[] internalNoiseDb) {
        this.word = word;
        this.masking = masking;
        this.centresHz = centresHz;
        this.edgesHz = edgesHz;
        this.importance = importance;
        this.normalSpeechDb = normalSpeechDb;
        this.internalNoiseDb = internalNoiseDb;
    }

    /** In words: "third octave". */
    public String word() {
        return word;
    }

    /** The procedure of this word, if there is one. */
    public static Optional<AudibilityProcedure> ofWord(String word) {
        return ALL.stream().filter(each -> each.word.equals(word)).findFirst();
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

    /** Lower edge in Hz of a critical band. */
    double lowerEdgeHz(int band) {
        return edgesHz[band];
    }

    /** Upper edge in Hz of a critical band. */
    double upperEdgeHz(int band) {
        return edgesHz[band + 1];
    }

    /** Importance of a band for average speech; the sum over the bands is 1 to the table's rounding. */
    public double importance(int band) {
        return importance[band];
    }

    /** Importance of every band; not a copy, not to be changed. */
    public double[] importance() {
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

    @Override
    public String toString() {
        return word;
    }
}
