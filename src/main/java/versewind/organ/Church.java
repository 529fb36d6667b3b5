package versewind.organ;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Rooms as people describe them, for whom knows no figures: a kind of church with its usual size and reverberation.
 *
 * <p>All numbers are estimates (common practice, no source): the reverberation grows with the mean free path, so with
 * the cube root of the volume; its course over the octaves is that of stone churches with wooden furniture; distances
 * are shares of the length, with the organ at one end.
 */
public enum Church {
    VILLAGE_CHURCH("village church", new Size(18, 8, 7), 1.5),
    PARISH_CHURCH("parish church", new Size(30, 14, 10), 2.3),
    TOWN_CHURCH("town church", new Size(45, 20, 14), 3.5),
    CATHEDRAL("cathedral", new Size(80, 24, 20), 5.5),
    CHAPEL("chapel", new Size(20, 10, 7), 1.2),
    DRY_HALL("dry hall", new Size(24, 14, 7), 0.9);

    private static final List<Double> COURSE = List.of(1.15, 1.12, 1.06, 0.94, 0.80, 0.60);
    private static final double FLOOR_FOR_SEATS = 0.6;
    private static final double SEAT_M2 = 0.85;
    private static final double METRES_A_FOOT = 0.3048;
    private static final double LEAST_DISTANCE_M = 2;

