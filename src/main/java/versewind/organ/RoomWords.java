package versewind.organ;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import versewind.organ.Church.Furnishing;
import versewind.organ.Church.Size;

/** Rooms as people describe them: "a large stone church with carpet, about 30 m long, a clap dies in 2 s". */
public final class RoomWords {

    private static final double METRES_A_FOOT = 0.3048;
    private static final String NUMBER = "(\\d+(?:[.,]\\d+)?)";
    private static final String UNIT = "\\s*(m|metres?|meters?|ft|foot|feet|'|\u2032)?";
    private static final String BY = UNIT + "\\s*(?:x|by|\u00d7)\\s*";

    private static final Pattern SIDES = Pattern.compile(NUMBER + BY + NUMBER + BY + NUMBER + UNIT);
    private static final Pattern LENGTH =
            Pattern.compile("(?:length )?" + NUMBER + "(?!\\s*m3)" + UNIT + "(?: long| in length)");
    private static final Pattern SECONDS =
            Pattern.compile("\\D*?" + NUMBER + "\\s*(?:s|secs?|seconds?)?\\.?(?: reverberation| echo)?");
    private static final Pattern SEATS = Pattern.compile("(?:for |seats |seating )?(\\d{1,5})(?: seats?| people)?");
    private static final Pattern VOLUME = Pattern.compile(NUMBER + " ?(?:m3|m\u00b3|cubic metres)");

    private static final Pattern ABOUT = Pattern.compile(
            "^(?:(?:about|approx\\.?|approximately|roughly|around|some|circa|ca\\.?|c\\.|nearly)\\s+)+");

    /** What parts a description: a comma, but not that of a number, or a word. */
    private static final Pattern PARTS = Pattern.compile("\\s*[,;](?!\\d)\\s*|\\s+(?:with|and|for)\\s+");

    private static final String HOW_LARGE = "Enter small, usual, large, 250 seats, about 20 m long, or length x width x"
            + " height, as 22 x 9 x 8 or 72 x 30 x 26 ft.";

    /** How large it is against the usual. */
    private static final Map<String, Double> SIZES = Map.of(
            "tiny", 0.65, "small", 0.8, "little", 0.8, "usual", 1.0, "large", 1.25, "big", 1.25, "huge", 1.5, "medium",
            1.0);

    /** Other words for the kinds. */
    private static final Map<String, Church> KINDS = Map.of(
            "church", Church.PARISH_CHURCH,
            "minster", Church.CATHEDRAL,
            "abbey", Church.CATHEDRAL,
            "basilica", Church.CATHEDRAL,
            "city church", Church.TOWN_CHURCH,
            "country church", Church.VILLAGE_CHURCH,
            "oratory", Church.CHAPEL,
            "hall", Church.DRY_HALL);

    private static final Map<String, Furnishing> FURNISHINGS = Map.of(
            "chairs", Furnishing.PEWS,
            "benches", Furnishing.PEWS,
            "empty", Furnishing.BARE);

    /** Words that change nothing that is estimated here. */
    private static final Set<String> MUTE = Set.of(
            "a",
            "an",
            "the",
            "our",
            "very",
            "quite",
            "rather",
            "fairly",
            "old",
            "new",
            "modern",
            "stone",
            "brick",
            "wooden",
            "wood",
            "gothic",
            "romanesque",
            "baroque",
            "victorian",
            "medieval",
            "size",
            "sized",
            "floor",
            "walls",
            "it",
            "is",
            "has",
            "of",
            "in",
            "room",
            "building");

    /** What is known of a room so far. */
    private static final class Known {

        private Optional<Church> church = Optional.empty();
        private OptionalDouble factor = OptionalDouble.empty();
        private Optional<String> size = Optional.empty();
        private Furnishing furnishing = Furnishing.PEWS;
        private OptionalDouble clapS = OptionalDouble.empty();
        private OptionalInt seats = OptionalInt.empty();
    }

    private RoomWords() {}

    /**
     * A room as a line describes it, in words or figures: "parish church, 22 x 9 x 8, carpet, a clap dies in 2 s",
     * "4200 m3, 300 seats, 2.2 s". Of a size without a kind, it is a parish church.
     *
     * @throws NotationException at the first part that is none of these
     */
    public static Room room(String line) throws NotationException {
        Known known = new Known();
        for (String part : PARTS.split(line.strip().toLowerCase(Locale.ROOT), -1)) {
            String said = withoutAbout(part);
            if (!said.isEmpty()) {
                read(said, known);
            }
        }
        if (known.church.isEmpty() && known.size.isEmpty()) {
            throw new NotationException("Say what kind of church it is: " + kinds() + ".");
        }
        Church church = known.church.orElse(Church.PARISH_CHURCH);
        Size size = known.size.isPresent()
                ? size(church, known.size.get())
                : known.factor.isEmpty() && known.seats.isPresent()
                        ? church.ofSeats(known.seats.getAsInt())
                        : church.sized(known.factor.orElse(1));
        Room room = church.room(size, known.furnishing, known.clapS);
        return new Room(room.volumeM3(), known.seats.orElse(room.seats()), room.reverberation(), room.distances());
    }

