package versewind.organ;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The room an instrument stands in.
 *
 * @param volumeM3 volume in m3, 50 to 500000
 * @param seats number of seats
 * @param reverberation its reverberation as far as it is known
 * @param distances distances between organ, singers and listeners
 */
public record Room(double volumeM3, int seats, Reverberation reverberation, Distances distances) {

    public Room {
        if (!(volumeM3 >= 50 && volumeM3 <= 500_000)) {
            throw new IllegalArgumentException("a room's volume lies between 50 and 500000 m3");
        }
        if (seats < 0 || seats > 50_000) {
            throw new IllegalArgumentException("a room has 0 to 50000 seats");
        }
    }

    /** Known reverberation: measured times, or the surfaces to calculate it from. Measured times take precedence. */
    public sealed interface Reverberation permits MeasuredTimes, Surfaces {

        /** The surfaces, if they are known. */
        default Optional<Surfaces> known() {
            return this instanceof MeasuredTimes times ? times.surfaces() : Optional.of((Surfaces) this);
        }
    }

    /**
     * Measured reverberation times of the empty room. Octaves without a time are estimated, from the surfaces too if
     * those are known.
     *
     * @param octaveS time in s, 0.1 to 20, by the centre of the octave in Hz; one octave at least
     * @param surfaces the surfaces, if they are known besides
     */
    public record MeasuredTimes(SortedMap<Integer, Double> octaveS, Optional<Surfaces> surfaces)
            implements Reverberation {

        public MeasuredTimes {
            octaveS = Collections.unmodifiableSortedMap(new TreeMap<>(octaveS));
            if (octaveS.isEmpty() || !OCTAVES_HZ.containsAll(octaveS.keySet())) {
                throw new IllegalArgumentException("reverberation is given for some of the octaves 125 to 4000 Hz");
            }
            if (octaveS.values().stream().anyMatch(time -> !(time >= 0.1 && time <= 20))) {
                throw new IllegalArgumentException("a reverberation time lies between 0.1 and 20 s");
            }
        }

        /** Times of all six octaves, 125 to 4000 Hz. */
        public MeasuredTimes(List<Double> octaveS) {
            this(byOctave(octaveS), Optional.empty());
        }

        private static SortedMap<Integer, Double> byOctave(List<Double> octaveS) {
            if (octaveS.size() != OCTAVES_HZ.size()) {
                throw new IllegalArgumentException("reverberation is given for the octaves 125 to 4000 Hz");
            }
            SortedMap<Integer, Double> times = new TreeMap<>();
            for (int octave = 0; octave < octaveS.size(); octave++) {
                times.put(OCTAVES_HZ.get(octave), octaveS.get(octave));
            }
            return times;
        }

        /** True if every octave has a measured time. */
        public boolean isComplete() {
            return octaveS.size() == OCTAVES_HZ.size();
        }
    }

    /** The surfaces of the empty room; people are counted separately. */
    public record Surfaces(List<Surface> list) implements Reverberation {

        public Surfaces {
            list = List.copyOf(list);
            if (list.isEmpty()) {
                throw new IllegalArgumentException("a list of surfaces has one at least");
            }
        }

        /** Area of all surfaces in m2. */
        public double areaM2() {
            return list.stream().mapToDouble(Surface::areaM2).sum();
        }
    }

    /**
     * One surface.
     *
     * @param material a material of the table of absorption coefficients
     * @param areaM2 area in m2
     */
    public record Surface(String material, double areaM2) {

        public Surface {
            if (!(areaM2 > 0 && areaM2 <= 1_000_000)) {
                throw new IllegalArgumentException("a surface is more than 0 m2");
            }
        }
    }

    /**
     * Distances in m.
     *
     * @param naveM from the organ to the middle of the nave
     * @param farM from the organ to the singers who are farthest from it
     * @param choirM from the organ to the place of a choir or a soloist
     * @param choirToNaveM from a choir or a soloist to the middle of the nave
     * @param consoleM from the pipes to the organist
     */
    public record Distances(double naveM, double farM, double choirM, double choirToNaveM, double consoleM) {

        public Distances {
            for (double metres : new double[] {naveM, farM, choirM, choirToNaveM, consoleM}) {
                if (!(metres >= 0.5 && metres <= 300)) {
                    throw new IllegalArgumentException("a distance lies between 0.5 and 300 m");
                }
            }
        }
    }

    /** Centres of the octaves in which reverberation is given, in Hz. */
    public static final List<Integer> OCTAVES_HZ = List.of(125, 250, 500, 1000, 2000, 4000);
}
