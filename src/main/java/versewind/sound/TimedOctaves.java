package versewind.sound;

import java.util.Arrays;
import java.util.Optional;
import java.util.SortedMap;
import versewind.acoustics.Reverberation;
import versewind.organ.Room;

/**
 * Absorption area of an empty room whose reverberation time was measured in some octaves; a clap timed by ear or phone
 * will do.
 *
 * <p>In a measured octave A = 0.161 V/T. In others (an estimate) the absorption of the air, 4 m V, is known and the
 * rest is interpolated linearly between the nearest measured octaves, over the logarithms of both. If surfaces are
 * known too, the ratio of the rest to their absorption is interpolated instead, which keeps their shape over frequency.
 * Above 4 kHz the air adds its further absorption.
 *
 * <p>Range: within 1 dB of level in a measured octave (an estimate), within 2 dB in others (Carvalho, 41 churches,
 * 1995).
 *
 * <p>Source: Sabine with air, EN 12354-6:2003, 4, clause number from memory; the interpolation is an
 * estimate.
 *
 * <p>Checked against: {@code TimedOctavesTest}.
 */
final class TimedOctaves {

    /** Least share of the walls, if the air alone would account for the time. */
    private static final double LEAST_SHARE_OF_WALLS = 0.05;

    private static final int HIGHEST = Room.OCTAVES_HZ.size() - 1;

    private final double volumeM3;
    private final SortedMap<Integer, Double> octaveS;
    private final double[] shapeM2;
    private final double[] airM2;

    /**
     * A room.
     *
     * @param volumeM3 volume V in m3
     * @param octaveS times in s by the centre of the octave in Hz, one at least
     * @param surfacesM2 absorption of the surfaces in m2 by octave from 125 Hz, if known
     * @param airM2 absorption of the air in m2 by octave from 125 Hz, at most one octave beyond 4 kHz
     */
    TimedOctaves(double volumeM3, SortedMap<Integer, Double> octaveS, Optional<double[]> surfacesM2, double[] airM2) {
        this.volumeM3 = volumeM3;
        this.octaveS = octaveS;
        this.shapeM2 = surfacesM2.orElseGet(() -> evenly(airM2.length));
        this.airM2 = airM2;
    }

    private static double[] evenly(int length) {
        double[] even = new double[length];
        Arrays.fill(even, 1);
        return even;
    }

    /** Total absorption area in m2, by octave from 125 Hz. */
    double[] absorptionM2() {
        double[] absorption = new double[airM2.length];
        for (int octave = 0; octave < absorption.length; octave++) {
            if (octave > HIGHEST) {
                absorption[octave] = absorption[HIGHEST] + airM2[octave] - airM2[HIGHEST];
            } else {
                absorption[octave] = isTimed(octave) ? timedM2(octave) : airM2[octave] + wallsM2(octave);
            }
        }
        return absorption;
    }

    private boolean isTimed(int octave) {
        return octaveS.containsKey(Room.OCTAVES_HZ.get(octave));
    }

    private double timedM2(int octave) {
        return Reverberation.absorptionM2(volumeM3, octaveS.get(Room.OCTAVES_HZ.get(octave)));
    }

    private double wallsM2(int octave) {
        int below = octave;
        while (below >= 0 && !isTimed(below)) {
            below--;
        }
        int above = octave;
        while (above <= HIGHEST && !isTimed(above)) {
            above++;
        }
        if (below < 0) {
            return shapeM2[octave] * ratio(above);
        }
        if (above > HIGHEST) {
            return shapeM2[octave] * ratio(below);
        }
        double share = (double) (octave - below) / (above - below);
        return shapeM2[octave] * Math.pow(ratio(below), 1 - share) * Math.pow(ratio(above), share);
    }

    /** Absorption of the walls in a measured octave over that of their shape. */
    private double ratio(int timed) {
        double allM2 = timedM2(timed);
        return Math.max(LEAST_SHARE_OF_WALLS * allM2, allM2 - airM2[timed]) / shapeM2[timed];
    }
}
