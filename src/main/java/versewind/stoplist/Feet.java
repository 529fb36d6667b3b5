package versewind.stoplist;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import versewind.organ.Footage;

/** Pitches as people write them: 8, 8', 8 ft, 2 2/3, 2-2/3, 22/3, 2.66, 5 1/3 Fuß, 13 palmos. */
final class Feet {

    private static final String NUMBER =
            "(?:\\d{1,2}[ .+-]{0,2}\\d\\s?/\\s?\\d{1,2}|\\d{2,3}/\\d|\\d\\s?/\\s?\\d{1,2}|\\d{1,2}[.,]\\d{1,2}|\\d{1,2})";
    private static final String UNIT =
            "(?:\\s?['\"]{1,2}|\\s?-?\\s?(?:ft|foot|feet|fu(?:ß|ss)|voets?|vt|v|pieds?|pds?|pd|pies|piedi|palmos|palm|p|fods?|fots?|f)\\b\\.?)";

    /** A pitch with its unit, so that nothing else can be meant. */
    static final Pattern MARKED =
            Pattern.compile("(?<![\\d/.,\\p{L}])(" + NUMBER + ")" + UNIT + "(?![\\p{L}\\d])", Pattern.CASE_INSENSITIVE);

    /** A pitch without a unit. */
    static final Pattern BARE =
            Pattern.compile("(?<![\\d/.,\\p{L}'])(" + NUMBER + ")(?![\\d/\\p{L}%\u00b0])(?![.,]\\d)");

    private static final Pattern MIXED = Pattern.compile("(?:(\\d{1,2})[ .+-]{1,2})?(\\d{1,2})\\s?/\\s?(\\d{1,2})");
    private static final Pattern RUN_TOGETHER = Pattern.compile("(\\d{1,2})(\\d)/(\\d)");
    private static final Set<String> USUAL = Set.of(
            "64", "32", "21 1/3", "16", "12 4/5", "10 2/3", "9 1/7", "8", "6 2/5", "5 1/3", "4 4/7", "4", "3 5/9",
            "3 1/5", "2 2/3", "2 2/7", "2", "1 7/9", "1 3/5", "1 1/3", "1 1/7", "1", "8/9", "4/5", "2/3", "4/7", "1/2",
            "2/5", "1/3", "1/4", "8/11", "8/13", "8/15", "16/19", "1 1/2");
    private static final double TOLERANCE = 0.035;

    private Feet() {}

    /** The pitch that a number means. */
    static Optional<Footage> read(String number) {
        String text = number.strip();
        if (text.matches("\\d{1,2}[.,]\\d{1,2}")) {
            return nearest(Double.parseDouble(text.replace(',', '.')));
        }
        Matcher together = RUN_TOGETHER.matcher(text);
        if (together.matches()) {
            Optional<Footage> feet =
                    Footage.parse(together.group(1) + " " + together.group(2) + "/" + together.group(3));
            if (feet.isPresent()) {
                return feet;
            }
        }
        Matcher mixed = MIXED.matcher(text);
        if (mixed.matches()) {
            String whole = mixed.group(1) == null || mixed.group(1).equals("0") ? "" : mixed.group(1) + " ";
            return Footage.parse(whole + mixed.group(2) + "/" + mixed.group(3));
        }
        return palms(text).or(() -> Footage.parse(text));
    }

    /** Spanish fronts are counted in spans of a hand: 13 are eight feet. */
    private static Optional<Footage> palms(String text) {
        return switch (text) {
            case "13" -> Optional.of(Footage.of(8));
            case "26" -> Optional.of(Footage.of(16));
            case "52" -> Optional.of(Footage.of(32));
            default -> Optional.empty();
        };
    }

    private static Optional<Footage> nearest(double feet) {
        if (Math.abs(feet - 6.5) < 1e-9) {
            return Optional.of(Footage.of(4));
        }
        return USUAL.stream()
                .map(text -> Footage.parse(text).orElseThrow())
                .filter(each -> Math.abs(each.feet() - feet) <= TOLERANCE)
                .min(Comparator.comparingDouble(each -> Math.abs(each.feet() - feet)));
    }

    /** Whether organs have stops of this pitch, so that a number without a unit can mean it. */
    static boolean isUsual(Footage feet) {
        return USUAL.contains(feet.toString());
    }
}
