package versewind.acoustics;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The 28 third-octave bands from 25 Hz to 12.5 kHz that every spectrum has here, their edges and frequency weightings.
 *
 * <p>A spectrum is an array of {@link #COUNT} powers: mean-square pressures re (20 uPa)^2, so that a level in dB is 10
 * lg(power). Powers add; levels are made last. A power of 0 is legal; its level, negative infinity, is for computing
 * and never for showing.
 *
 * <p>Exact centres are 1000 * 10^(x/10) Hz for the band number x, -16 to 11 here; the edges lie at x -+ 1/2.
 *
 * <p>Source: IEC 61260-1:2014, 5.2 to 5.6 (base-10 system) for centres and edges, IEC 61672-1:2013, Table 3 for the
 * weightings; read through public implementations, as the standards themselves were not at hand; clause
 * numbers from memory.
 *
 * <p>Differences: none known.
 *
 * <p>Checked against: {@code ThirdOctavesTest}, all 34 bands from 10 Hz to 20 kHz, and the weightings also by their
 * formula.
 */
public final class ThirdOctaves {

    /** Number of bands. */
    public static final int COUNT = 28;

    private static final int FIRST_NUMBER = -16;
    private static final int THIRDS_IN_AN_OCTAVE = 3;
    private static final double LN_10_OVER_10 = Math.log(10) / 10;

    private static final double[] A_DB = {
        -44.7, -39.4, -34.6, -30.2, -26.2, -22.5, -19.1, -16.1, -13.4, -10.9, -8.6, -6.6, -4.8, -3.2, -1.9, -0.8, 0,
        0.6, 1.0, 1.2, 1.3, 1.2, 1.0, 0.5, -0.1, -1.1, -2.5, -4.3
    };
    private static final double[] C_DB = {
        -4.4, -3.0, -2.0, -1.3, -0.8, -0.5, -0.3, -0.2, -0.1, 0, 0, 0, 0, 0, 0, 0, 0, 0, -0.1, -0.2, -0.3, -0.5, -0.8,
        -1.3, -2.0, -3.0, -4.4, -6.2
    };

    private static final double[] A_FACTOR = new double[COUNT];
    private static final double[] C_FACTOR = new double[COUNT];
    private static final double[] BANDWIDTH_HZ = new double[COUNT];
    private static final double[] EDGE_HZ = new double[COUNT + 1];

    /** The index of no band. */
    public static final int NONE = -1;

    static {
        for (int edge = 0; edge <= COUNT; edge++) {
            EDGE_HZ[edge] = edgeBelowNumberHz(edge + FIRST_NUMBER);
        }
        for (int band = 0; band < COUNT; band++) {
            A_FACTOR[band] = dbToPower(A_DB[band]);
            C_FACTOR[band] = dbToPower(C_DB[band]);
            BANDWIDTH_HZ[band] = upperEdgeHz(band) - lowerEdgeHz(band);
        }
    }

    private ThirdOctaves() {}

    /** Exact centre of a band in Hz: 1000 * 10^(x/10). */
    public static double centreHz(int band) {
        return centreOfNumberHz(band + FIRST_NUMBER);
    }

    /** Lower edge of a band in Hz, part of the band. */
    public static double lowerEdgeHz(int band) {
        return EDGE_HZ[band];
    }

    /** Upper edge of a band in Hz, part of the next band. */
    public static double upperEdgeHz(int band) {
        return EDGE_HZ[band + 1];
    }

    /** Exact centre in Hz of the band with this number of IEC 61260-1; 0 is 1 kHz. */
    static double centreOfNumberHz(int number) {
        return 1000 * Math.pow(10, number / 10.0);
    }

    /** Edge in Hz below the band with this number of IEC 61260-1. */
    static double edgeBelowNumberHz(int number) {
        return 1000 * Math.pow(10, (2 * number - 1) / 20.0);
    }

    /** Bandwidth in Hz. */
    public static double bandwidthHz(int band) {
        return BANDWIDTH_HZ[band];
    }

    /** 10 lg of the bandwidth in Hz: the level of a band minus its spectrum level, in dB. */
    public static double bandwidthDb(int band) {
        return powerToDb(BANDWIDTH_HZ[band]);
    }

    /** The band of a frequency in Hz; empty below 22.4 Hz and from 14.1 kHz. */
    public static OptionalInt bandOf(double frequencyHz) {
        int band = bandOrNone(frequencyHz);
        return band == NONE ? OptionalInt.empty() : OptionalInt.of(band);
    }

    /** The band of a frequency in Hz, or {@link #NONE}. */
    public static int bandOrNone(double frequencyHz) {
        if (!(frequencyHz >= EDGE_HZ[0] && frequencyHz < EDGE_HZ[COUNT])) {
            return NONE;
        }
        int band = (int) Math.floor(powerToDb(frequencyHz / 1000) + 0.5) - FIRST_NUMBER;
        if (band == COUNT || frequencyHz < EDGE_HZ[band]) {
            return band - 1;
        }
        return frequencyHz < EDGE_HZ[band + 1] ? band : band + 1;
    }

    /** The octave of a band, counted from that of 31.5 Hz: 125 Hz is 2, 1 kHz 5, 4 kHz 7, 16 kHz 9. */
    public static int octaveOf(int band) {
        return band / THIRDS_IN_AN_OCTAVE;
    }

    /** Level in dB of a power, 10 lg(power); negative infinity for none. */
    public static double powerToDb(double power) {
        return 10 * Math.log10(power);
    }

    /** Power of a level in dB, 10^(level/10); 0 for negative infinity. */
    public static double dbToPower(double levelDb) {
        return Math.exp(levelDb * LN_10_OVER_10);
    }

    /** Level in dB(A) of a spectrum of powers; negative infinity for silence. */
    public static double dbA(double[] power) {
        return powerToDb(weighted(power, A_FACTOR));
    }

    /** Level in dB(A) of a spectrum of powers; empty for silence. */
    public static OptionalDouble levelDba(double[] power) {
        double weighted = weighted(power, A_FACTOR);
        return weighted > 0 ? OptionalDouble.of(powerToDb(weighted)) : OptionalDouble.empty();
    }

    /** Level in dB(C) of a spectrum of powers; negative infinity for silence. */
    public static double dbC(double[] power) {
        return powerToDb(weighted(power, C_FACTOR));
    }

    /** A-weighted power of a spectrum of powers, re (20 uPa)^2. */
    public static double aWeightedPower(double[] power) {
        return weighted(power, A_FACTOR);
    }

    /** A-weighting of a band as a factor of power. */
    public static double aFactor(int band) {
        return A_FACTOR[band];
    }

    private static double weighted(double[] power, double[] factor) {
        requireSpectrum(power);
        double sum = 0;
        for (int band = 0; band < COUNT; band++) {
            sum += power[band] * factor[band];
        }
        return sum;
    }

    /** Requires one entry a band. */
    static void requireSpectrum(double[] bands) {
        if (bands.length != COUNT) {
            throw new IllegalArgumentException(
                    "a spectrum has " + COUNT + " third-octave bands, this one has " + bands.length);
        }
    }
}
