package versewind.sound;

import java.util.Arrays;
import java.util.List;
import versewind.acoustics.TableResource;
import versewind.acoustics.ThirdOctaves;
import versewind.plan.Singing;
import versewind.plan.Sung;
import versewind.plan.SungBy;

/**
 * Sound power of singers, and their level at a seat among them. An estimate.
 *
 * <p>One voice: the spectrum of speech at 1 m of ANSI S3.5, its octaves spread evenly over their thirds, plus 8 dB to
 * make it a sound power. Gentle singing has the effort "normal", ordinary "raised", strong midway between raised and
 * "loud", full voice "loud". A trained soloist has half a step more effort and 10 dB more power. N voices have N times
 * the power.
 *
 * <p>Of those present 8 in 10 sing, or as many as the plan says. A treble has 3 dB less power. At a seat among N
 * singers there is the diffuse field of the others, (N - 1) 4/A, and the direct sound of the neighbours, (n/2)
 * ln(R/r0), the integral of n/(4 pi r^2) over a disc: n = 1.1 singers a m2, r0 = 0.7 m, R = (N/(pi n))^0.5.
 *
 * <p>Range: within 4 dB (an estimate). No published level of hymn singing a person was found.
 *
 * <p>Source: {@code voices.csv}, spectra of ANSI S3.5-1997; levels of singing are an estimate. That of a soloist lies
 * within what is published: the strongest third octave of trained singers reaches 95 dB at 1 m, of untrained ones 80
 * dB (Hunter and Titze, J. Singing 61 (2005), as quoted elsewhere).
 *
 * <p>Checked against: {@code SingersTest}.
 */
final class Singers {

    private static final int USUAL_CHOIR = 16;
    private static final int USUAL_TREBLES = 10;

    private static final double POWER_OVER_1_M_DB = 8;
    private static final double SINGERS_PER_M2 = 1.1;
    private static final double NEAREST_M = 0.7;
    private static final double TRAINED_EFFORT = 0.5;
    private static final double TRAINED_DB = 10;
    private static final double TREBLE_DB = -3;
    private static final double THIRD_OF_OCTAVE_DB = ThirdOctaves.powerToDb(3);
    private static final int FIRST_OCTAVE = 2;

    private final double[][] voices = new double[Singing.values().length][];
    private final double[][] soloists = new double[Singing.values().length][];
    private final double[][] trebles = new double[Singing.values().length][];

    /** Singers at a level above the estimate, in dB. */
    Singers(double moreDb) {
        this(evenly(moreDb));
    }

    private static double[] evenly(double moreDb) {
        double[] everywhereDb = new double[Table.OCTAVES];
        Arrays.fill(everywhereDb, moreDb);
        return everywhereDb;
    }

    /** Singers at levels above the estimate in dB, by octave from 125 Hz. */
    Singers(double[] moreDb) {
        for (Singing strength : Singing.values()) {
            voices[strength.ordinal()] = voice(effort(strength), 0, moreDb);
            trebles[strength.ordinal()] = voice(effort(strength), TREBLE_DB, moreDb);
            soloists[strength.ordinal()] = voice(effort(strength) + TRAINED_EFFORT, TRAINED_DB, moreDb);
        }
    }

    /** Sound power of one voice re 1 pW by band; shared, not to be written to. */
    double[] voice(SungBy by, Singing strength) {
        double[][] voice =
                switch (by) {
                    case SOLO_VOICE, ONE_ALONE -> soloists;
                    case TREBLES -> trebles;
                    case CONGREGATION, SMALL_CHOIR, MELODY_SOLOED, DESCANT, ALTERNATION, UNACCOMPANIED, VOICES_ALONE ->
                        voices;
                };
        return voice[strength.ordinal()];
    }

    /** Vocal effort in the steps of the standard: 0 normal, 1 raised, 2 loud, 3 shout. */
    private static double effort(Singing singing) {
        return switch (singing) {
            case GENTLE -> 0;
            case ORDINARY -> 1;
            case STRONG -> 1.5;
            case FULL_VOICE -> 2;
        };
    }

    private static double[] voice(double effort, double ofVoiceDb, double[] moreDb) {
        double[] power = new double[ThirdOctaves.COUNT];
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            int octave = ThirdOctaves.octaveOf(band) - FIRST_OCTAVE;
            if (octave >= 0 && octave < Table.OCTAVES) {
                double levelDb = Table.levelDb(effort, octave) - THIRD_OF_OCTAVE_DB;
                power[band] = ThirdOctaves.dbToPower(levelDb + POWER_OVER_1_M_DB + ofVoiceDb + moreDb[octave]);
            }
        }
        return power;
    }

    /** Number of singers in a congregation who sing at one time, 1 or more. */
    static int singing(int present, Sung sung) {
        return Math.max(1, (int) Math.round(sung.part() * present));
    }

    /** Voices of a small choir, or of the trebles alone, without a number. */
    static int usualChoir(SungBy by) {
        return by == SungBy.TREBLES ? USUAL_TREBLES : USUAL_CHOIR;
    }

    /**
     * Mean-square pressure at a seat among singers, of all the others, re (20 uPa)^2 for a sound power of 1 pW a
     * singer.
     *
     * @param singers how many sing, the listener among them
     * @param reverberantPerM2 4/A of the band
     */
    static double amongPerM2(int singers, double reverberantPerM2) {
        double edgeM = Math.sqrt((others(singers) + 1) / (Math.PI * SINGERS_PER_M2));
        double neighbours = Math.max(0, SINGERS_PER_M2 / 2 * Math.log(edgeM / NEAREST_M));
        return others(singers) * reverberantPerM2 + neighbours;
    }

    /** How many others a singer hears; who sings alone hears a voice too, which counts as that of one other. */
    static int others(int singers) {
        return singers == 0 ? 0 : Math.max(1, singers - 1);
    }

    private static final class Table {
        private static final List<List<String>> ROWS = TableResource.rows("voices.csv");
        private static final int OCTAVES = ROWS.get(0).size() - 1;

        private static double levelDb(double effort, int octave) {
            int below = (int) Math.floor(effort);
            double share = effort - below;
            double lowDb = cell(below, octave);
            return share == 0 ? lowDb : lowDb + share * (cell(below + 1, octave) - lowDb);
        }

        private static double cell(int row, int octave) {
            return Double.parseDouble(ROWS.get(row).get(1 + octave));
        }
    }
}
