package versewind.sound;

import java.util.Arrays;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Trims;

/**
 * The sound power of every rank for every part and octave, computed once when an instrument opens.
 *
 * <p>The power of a part on a rank is the mean over the keys that the part plays ({@link Tessitura}). A rank that two
 * stops share, or that is reached twice at one pitch, speaks once. Keys that a coupler would shift beyond the compass
 * are silent; an extension has pipes of its own. Two parts that meet on one pipe count twice, which is rare.
 *
 * <p>A borrowed stop is the rank of its lender, with the trim, pipes and place of the lender.
 *
 * <p>Not thread-safe: spectra are overwritten.
 *
 * <p>Checked against: {@code PipeworkTest}.
 */
final class Pipework {

    /** Place of pipes outside every box. */
    static final int OUTSIDE = 0;

    /** Place of pipes in the box of a division. */
    static int inBox(int division) {
        return 1 + division;
    }

    /** What trims do not change, shared by all copies. */
    private static final class Pipes {
        private final int[] divisionOfStop;
        private final int[] rankOfStop;
        private final int[] placeOfRank;
        private final int[][] stopsOfRank;
        private final int[][][] spectraOfStop;
        private final double[][] power;
        private final boolean[] isMelody;

        Pipes(Instrument organ, Tessitura tessitura) {
            int stops = organ.stops().size();
            divisionOfStop = new int[stops];
            rankOfStop = new int[stops];
            placeOfRank = new int[stops];
            stopsOfRank = new int[stops][0];
            spectraOfStop = new int[stops][KeyRouting.PLACES][];
            RankSpectra spectra = new RankSpectra(organ, tessitura);
            for (int stop = 0; stop < stops; stop++) {
                int rank = organ.rankOf(stop);
                divisionOfStop[stop] = organ.stops().get(stop).division();
                rankOfStop[stop] = rank;
                placeOfRank[stop] = placeOf(organ, rank);
                stopsOfRank[rank] = Arrays.copyOf(stopsOfRank[rank], stopsOfRank[rank].length + 1);
                stopsOfRank[rank][stopsOfRank[rank].length - 1] = stop;
                for (int bit = 0; bit < KeyRouting.PLACES; bit++) {
                    spectraOfStop[stop][bit] = spectra.of(stop, KeyRouting.part(bit), KeyRouting.semitones(bit));
                }
            }
            power = new double[spectra.count()][];
            isMelody = new boolean[power.length];
            for (int spectrum = 0; spectrum < power.length; spectrum++) {
                power[spectrum] = spectra.power(spectrum);
                isMelody[spectrum] = spectra.part(spectrum) == VoicePart.SOPRANO;
            }
        }
    }

    private final Pipes pipes;
    private final double[] trimOfRank;

    private final int[] reached;
    private final boolean[] changed;
    private final boolean[] speaks;
    private final double[][] melodyOfRank;
    private final double[][] restOfRank;
    private final int[] lastSpoken;
    private int moment;

    Pipework(Instrument organ, Tessitura tessitura) {
        this(new Pipes(organ, tessitura), Trims.of(organ));
    }

    private Pipework(Pipes pipes, Trims trims) {
        this.pipes = pipes;
        trimOfRank = trims.stopsDb().stream()
                .mapToDouble(stopDb -> ThirdOctaves.dbToPower(stopDb + trims.organDb()))
                .toArray();
        lastSpoken = new int[pipes.power.length];
        reached = new int[ranks()];
        changed = new boolean[ranks()];
        speaks = new boolean[ranks()];
        melodyOfRank = new double[ranks()][ThirdOctaves.COUNT];
        restOfRank = new double[ranks()][ThirdOctaves.COUNT];
    }

    /** The same pipes with other trims; the power before trims is shared. */
    Pipework voiced(Trims trims) {
        return new Pipework(pipes, trims);
    }

    private static int placeOf(Instrument organ, int rank) {
        Instrument.Knob knob = organ.stops().get(rank);
        return organ.divisions().get(knob.division()).encloses(knob.stop()) ? inBox(knob.division()) : OUTSIDE;
    }

    /**
     * Computes the ranks that speak. Only ranks reached differently from the last call are summed again, always in the
     * same order, so that the result does not depend on the calls before.
     *
     * @param stops indices of the stops drawn
     * @param received the set that every division receives, {@link KeyRouting#route}
     */
    void speak(IndexSet stops, int[] received) {
        for (int stop = 0; stop < reached.length; stop++) {
            int bits = stops.contains(stop) ? received[pipes.divisionOfStop[stop]] : 0;
            if (bits != reached[stop]) {
                reached[stop] = bits;
                changed[pipes.rankOfStop[stop]] = true;
            }
        }
        for (int rank = 0; rank < changed.length; rank++) {
            if (changed[rank]) {
                changed[rank] = false;
                speak(rank);
            }
        }
    }

    private void speak(int rank) {
        moment++;
        speaks[rank] = false;
        Arrays.fill(melodyOfRank[rank], 0);
        Arrays.fill(restOfRank[rank], 0);
        for (int stop : pipes.stopsOfRank[rank]) {
            for (int bits = reached[stop]; bits != 0; bits &= bits - 1) {
                for (int spectrum : pipes.spectraOfStop[stop][Integer.numberOfTrailingZeros(bits)]) {
                    if (lastSpoken[spectrum] != moment) {
                        lastSpoken[spectrum] = moment;
                        speaks[rank] = true;
                        add(pipes.power[spectrum], (pipes.isMelody[spectrum] ? melodyOfRank : restOfRank)[rank]);
                    }
                }
            }
        }
        multiply(melodyOfRank[rank], trimOfRank[rank]);
        multiply(restOfRank[rank], trimOfRank[rank]);
    }

    private static void multiply(double[] spectrum, double factor) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            spectrum[band] *= factor;
        }
    }

    /** Adds one spectrum to another. */
    static void add(double[] power, double[] sum) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            sum[band] += power[band];
        }
    }

    /** Number of ranks, one a stop; those of borrowed stops never speak. */
    int ranks() {
        return pipes.rankOfStop.length;
    }

    /** True if a rank, by the index of its stop, speaks. */
    boolean speaks(int rank) {
        return speaks[rank];
    }

    /** Place of a rank: {@link #OUTSIDE} or {@link #inBox}. */
    int place(int rank) {
        return pipes.placeOfRank[rank];
    }

    /** Power of the soprano on a rank re 1 pW. */
    double[] melody(int rank) {
        return melodyOfRank[rank];
    }

    /** Power of the other parts on a rank re 1 pW. */
    double[] rest(int rank) {
        return restOfRank[rank];
    }
}