    private static void read(String part, Known known) throws NotationException {
        Matcher seats = SEATS.matcher(part);
        if (seats.matches() && !part.matches("\\d+")) {
            known.seats = OptionalInt.of(Integer.parseInt(seats.group(1)));
        } else if (inFigures(part)) {
            known.size = Optional.of(part);
        } else if (SECONDS.matcher(part).matches()) {
            known.clapS = OptionalDouble.of(clapS(part));
        } else {
            words(part, known);
        }
    }

    private static boolean inFigures(String part) {
        return List.of(SIDES, LENGTH, VOLUME).stream()
                .anyMatch(form -> form.matcher(part).matches());
    }

    private static void words(String part, Known known) throws NotationException {
        String rest = part;
        for (Church each : Church.values()) {
            rest = named(rest, each.word(), each, known);
        }
        for (Map.Entry<String, Church> kind : KINDS.entrySet().stream()
                .sorted(Map.Entry.<String, Church>comparingByKey().reversed())
                .toList()) {
            rest = named(rest, kind.getKey(), kind.getValue(), known);
        }
        boolean isVery = rest.contains("very");
        for (String word : rest.strip().split("\\s+", -1)) {
            Optional<Furnishing> furnished =
                    Optional.ofNullable(FURNISHINGS.get(word)).or(() -> Furnishing.of(word));
            boolean isMute = word.isEmpty() || MUTE.contains(word);
            if (SIZES.containsKey(word)) {
                double factor = SIZES.get(word);
                known.factor = OptionalDouble.of(isVery ? factor * factor : factor);
            } else if (!isMute) {
                known.furnishing = furnished.orElseThrow(() -> new NotationException(
                        Quoted.text(part) + " describes no room. The kinds are " + kinds() + ". " + HOW_LARGE));
            }
        }
    }

    /** What is left of a part without the name of a kind. */
    private static String named(String part, String name, Church church, Known known) {
        Matcher found = Pattern.compile("\\b" + name + "\\b").matcher(part);
        if (known.church.isPresent() || !found.find()) {
            return part;
        }
        known.church = Optional.of(church);
        return part.substring(0, found.start()) + part.substring(found.end());
    }

    private static String kinds() {
        return Arrays.stream(Church.values()).map(Church::word).collect(Collectors.joining(", "));
    }

    /**
     * A size as it is typed: "22 x 9 x 8" in metres, "72 x 30 x 26 ft"; in the usual proportions "about 20 m long",
     * "250 seats", "2100 m3", "small", "very large"; blank for the usual one.
     *
     * @throws NotationException if it is none of these, or no room
     */
    public static Size size(Church church, String typed) throws NotationException {
        String said = withoutAbout(typed.strip().toLowerCase(Locale.ROOT));
        Matcher sides = SIDES.matcher(said);
        if (sides.matches()) {
            Size size = new Size(number(sides.group(1)), number(sides.group(3)), number(sides.group(5)));
            return Church.possible(size.times(unitM(sides.group(6))));
        }
        Matcher length = LENGTH.matcher(said);
        if (length.matches()) {
            return church.ofLength(number(length.group(1)) * unitM(length.group(2)));
        }
        Matcher volume = VOLUME.matcher(said);
        if (volume.matches()) {
            return church.ofVolume(number(volume.group(1)));
        }
        Matcher seats = SEATS.matcher(said);
        if (seats.matches() && !said.matches("\\d+")) {
            return church.ofSeats(Integer.parseInt(seats.group(1)));
        }
        String word = said.startsWith("very ") ? said.substring("very ".length()) : said;
        if (!word.isEmpty() && !SIZES.containsKey(word)) {
            throw new NotationException(HOW_LARGE);
        }
        double factor = SIZES.getOrDefault(word, 1.0);
        return church.sized(word.equals(said) ? factor : factor * factor);
    }

    private static double unitM(String unit) {
        return unit == null || unit.startsWith("m") ? 1 : METRES_A_FOOT;
    }

    private static String withoutAbout(String said) {
        return ABOUT.matcher(said).replaceFirst("").strip();
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

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }
}
