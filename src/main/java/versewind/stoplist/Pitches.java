package versewind.stoplist;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import versewind.organ.Footage;

/** Pitches as people write them: 8, 8', 8 ft, 2 2/3, 2-2/3, 22/3, 2.66, 5 1/3 Fuß, 13 palmos. */
final class Pitches {

    private static final TokenForm PALMS_END = TokenForm.of("number <stopped>|<open_pipes>? [.]?");

    private static final Set<String> USUAL = Set.of(
            "64", "32", "21 1/3", "16", "12 4/5", "10 2/3", "9 1/7", "8", "6 2/5", "5 1/3", "4 4/7", "4", "3 5/9",
            "3 1/5", "2 2/3", "2 2/7", "2", "1 7/9", "1 3/5", "1 1/3", "1 1/7", "1", "8/9", "4/5", "2/3", "4/7", "1/2",
            "2/5", "1/3", "1/4", "8/11", "8/13", "8/15", "16/19", "1 1/2");
    private static final Set<String> PALMS = Set.of("13", "26", "52");
    private static final TokenForm MARKED = TokenForm.of("pitch quote ~quote?", "pitch [-]? <feet> ~[.]?");
    private static final double MOST_PIEDS = 16;
    private static final double TOLERANCE_FT = 0.035;
    private static final double HALF_PALM_FT = 6.5;

    private Pitches() {}

    /** The pitch that a number means. */
    static Optional<Footage> read(String number) {
        String text = number.strip();
        int slash = text.indexOf('/');
        if (slash > 0) {
            return fraction(
                    text.substring(0, slash).strip(), text.substring(slash + 1).strip());
        }
        return switch (text) {
            case "13" -> Optional.of(Footage.of(8));
            case "26" -> Optional.of(Footage.of(16));
            case "52" -> Optional.of(Footage.of(32));
            default ->
                text.contains(".") || text.contains(",")
                        ? nearest(Double.parseDouble(text.replace(',', '.')))
                        : Footage.parse(text);
        };
    }

    /** True if a number means 8, 16 or 32 ft in palms. */
    static boolean isPalms(String number) {
        return PALMS.contains(number);
    }

    /** The pitch that a number of palms means: 13 in Spain and 12 in Portugal are 8 ft. */
    static Optional<Footage> ofPalms(String number) {
        return switch (number.strip()) {
            case "3" -> Optional.of(Footage.of(2));
            case "6" -> Optional.of(Footage.of(4));
            case "12" -> Optional.of(Footage.of(8));
            case "24" -> Optional.of(Footage.of(16));
            default -> read(number);
        };
    }

    /**
     * Of "2 2", "2-2", "22" or "2" over "3" the last digit is the numerator; "16/19" and its like are no mixed numbers.
     */
    private static Optional<Footage> fraction(String above, String below) {
        boolean plain = below.length() > 1 && above.chars().allMatch(Character::isDigit);
        int last = above.length() - 1;
        String whole = plain ? "" : above.substring(0, last).replaceAll("[ .+-]", "");
        String fraction = (plain ? above : above.substring(last)) + "/" + below;
        return Footage.parse(whole.isEmpty() || whole.equals("0") ? fraction : whole + " " + fraction)
                .or(() -> Footage.parse(above + "/" + below));
    }

    private static Optional<Footage> nearest(double feet) {
        if (Math.abs(feet - HALF_PALM_FT) < 1e-9) {
            return Optional.of(Footage.of(4));
        }
        return USUAL.stream()
                .map(text -> Footage.parse(text).orElseThrow())
                .filter(each -> Math.abs(each.feet() - feet) <= TOLERANCE_FT)
                .min(Comparator.comparingDouble(each -> Math.abs(each.feet() - feet)));
    }

    /** True if organs have stops of this pitch, so that a number without a unit can mean it. */
    static boolean isUsual(Footage feet) {
        return USUAL.contains(feet.toString());
    }

    /** The usual pitch that a number without a unit can mean. */
    static Optional<Footage> usual(Token number) {
        return number.isPitch() ? read(number.text()).filter(Pitches::isUsual) : Optional.empty();
    }

    /** True if what stands before a token parts it from other figures. */
    static boolean isApart(Line line, int token, String signs) {
        char before = line.before(token);
        return !Character.isLetterOrDigit(before) && signs.indexOf(before) < 0;
    }

    /** How many tokens a number with a unit of feet has that begins at a token; 0 where none does. */
    static int marked(Line line, int token) {
        int length = isApart(line, token, "/.,") ? MARKED.at(line, token) : 0;
        int last = token + length - 1;
        boolean ends = length > 0 && (line.isSign(last, ".") || !Character.isLetterOrDigit(line.after(last)));
        boolean isStop = length > 1 && line.at(token + 1).text().startsWith("Stop");
        return ends && !isStop ? length : 0;
    }

    /** True if a text has a pitch with its unit. */
    static boolean isMarked(Line line) {
        return IntStream.range(0, line.size()).anyMatch(i -> marked(line, i) > 0);
    }

    static boolean isMarked(String text) {
        return isMarked(new Line(text));
    }

    /** "8 p." is a pitch in feet rather than a count of pipes: a rank has more. */
    static boolean isInPieds(Line line, int token) {
        return line.is(token + 1, "feet")
                && usual(line.at(token))
                        .filter(pitch -> pitch.feet() <= MOST_PIEDS)
                        .isPresent();
    }

    /** True if a token is a number that can be a pitch without a unit. */
    static boolean isBare(Line line, int token) {
        char after = line.after(token);
        return line.at(token).isPitch()
                && isApart(line, token, "/.,'")
                && !Character.isLetterOrDigit(after)
                && "/%\u00b0".indexOf(after) < 0
                && !((after == '.' || after == ',')
                        && line.is(token + 2, Token.Kind.NUMBER)
                        && line.gap(token + 1) + line.gap(token + 2) == 0);
    }

    /** "Flauto in XII", "No. 2": whether a number belongs to the name. */
    static boolean isInName(Line line, int number) {
        boolean sign = line.isSign(number - 1, ".\u00b0");
        int word = number - (sign ? 2 : 1);
        if (!line.is(word, "pitch in name")) {
            return false;
        }
        return sign
                ? line.at(word).plain().startsWith("n")
                : line.at(word).text().length() > 1;
    }

    /** Where a Portuguese name has its pitch in palms, of which 12 are eight feet: "de 6"; -1 where it has none. */
    static int inPalms(Line line) {
        return IntStream.range(2, line.size())
                .filter(i -> line.at(i - 1).plain().equals("de")
                        && line.at(i).text().matches("3|6|12|24")
                        && PALMS_END.at(line, i) == line.size() - i)
                .findFirst()
                .orElse(-1);
    }
}
