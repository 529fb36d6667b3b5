package versewind.organ;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Rooms as people describe them, for whom knows no figures: a kind of church with its usual size and reverberation.
 *
 * <p>All numbers are estimates (common practice, no source): the reverberation grows with the mean free path, so with
 * the cube root of the volume; its course over the octaves is that of stone churches with wooden furniture; distances
 * are shares of the length, with the organ at one end.
 */
public enum Church implements Worded {
    VILLAGE_CHURCH(new Size(18, 8, 7), 1.5),
    PARISH_CHURCH(new Size(30, 14, 10), 2.3),
    TOWN_CHURCH(new Size(45, 20, 14), 3.5),
    CATHEDRAL(new Size(80, 24, 20), 5.5),
    CHAPEL(new Size(20, 10, 7), 1.2),
    DRY_HALL(new Size(24, 14, 7), 0.9);

    private static final List<Double> COURSE = List.of(1.15, 1.12, 1.06, 0.94, 0.80, 0.60);
    private static final double FLOOR_FOR_SEATS = 0.6;
    private static final double SEAT_M2 = 0.85;
    private static final double LEAST_DISTANCE_M = 2;

    @SuppressWarnings("ImmutableEnumChecker") // a value
    private final Size usual;

    private final double seconds;

    Church(Size usual, double seconds) {
        this.usual = usual;
        this.seconds = seconds;
    }

    /** What is in it, from what rings longest to what rings least. */
    public enum Furnishing implements Worded {
        BARE(1.3),
        PEWS(1),
        CARPET(0.7);

        private final double ringing;

        Furnishing(double ringing) {
            this.ringing = ringing;
        }

        /** The one whose word begins so, or that begins a longer one: "carpeted". */
        public static Optional<Furnishing> of(String typed) {
            String word = typed.strip().toLowerCase(Locale.ROOT);
            return Arrays.stream(values())
                    .filter(each -> !word.isEmpty() && (each.word().startsWith(word) || word.startsWith(each.word())))
                    .findFirst();
        }
    }

    /**
     * Length, width and height.
     *
     * @param lengthM in m
     * @param widthM in m
     * @param heightM the mean height in m
     */
    public record Size(double lengthM, double widthM, double heightM) {

        /** Volume in m3. */
        public double volumeM3() {
            return lengthM * widthM * heightM;
        }

        Size times(double factor) {
            return new Size(lengthM * factor, widthM * factor, heightM * factor);
        }

        /** "30 by 14 by 10 metres". */
        public String words() {
            return Math.round(lengthM) + " by " + Math.round(widthM) + " by " + Math.round(heightM) + " metres";
        }
    }

    /** Its usual size. */
    public Size usual() {
        return usual;
    }

    /** How long it usually rings at middle pitches, in s. */
    public double seconds() {
        return seconds;
    }

    /** Its usual proportions, so many times as long. */
    Size sized(double factor) throws NotationException {
        return possible(usual.times(factor));
    }

    /** Its usual proportions, so many metres long. */
    Size ofLength(double metres) throws NotationException {
        return sized(metres / usual.lengthM);
    }

    /** Its usual proportions, with so many seats. */
    Size ofSeats(int seats) throws NotationException {
        return sized(Math.sqrt(seats * SEAT_M2 / FLOOR_FOR_SEATS / (usual.lengthM * usual.widthM)));
    }

    /** Its usual proportions, with so much air. */
    Size ofVolume(double volumeM3) throws NotationException {
        return sized(Math.cbrt(volumeM3 / usual.volumeM3()));
    }

    static Size possible(Size size) throws NotationException {
        if (size.volumeM3() >= 50 && size.volumeM3() <= 500_000) {
            return size;
        }
        throw new NotationException("A room has 50 to 500000 m3; this would be " + Math.round(size.volumeM3()) + ".");
    }

    /**
     * The room.
     *
     * @param size its size
     * @param furnishing what is in it
     * @param clapS how long a clap can be heard, in s, which is about the reverberation time; empty for an estimate
     */
    public Room room(Size size, Furnishing furnishing, OptionalDouble clapS) {
        double middleS = clapS.orElse(seconds * Math.cbrt(size.volumeM3() / usual.volumeM3()) * furnishing.ringing);
        List<Double> times =
                COURSE.stream().map(share -> tenths(middleS * share)).toList();
        double length = size.lengthM;
        return new Room(
                Math.round(size.volumeM3()),
                (int) Math.round(length * size.widthM * FLOOR_FOR_SEATS / SEAT_M2),
                new Room.MeasuredTimes(times),
                new Room.Distances(
                        metres(length * 0.45), metres(length * 0.85), metres(length * 0.2), metres(length * 0.35), 3));
    }

    /** How long a room of another volume with the same surfaces rings, as a multiple of now. */
    public static double ringing(double volumeM3, double otherM3) {
        return Math.cbrt(otherM3 / volumeM3);
    }

    private static double tenths(double seconds) {
        return Math.max(0.2, Math.min(20, Math.round(seconds * 10) / 10.0));
    }

    private static double metres(double metres) {
        return Math.max(LEAST_DISTANCE_M, Math.min(300.0, Math.rint(metres)));
    }
}
