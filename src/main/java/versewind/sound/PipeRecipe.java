package versewind.sound;

import java.util.List;
import java.util.Locale;
import versewind.acoustics.TableResource;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Family;
import versewind.organ.Pipe;

/**
 * Sound power and partials of one pipe. An estimate.
 *
 * <p>Power in dB re 1 pW: P - 2.7 lb(f / 261.63 Hz), with P from {@code pipes.csv} and f the sounding fundamental. The
 * partials are scaled to this sum; each goes into its third-octave band, at -20 dB into the next bands on either side
 * and at -39 dB into those beyond, as band filters do. Partials above 14 kHz are left out.
 *
 * <p>Range: level within 6 dB, single partials within 5 dB (estimates).
 *
 * <p>Source: {@code pipes.csv}, an estimate; no published table was found. The slope is an estimate with the sign
 * reported by Harrison and Thompson-Allen, JASA 100 (1996) 3909. The skirts are those of the published test signals of
 * ISO 532-1:2017; IEC 61260-1 gives limits for filters, not their response.
 *
 * <p>Checked against: {@code PipeRecipeTest}.
 */
enum PipeRecipe {
    PRINCIPAL,
    OPEN_FLUTE,
    STOPPED_FLUTE,
    STRING,
    MIXTURE_RANK,
    TRUMPET,
    OBOE,
    KRUMMHORN;

    /** How many there are. */
    static final int COUNT = values().length;

    private static final double MIDDLE_C_HZ = 440 * Math.pow(2, -9 / 12.0);
    private static final double SLOPE_DB_PER_OCTAVE = -2.7;
    private static final double HIGHEST_HZ = 14_000;
    private static final double NEXT_BAND = ThirdOctaves.dbToPower(-20);
    private static final double BAND_BEYOND = ThirdOctaves.dbToPower(-39);

    /** The table, by recipe. */
    private static final class Table {
        private static final double[] POWER_DB = new double[values().length];
        private static final double[][] PARTIALS = new double[values().length][];

        static {
            for (List<String> row : TableResource.rows("pipes.csv")) {
                int recipe = valueOf(row.get(0).replace(' ', '_').toUpperCase(Locale.ROOT))
                        .ordinal();
                POWER_DB[recipe] = Double.parseDouble(row.get(1));
                PARTIALS[recipe] = shares(row.get(2).split(" "));
            }
        }

        private static double[] shares(String[] levelsDb) {
            double[] powers = new double[levelsDb.length];
            double sum = 0;
            for (int partial = 0; partial < powers.length; partial++) {
                powers[partial] = ThirdOctaves.dbToPower(Double.parseDouble(levelsDb[partial]));
                sum += powers[partial];
            }
            for (int partial = 0; partial < powers.length; partial++) {
                powers[partial] /= sum;
            }
            return powers;
        }
    }

    /** The recipe for a family and a kind of pipe. An estimate. */
    static PipeRecipe of(Family family, Pipe pipe) {
        return switch (family) {
            case PRINCIPAL -> PRINCIPAL;
            case FLUTE -> pipe == Pipe.STOPPED ? STOPPED_FLUTE : OPEN_FLUTE;
            case STRING, CELESTE -> STRING;
            case MUTATION, CORNET -> OPEN_FLUTE;
            case MIXTURE -> MIXTURE_RANK;
            case CHORUS_REED -> TRUMPET;
            case SOLO_REED -> pipe == Pipe.CYLINDRICAL_REED ? KRUMMHORN : OBOE;
        };
    }

    /** Sound power level of the pipe with a fundamental in dB re 1 pW, before trims. */
    double powerDb(double fundamentalHz) {
        return Table.POWER_DB[ordinal()] + SLOPE_DB_PER_OCTAVE * Math.log(fundamentalHz / MIDDLE_C_HZ) / Math.log(2);
    }

    /** Adds one pipe to a spectrum of powers re 1 pW. */
    void addTo(double[] spectrum, double fundamentalHz) {
        double power = ThirdOctaves.dbToPower(powerDb(fundamentalHz));
        double[] partials = Table.PARTIALS[ordinal()];
        for (int n = 1; n <= partials.length && n * fundamentalHz <= HIGHEST_HZ; n++) {
            addPartial(spectrum, n * fundamentalHz, power * partials[n - 1]);
        }
    }

    private static void addPartial(double[] spectrum, double frequencyHz, double power) {
        int centre = ThirdOctaves.bandOrNone(frequencyHz);
        if (centre == ThirdOctaves.NONE) {
            return;
        }
        // band by band and not in a loop: this is most of what an organ costs to open
        spectrum[centre] += power;
        if (centre > 0) {
            spectrum[centre - 1] += power * NEXT_BAND;
        }
        if (centre > 1) {
            spectrum[centre - 2] += power * BAND_BEYOND;
        }
        if (centre + 1 < ThirdOctaves.COUNT) {
            spectrum[centre + 1] += power * NEXT_BAND;
        }
        if (centre + 2 < ThirdOctaves.COUNT) {
            spectrum[centre + 2] += power * BAND_BEYOND;
        }
    }
}
