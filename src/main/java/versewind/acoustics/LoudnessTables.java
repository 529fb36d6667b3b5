package versewind.acoustics;

/**
 * The tables of the stationary loudness method; index 0 is the lowest band.
 *
 * <p>Source: ISO 532-1:2017, Tables A.3 to A.9 (as DIN 45631; Zwicker, Fastl et al. 1991), read through public
 * implementations, among them the program listing of the standard.
 *
 * <p>Differences: the implementations disagree in one cell of {@link #FLANK_STEEPNESS}, row 12 (0.30 sone/Bark), column
 * 4: 0.22 in the listing, used here, and 0.24 in others. No published signal depends on it.
 *
 * <p>Checked against: {@code LoudnessTablesTest}, every cell.
 */
final class LoudnessTables {

    /** Number of low bands, 25 to 250 Hz, which are corrected for the sensitivity of the ear and then grouped. */
    static final int LOW_BANDS = 11;

    /** Ends (exclusive) of the groups of low bands: 25 to 80, 100 to 160, 200 and 250 Hz. */
    static final int[] GROUP_ENDS = {6, 9, 11};

    /** Upper levels in dB of the ranges of the low-band correction. */
    static final double[] RANGE_DB = {45, 55, 65, 71, 80, 90, 100, 120};

    /** Correction in dB of the low bands, by range of level and band. */
    static final double[][] LOW_CORRECTION_DB = {
        {-32, -24, -16, -10, -5, 0, -7, -3, 0, -2, 0},
        {-29, -22, -15, -10, -4, 0, -7, -2, 0, -2, 0},
        {-27, -19, -14, -9, -4, 0, -6, -2, 0, -2, 0},
        {-25, -17, -12, -9, -3, 0, -5, -2, 0, -2, 0},
        {-23, -16, -11, -7, -3, 0, -4, -1, 0, -1, 0},
        {-20, -14, -10, -6, -3, 0, -4, -1, 0, -1, 0},
        {-18, -12, -9, -6, -2, 0, -3, -1, 0, -1, 0},
        {-15, -10, -8, -4, -2, 0, -3, -1, 0, -1, 0}
    };

    /** Level in dB at the threshold in quiet of the 20 approximated critical bands. */
    static final double[] THRESHOLD_DB = {30, 18, 12, 8, 7, 6, 5, 4, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3};

    /** Attenuation in dB on the way to the inner ear. */
    static final double[] TRANSMISSION_DB = {
        0, 0, 0, 0, 0, 0, 0, 0, 0, 0, -0.5, -1.6, -3.2, -5.4, -5.6, -4, -1.5, 2, 5, 12
    };

    /** Difference in dB between the diffuse and the free field. */
    static final double[] DIFFUSE_DB = {
        0, 0, 0.5, 0.9, 1.2, 1.6, 2.3, 2.8, 3, 2, 0, -1.4, -2, -1.9, -1, 0.5, 3, 4, 4.3, 4
    };

    /** Adaptation in dB of third-octave levels to critical-band levels. */
    static final double[] BANDWIDTH_DB = {
        -0.25, -0.6, -0.8, -0.8, -0.5, 0, 0.5, 1.1, 1.5, 1.7, 1.8, 1.8, 1.7, 1.6, 1.4, 1.2, 0.8, 0.5, 0, -0.5
    };

    /** Upper limits in Bark of the critical bands on the scale of the critical-band rate; the last is its end. */
    static final double[] UPPER_BARK = {
        0.9, 1.8, 2.8, 3.5, 4.4, 5.4, 6.6, 7.9, 9.2, 10.6, 12.3, 13.8, 15.2, 16.7, 18.1, 19.3, 20.6, 21.8, 22.7, 23.6,
        24.0
    };

    /** Lower limit of specific loudness in sone/Bark for each row of {@link #FLANK_STEEPNESS}. */
    static final double[] FLANK_FLOOR = {
        21.5, 18, 15.1, 11.5, 9, 6.1, 4.4, 3.1, 2.13, 1.36, 0.82, 0.42, 0.3, 0.22, 0.15, 0.1, 0.035, 0
    };

    /**
     * Steepness in sone/Bark^2 of the upper flanks, by specific loudness and by band; the last column holds for all
     * higher bands.
     */
    static final double[][] FLANK_STEEPNESS = {
        {13, 8.2, 6.3, 5.5, 5.5, 5.5, 5.5, 5.5},
        {9, 7.5, 6, 5.1, 4.5, 4.5, 4.5, 4.5},
        {7.8, 6.7, 5.6, 4.9, 4.4, 3.9, 3.9, 3.9},
        {6.2, 5.4, 4.6, 4.0, 3.5, 3.2, 3.2, 3.2},
        {4.5, 3.8, 3.6, 3.2, 2.9, 2.7, 2.7, 2.7},
        {3.7, 3.0, 2.8, 2.35, 2.2, 2.2, 2.2, 2.2},
        {2.9, 2.3, 2.1, 1.9, 1.8, 1.7, 1.7, 1.7},
        {2.4, 1.7, 1.5, 1.35, 1.3, 1.3, 1.3, 1.3},
        {1.95, 1.45, 1.3, 1.15, 1.1, 1.1, 1.1, 1.1},
        {1.5, 1.2, 0.94, 0.86, 0.82, 0.82, 0.82, 0.82},
        {0.72, 0.67, 0.64, 0.63, 0.62, 0.62, 0.62, 0.62},
        {0.59, 0.53, 0.51, 0.5, 0.42, 0.42, 0.42, 0.42},
        {0.4, 0.33, 0.26, 0.24, 0.22, 0.22, 0.22, 0.22},
        {0.27, 0.21, 0.2, 0.18, 0.17, 0.17, 0.17, 0.17},
        {0.16, 0.15, 0.14, 0.12, 0.11, 0.11, 0.11, 0.11},
        {0.12, 0.11, 0.1, 0.08, 0.08, 0.08, 0.08, 0.08},
        {0.09, 0.08, 0.07, 0.06, 0.06, 0.06, 0.06, 0.05},
        {0.06, 0.05, 0.03, 0.02, 0.02, 0.02, 0.02, 0.02}
    };

    private LoudnessTables() {}
}
