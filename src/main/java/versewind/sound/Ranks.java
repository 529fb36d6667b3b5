package versewind.sound;

import java.util.Arrays;
import java.util.List;
import versewind.organ.Footage;
import versewind.organ.MixtureBreak;
import versewind.organ.Stop;

/**
 * The pitches that one key of a stop sounds.
 *
 * <p>A compound stop without a given composition gets a usual one. A mixture starts at its footage, or else at 1 1/3 ft
 * (up to three ranks), 2 ft (up to five) or 2 2/3 ft, and rises by fifths and fourths in turn: 2, 1 1/3, 1, 2/3. A rank
 * above 8 kHz breaks back an octave. A cornet has 8, 4, 2 2/3, 2, 1 3/5 ft; with four ranks no 8, with three neither 8
 * nor 4, with two 2 2/3 and 1 3/5. Further ranks double these.
 *
 * <p>Source: an estimate from common practice; no published source.
 *
 * <p>Checked against: {@code RanksTest}.
 */
final class Ranks {

    private static final Footage UNISON = Footage.of(8);
    private static final double BREAK_HZ = 8000;
    private static final double[] CORNET = {1, 2, 3, 4, 5};
    private static final double[] SESQUIALTERA = {3, 5};
    private static final int MOST_MIXTURE_RANKS = 6;

    private Ranks() {}

    /** Fundamentals in Hz of all pipes of one key, a MIDI note number. */
    static double[] fundamentalsHz(Stop stop, int key) {
        double unisonHz = UNISON.frequencyHz(key);
        return switch (stop.family()) {
            case MIXTURE -> mixture(stop, key, unisonHz);
            case CORNET -> times(unisonHz, stop.composition().isEmpty() ? cornet(stop.ranks()) : given(stop, key));
            case PRINCIPAL, FLUTE, STRING, CELESTE, MUTATION, CHORUS_REED, SOLO_REED -> {
                double[] unisons = new double[stop.ranks()];
                Arrays.fill(unisons, stop.footage().orElseThrow().harmonic());
                yield times(unisonHz, unisons);
            }
        };
    }

    private static double[] mixture(Stop stop, int key, double unisonHz) {
        if (!stop.composition().isEmpty()) {
            return times(unisonHz, given(stop, key));
        }
        double[] pitches = times(unisonHz, usualMixture(stop));
        for (int i = 0; i < pitches.length; i++) {
            while (pitches[i] > BREAK_HZ) {
                pitches[i] /= 2;
            }
        }
        return pitches;
    }

    private static double[] given(Stop stop, int key) {
        List<MixtureBreak> breaks = stop.composition();
        MixtureBreak current = breaks.get(0);
        for (MixtureBreak next : breaks) {
            if (next.fromKey() <= key) {
                current = next;
            }
        }
        double[] harmonics = new double[current.pitches().size()];
        for (int rank = 0; rank < harmonics.length; rank++) {
            harmonics[rank] = current.pitches().get(rank).harmonic();
        }
        return harmonics;
    }

    private static double[] usualMixture(Stop stop) {
        double lowest = stop.footage().map(Footage::harmonic).orElseGet(() -> usualStart(stop.ranks()));
        double[] harmonics = new double[stop.ranks()];
        for (int i = 0; i < harmonics.length; i++) {
            harmonics[i] = i >= MOST_MIXTURE_RANKS
                    ? harmonics[i - MOST_MIXTURE_RANKS]
                    : i == 0 ? lowest : nextAbove(harmonics[i - 1]);
        }
        return harmonics;
    }

    private static double usualStart(int ranks) {
        if (ranks <= 3) {
            return 6;
        }
        return ranks <= 5 ? 4 : 3;
    }

    /** A fifth above an octave of the unison, a fourth above anything else. */
    private static double nextAbove(double harmonic) {
        double octaves = Math.log(harmonic) / Math.log(2);
        boolean unison = Math.abs(octaves - Math.rint(octaves)) < 1e-9;
        return unison ? harmonic * 3 / 2 : harmonic * 4 / 3;
    }

    private static double[] cornet(int ranks) {
        if (ranks <= SESQUIALTERA.length) {
            return Arrays.copyOf(SESQUIALTERA, ranks);
        }
        double[] harmonics = new double[ranks];
        int skipped = Math.max(0, CORNET.length - ranks);
        for (int i = 0; i < ranks; i++) {
            harmonics[i] = CORNET[(i + skipped) % CORNET.length];
        }
        return harmonics;
    }

    private static double[] times(double unisonHz, double[] harmonics) {
        double[] fundamentalsHz = new double[harmonics.length];
        for (int rank = 0; rank < harmonics.length; rank++) {
            fundamentalsHz[rank] = harmonics[rank] * unisonHz;
        }
        return fundamentalsHz;
    }
}
