package versewind.stoplist;

import java.text.Normalizer;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Text from pages, made plain: one sign each for feet, dashes and fractions, and without what a page adds. */
final class Typography {

    private static final Pattern ENTITY = Pattern.compile("&(?:#(\\d{1,6})|#[xX](\\p{XDigit}{1,5})|(\\w{2,8}));");
    private static final Map<String, String> ENTITIES = WordTable.rows("entities.csv").stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.get(0), row -> row.get(1)));

    /** The accents in names such as "eacute", as marks that are set on the letter before them. */
    private static final Map<String, String> ACCENTS = Map.of(
            "acute", "\u0301",
            "grave", "\u0300",
            "circ", "\u0302",
            "uml", "\u0308",
            "tilde", "\u0303",
            "ring", "\u030a",
            "cedil", "\u0327",
            "caron", "\u030c");

    private static final Pattern FRACTION = Pattern.compile("(?<=\\d)?([\u00bc-\u00be\u2150-\u215e])");
    private static final Pattern RAISED =
            Pattern.compile("(?<=\\d)([\u2070\u00b9\u00b2\u00b3\u2074-\u2079]+)(?=[/\u2044\u2215])");
    private static final Pattern PRIMES =
            Pattern.compile("[\u2018\u2019\u201a\u201b\u2032\u00b4`\u02b9\u02bc\uff07\u055a\u05f3]");
    private static final Pattern DOUBLE_PRIMES = Pattern.compile("[\u2033\u201c\u201d\u201e\u02ba\u3003]|''");
    private static final Pattern DASHES = Pattern.compile("[\u2010-\u2015\u2212\u00ad\ufe58\ufe63\uff0d]");
    private static final Pattern BLANKS = Pattern.compile("[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]");
    private static final Pattern UNSEEN = Pattern.compile("[\u200b-\u200f\u2028-\u202e\u2060-\u2064\ufeff]");
    private static final Pattern ARROWS = Pattern.compile("[\u2190-\u21ff\u27f5-\u27ff]|[-=]>");
    private static final Pattern SLASHES = Pattern.compile("[\u2044\u2215\uff0f]");
    /** A name and figures, or a pitch and what follows, without a blank between. */
    private static final Pattern GLUED = Pattern.compile("(?<=\\p{L}{3})(?=\\d)(?!\\d\\p{L})"
            + "|(?<=\\p{Ll}{3})(?=[IVX]{1,4}(?!\\p{L}))|(?<=[a-z][IVX]{1,4})(?=\\d{2,3}$)"
            + "|(?<=\\d['\"])(?=[\\p{L}\\d])");

    private static final Pattern LEADERS = Pattern.compile(
            "\\.\\s?\\.\\s?\\.[. ]*|(?<=\\s)\\.(?=\\s)|\\.\\.+|\u2026+|_{2,}|\u00b7\\s?\u00b7\\s?\u00b7[\u00b7"
                    + " ]*|(?<=\\s)-\\s?-\\s?-[- ]*");
    private static final Pattern FOOT_WITHIN =
            Pattern.compile("(?<!\\d)(\\d{1,2})['\"]\\s?(\\d)\\s?/\\s?(\\d{1,2})(?!\\d)'?");

    /** A nought among letters. */
    private static final Pattern NOUGHT = Pattern.compile("(?<=\\p{L})0(?=\\p{L})|(?<![\\p{L}\\d])0(?=\\p{L}{2})");

    /** "2f ft": a scan of two feet and two thirds. */
    private static final Pattern TWO_THIRDS = Pattern.compile("(?<!\\d)2[f\u00a7%](?=\\s*(?:\"|,,|ft|feet))");

    /** "GREAT ORGAN.-Open Diapason": a point and a dash behind a heading, where others set a colon. */
    private static final Pattern POINT_AND_DASH =
            Pattern.compile("(^[\\p{L} ]{4,40}|(?<!\\p{L})\\p{Lu}{4,12})\\.-\\s?(?=\\p{Lu})");

    private Typography() {}

    /** Letters that a scan took for others. */
    private static String rescanned(String text) {
        return ScannedWords.withFigures(ScannedWords.mended(NOUGHT.matcher(text).replaceAll(nought -> {
            boolean isSmall = nought.start() > 0 && Character.isLowerCase(text.charAt(nought.start() - 1));
            return isSmall ? "o" : "O";
        })));
    }

    /** The sign of an entity such as "&prime;", "&#8242;" or "&eacute;"; the whole as it stands where it is unknown. */
    private static String sign(MatchResult entity) {
        if (entity.group(3) == null) {
            int code =
                    entity.group(1) == null ? Integer.parseInt(entity.group(2), 16) : Integer.parseInt(entity.group(1));
            return Character.isValidCodePoint(code) ? Character.toString(code) : entity.group();
        }
        String name = entity.group(3);
        String accent = ACCENTS.get(name.substring(1));
        return accent == null
                ? ENTITIES.getOrDefault(name, entity.group())
                : Normalizer.normalize(name.charAt(0) + accent, Normalizer.Form.NFC);
    }

    /** One line made plain. Tabs and runs of blanks stay, as they part columns. */
    static String plain(String line) {
        String text = ENTITY.matcher(line).replaceAll(entity -> Matcher.quoteReplacement(sign(entity)));
        text = isAscii(text)
                ? ARROWS.matcher(text.replace("`", "'").replace("''", "\"")).replaceAll(">")
                : inAscii(text);
        text = LEADERS.matcher(text)
                .replaceAll(leader -> " ".repeat(leader.group().length()));
        text = FOOT_WITHIN.matcher(text).replaceAll("$1 $2/$3'");
        text = TWO_THIRDS.matcher(text).replaceAll("2 2/3");
        text = GLUED.matcher(rescanned(text)).replaceAll(" ");
        text = POINT_AND_DASH.matcher(text).replaceAll("$1: ");
        return text.stripTrailing();
    }

    private static boolean isAscii(String text) {
        return text.chars().allMatch(sign -> sign < '\u0080');
    }

    /** With the signs that this program reads in the place of those that look like them. */
    private static String inAscii(String line) {
        String text = RAISED.matcher(line).replaceAll(" $1");
        text = FRACTION.matcher(text).replaceAll(" $1");
        text = UNSEEN.matcher(BLANKS.matcher(text).replaceAll(" ")).replaceAll("");
        text = PRIMES.matcher(text).replaceAll("'");
        text = DOUBLE_PRIMES.matcher(text).replaceAll("\"");
        text = Normalizer.normalize(text.replace("\u00ba", "\u00b0").replace("\u00aa", "\u00b0"), Normalizer.Form.NFKC);
        text = ARROWS.matcher(text).replaceAll(">");
        return SLASHES.matcher(DASHES.matcher(text).replaceAll("-")).replaceAll("/");
    }
}
