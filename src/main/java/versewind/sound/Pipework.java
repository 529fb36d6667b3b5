package versewind.sound;

import java.util.Arrays;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Trims;

/**
 * The sound power of every rank of an instrument under every part and octave, worked out once when it opens.
 *
 * <p>The power of a part on a rank is the mean over the keys that the part sounds ({@link Tessitura}). What speaks is a
 * set: a rank that two stops share, or that is reached twice at one pitch, speaks once. Keys that a coupler would shift
 * beyond the compass of the division are silent; an extension has its own pipes. Two different parts on one pipe at once
 * are counted twice; this is rare.
 *
 * <p>A borrowed stop is the rank of its lender: its trim, its recipe and the place where its pipes stand are the lender's.
 *
 * <p>Checked against: {@code PipeworkTest}.
 */
final class Pipework {

    /** Where pipes stand that are in no box. */
    static final int OUTSIDE = 0;

    /** Where pipes stand that are in the box of a division, by its index. */
    static int inBox(int division) {
        return 1 + division;
    }

    private final int[] divisionOfStop;
    private final int[] rankOfStop;
    private final int[] placeOfRank;
    private final int[][] stopsOfRank;
    private final int[][][] voicesOfStop;
    private final double[][] power;
    private final boolean[] melodyOfVoice;
    private final double[] trimOfRank;

    private final int[] reached;
    private final boolean[] changed;
    private final boolean[] speaks;
    private final double[][] melodyOfRank;
    private final double[][] restOfRank;
    private final int[] lastSpoken;
    private int moment;

    Pipework(Instrument organ, Tessitura tessitura) {
        int stops = organ.stops().size();
        divisionOfStop = new int[stops];
        rankOfStop = new int[stops];
        placeOfRank = new int[stops];
        stopsOfRank = new int[stops][0];
        for (int stop = 0; stop < stops; stop++) {
            int rank = organ.rankOf(stop);
            divisionOfStop[stop] = organ.stops().get(stop).division();
            rankOfStop[stop] = rank;
            placeOfRank[stop] = placeOf(organ, rank);
            stopsOfRank[rank] = Arrays.copyOf(stopsOfRank[rank], stopsOfRank[rank].length + 1);
            stopsOfRank[rank][stopsOfRank[rank].length - 1] = stop;
        }
        voicesOfStop = new int[stops][KeyRouting.PLACES][];
        RankSpectra voices = new RankSpectra(organ, tessitura);
        for (int stop = 0; stop < stops; stop++) {
            for (int bit = 0; bit < KeyRouting.PLACES; bit++) {
                voicesOfStop[stop][bit] = voices.of(stop, KeyRouting.part(bit), KeyRouting.semitones(bit));
            }
        }
        power = new double[voices.count()][];
        melodyOfVoice = new boolean[power.length];
        for (int voice = 0; voice < power.length; voice++) {
            power[voice] = voices.power(voice);
            melodyOfVoice[voice] = voices.part(voice) == VoicePart.SOPRANO;
        }
        trimOfRank = trims(Trims.of(organ));
        lastSpoken = new int[power.length];
        reached = new int[stops];
        changed = new boolean[stops];
        speaks = new boolean[stops];
        melodyOfRank = new double[stops][ThirdOctaves.COUNT];
        restOfRank = new double[stops][ThirdOctaves.COUNT];
    }

    /** The same pipes voiced otherwise; what was worked out is shared. */
    private Pipework(Pipework like, Trims trims) {
        divisionOfStop = like.divisionOfStop;
        rankOfStop = like.rankOfStop;
        placeOfRank = like.placeOfRank;
        stopsOfRank = like.stopsOfRank;
        voicesOfStop = like.voicesOfStop;
        power = like.power;
        melodyOfVoice = like.melodyOfVoice;
        trimOfRank = trims(trims);
        lastSpoken = new int[power.length];
        reached = new int[ranks()];
        changed = new boolean[ranks()];
        speaks = new boolean[ranks()];
        melodyOfRank = new double[ranks()][ThirdOctaves.COUNT];
        restOfRank = new double[ranks()][ThirdOctaves.COUNT];
    }

    /** The same pipes voiced otherwise. */
    Pipework voiced(Trims trims) {
        return new Pipework(this, trims);
    }

    private static double[] trims(Trims trims) {
        return trims.stopsDb().stream()
                .mapToDouble(stopDb -> ThirdOctaves.dbToPower(stopDb + trims.organDb()))
                .toArray();
    }

    private static int placeOf(Instrument organ, int rank) {
        Instrument.Knob knob = organ.stops().get(rank);
        return organ.divisions().get(knob.division()).encloses(knob.stop()) ? inBox(knob.division()) : OUTSIDE;
    }

    /**
     * Lets sound what is drawn. Only the ranks that are reached otherwise than at the last call are added up anew, and
     * always in the same order: the result does not depend on what sounded before.
     *
     * @param stops indices of the stops drawn
     * @param received the set that every division receives, {@link KeyRouting#route}
     */
    void speak(IndexSet stops, int[] received) {
        for (int stop = 0; stop < reached.length; stop++) {
            int bits = stops.contains(stop) ? received[divisionOfStop[stop]] : 0;
            if (bits != reached[stop]) {
                reached[stop] = bits;
                changed[rankOfStop[stop]] = true;
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
        for (int stop : stopsOfRank[rank]) {
            for (int bits = reached[stop]; bits != 0; bits &= bits - 1) {
                for (int voice : voicesOfStop[stop][Integer.numberOfTrailingZeros(bits)]) {
                    if (lastSpoken[voice] != moment) {
                        lastSpoken[voice] = moment;
                        speaks[rank] = true;
                        add(power[voice], (melodyOfVoice[voice] ? melodyOfRank : restOfRank)[rank]);
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

    /** How many ranks there are, those of borrowed stops, which never speak, counted: as many as stops. */
    int ranks() {
        return rankOfStop.length;
    }

    /** Whether a rank, by the index of its stop, sounds. */
    boolean speaks(int rank) {
        return speaks[rank];
    }

    /** Where the pipes of a rank stand: {@link #OUTSIDE} or {@link #inBox}. */
    int place(int rank) {
        return placeOfRank[rank];
    }

    /** Power re 1 pW that the soprano sounds on a rank; overwritten when it sounds otherwise. */
    double[] melody(int rank) {
        return melodyOfRank[rank];
    }

    /** Power re 1 pW that the other parts sound on a rank; overwritten when it sounds otherwise. */
    double[] rest(int rank) {
        return restOfRank[rank];
    }
}