    private static final Pattern SIZE = Pattern.compile(
            "([\\d.,]+)\\s*(?:x|by|×)\\s*([\\d.,]+)\\s*(?:x|by|×)\\s*([\\d.,]+)\\s*(m|metres|ft|feet|')?",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern SECONDS = Pattern.compile("\\D*?(\\d+(?:[.,]\\d+)?)\\s*(?:s|secs?|seconds?)?\\.?");
    private static final Pattern SEATS = Pattern.compile("(\\d{1,5}) seats?");
    private static final Pattern VOLUME = Pattern.compile("([\\d.,]+) (?:m3|m³|cubic metres)");

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // a value
    private final Size usual;

    private final double seconds;

    Church(String word, Size usual, double seconds) {
        this.word = word;
        this.usual = usual;
        this.seconds = seconds;
    }

    /** What is in it, from what rings longest to what rings least. */
    public enum Furnishing {
        BARE(1.3),
        PEWS(1),
        CARPET(0.7);

        private final double ringing;

        Furnishing(double ringing) {
            this.ringing = ringing;
        }

        /** In a word. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The one whose word begins so. */
        public static Optional<Furnishing> of(String typed) {
            String word = typed.strip().toLowerCase(Locale.ROOT);
            return Arrays.stream(values())
                    .filter(each -> !word.isEmpty() && each.word().startsWith(word))
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

        private Size times(double factor) {
            return new Size(lengthM * factor, widthM * factor, heightM * factor);
        }

        /** "30 x 14 x 10 m". */
        public String words() {
            return Math.round(lengthM) + " x " + Math.round(widthM) + " x " + Math.round(heightM) + " m";
        }
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** Its usual size. */
    public Size usual() {
        return usual;
    }

    /** How long it usually rings at middle pitches, in s. */
    public double seconds() {
        return seconds;
    }

    /**
     * A size as it is typed: "22 x 9 x 8" in metres, "72 x 30 x 26 ft", "250 seats" in the usual proportions, "small",
     * "large"; blank for the usual one.
     *
     * @throws NotationException if it is none of these, or no room
     */
    public Size size(String typed) throws NotationException {
        Matcher metres = SIZE.matcher(typed.strip());
        if (metres.matches()) {
            boolean isFeet = metres.group(4) != null && !metres.group(4).startsWith("m");
            Size size = new Size(number(metres.group(1)), number(metres.group(2)), number(metres.group(3)))
                    .times(isFeet ? METRES_A_FOOT : 1);
            return room(size);
        }
        Matcher seats = SEATS.matcher(typed.strip().toLowerCase(Locale.ROOT));
        if (seats.matches()) {
            double floorM2 = Integer.parseInt(seats.group(1)) * SEAT_M2 / FLOOR_FOR_SEATS;
            return room(usual.times(Math.sqrt(floorM2 / (usual.lengthM * usual.widthM))));
        }
        return switch (typed.strip().toLowerCase(Locale.ROOT)) {
            case "", "usual" -> usual;
            case "small" -> usual.times(0.8);
            case "large" -> usual.times(1.25);
            default ->
                throw new NotationException("Enter small, usual, large, 250 seats, or length x width x height,"
                        + " as 22 x 9 x 8 or 72 x 30 x 26 ft.");
        };
    }

    private static Size room(Size size) throws NotationException {
        if (size.volumeM3() >= 50 && size.volumeM3() <= 500_000) {
            return size;
        }
        throw new NotationException("A room has 50 to 500000 m3; this would be " + Math.round(size.volumeM3()) + ".");
    }

    /**
     * How long a clap can be heard, as it is typed: "3 s", "a clap dies in 2.5 s".
     *
     * @return s, 0.3 to 15
     * @throws NotationException if it is no such time
     */
    public static double clapS(String typed) throws NotationException {
        Matcher seconds = SECONDS.matcher(typed.strip());
        double clapS = seconds.matches() ? number(seconds.group(1)) : 0;
        if (clapS < 0.3 || clapS > 15) {
            throw new NotationException("Clap: enter 0.3 to 15 seconds, such as 3 s.");
        }
        return clapS;
    }

    /**
     * A room as a line describes it, in words or figures, parted by commas: "parish church, 22 x 9 x 8, carpet, a clap
     * dies in 2 s", "4200 m3, 300 seats, 2.2 s". Of a size without a kind, it is a parish church.
     *
     * @throws NotationException at the first part that is none of these
     */
    public static Room described(String line) throws NotationException {
        List<String> parts =
                new ArrayList<>(List.of(line.strip().toLowerCase(Locale.ROOT).split("\\s*[,;](?!\\d)\\s*", -1)));
        Optional<Church> named = Optional.empty();
        for (int i = 0; i < parts.size(); i++) {
            for (Church each : values()) {
                if (named.isEmpty() && parts.get(i).endsWith(each.word)) {
                    named = Optional.of(each);
                    parts.set(i, parts.get(i).replace(each.word, "").replaceFirst("^(a|the)?\\s*", ""));
                }
            }
        }
        Church church = named.orElse(PARISH_CHURCH);
        Optional<Size> size = named.map(Church::usual);
        Furnishing furnishing = Furnishing.PEWS;
        OptionalDouble clapS = OptionalDouble.empty();
        OptionalInt seats = OptionalInt.empty();
        for (String part : parts) {
            Matcher volume = VOLUME.matcher(part);
            Matcher seated = SEATS.matcher(part);
            Optional<Furnishing> furnished = Furnishing.of(part);
            if (furnished.isPresent()) {
                furnishing = furnished.get();
            } else if (seated.matches()) {
                seats = OptionalInt.of(Integer.parseInt(seated.group(1)));
            } else if (volume.matches()) {
                size = Optional.of(church.usual.times(Math.cbrt(number(volume.group(1)) / church.usual.volumeM3())));
            } else if (!part.isEmpty() && SECONDS.matcher(part).matches()) {
                clapS = OptionalDouble.of(clapS(part));
            } else if (!part.isEmpty()) {
                size = Optional.of(sized(church, part));
            }
        }
        Room room = church.room(
                size.orElseThrow(() -> new NotationException("Say what kind of church it is: " + kinds() + ".")),
                furnishing,
                clapS);
        return new Room(room.volumeM3(), seats.orElse(room.seats()), room.reverberation(), room.distances());
    }

    private static String kinds() {
        return Arrays.stream(values()).map(Church::word).collect(Collectors.joining(", "));
    }

    private static Size sized(Church church, String part) throws NotationException {
        try {
            return church.size(part);
        } catch (NotationException wrong) {
            throw new NotationException(
                    Quoted.text(part) + " describes no room. The kinds are " + kinds() + ". " + wrong.getMessage());
        }
    }

    private static double number(String digits) throws NotationException {
        try {
            return Double.parseDouble(digits.replace(',', '.'));
        } catch (NumberFormatException noNumber) {
            throw new NotationException("\"" + digits + "\" is not a number.");
        }
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
