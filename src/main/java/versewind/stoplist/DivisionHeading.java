package versewind.stoplist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The heading of a division: "Manual I C-g3", "II. Récit expressif", "GREAT (unenclosed)".
 *
 * @param name what the division is called
 * @param word what kind of division it is
 * @param enclosed whether it stands in a box, where that is said
 * @param keys its compass, where that is said
 * @param inline what follows on the same line
 */
record DivisionHeading(String name, DivisionWord word, Optional<Boolean> enclosed, OptionalInt keys, String inline) {

    private static final Set<String> MANUAL =
            Spelling.set("manual manuale manuaal clavier klavier klaver man teclado manualer tastiera keyboard "
                    + "tastatur manualen manuel");
    private static final Set<String> FILLERS = Spelling.set(
            "vrij vrije freies svelle svaller svallare svell svall svallaren svelleren svelle organ orgel orgue organo"
                    + " division department the organs werk work key keyboard compass enclosed unenclosed expressive"
                    + " expressif expression expressief espressivo expresivo schwellbar swellable in im a swell box boite"
                    + " schweller schwellkasten kasten expr non un uten ohne sans with mit en de und of and zwelkast"
                    + " zwelbaar kast opt notes stops continued cont ctd wind pressure dos ruckpositiv floating umfang"
                    + " manualumfang swellbox caisse espressione cassa espressiva separate same main case i ventil");
    private static final Map<String, Integer> NUMBERS = Map.ofEntries(
            Map.entry("i", 1),
            Map.entry("ii", 2),
            Map.entry("iii", 3),
            Map.entry("iv", 4),
            Map.entry("v", 5),
            Map.entry("vi", 6),
            Map.entry("1", 1),
            Map.entry("2", 2),
            Map.entry("3", 3),
            Map.entry("4", 4),
            Map.entry("5", 5),
            Map.entry("1er", 1),
            Map.entry("1e", 1),
            Map.entry("2e", 2),
            Map.entry("3e", 3),
            Map.entry("4e", 4),
            Map.entry("2eme", 2),
            Map.entry("3eme", 3),
            Map.entry("4eme", 4),
            Map.entry("1st", 1),
            Map.entry("2nd", 2),
            Map.entry("3rd", 3),
            Map.entry("4th", 4),
            Map.entry("primo", 1),
            Map.entry("secondo", 2),
            Map.entry("terzo", 3),
            Map.entry("first", 1),
            Map.entry("second", 2),
            Map.entry("third", 3),
            Map.entry("primero", 1),
            Map.entry("segundo", 2),
            Map.entry("prima", 1),
            Map.entry("seconda", 2),
            Map.entry("1o", 1),
            Map.entry("2o", 2),
            Map.entry("premier", 1),
            Map.entry("deuxieme", 2));
    private static final Pattern PARENTHESES = Pattern.compile("[(\\[]([^)\\]]*)[)\\]]?");
    private static final Pattern COUNTS = Pattern.compile(
            "\\b\\d{1,4}\\s*(?:speaking\\s+)?(?:stops?|ranks?|registers?|jeux|registri|registros|stemmen|st\u00e4mmor|stemmer|register|pipes|stimmen|pfeifen|voices)\\b|\\b\\d+(?:["
                    + " .]\\d/\\d|[.,]\\d+)?\\s*(?:\"|inch(?:es)?|in\\b|mm|ins\\b)\\.?(?:\\s*(?:wind|w\\.?\\s?g\\.?|ws|w\\.?c\\.?|pressure))*",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern ENCLOSED = Pattern.compile(
            "\\benclosed|\\bexpressi[fv]|\\bespressiv|\\bexpresiv|\\bexpr\\b|schwellbar|schwellkasten|im"
                    + " schweller|swell ?box|zwelkast|zwelbaar|\\bboite\\b|svall|\\bsvell|under expression",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern OPEN = Pattern.compile(
            "un-?enclosed|non[- ]?expressi|not enclosed|non[- ]enclosed|inexpressi|non espressiv|no expresiv|ohne"
                    + " schweller",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern EDGES = Pattern.compile("^[\\s.,;:*\u2022=~#-]+|[\\s.,;:*\u2022=~#-]+$");
    private static final Pattern NUMERAL_BEFORE = Pattern.compile(
            "(?i)^(?:(?:manuale|manuaal|manual|clavier|klavier|man\\.?|teclado)\\s*)?(?:[ivx]{1,4}|\\d)(?:er|e|\u00e8me|eme|\u00b0|st|nd|rd|th)?\\b\\.?\\s*(?:manuale|manuaal|manual|clavier|klavier|man\\.?|teclado)?\\s*[.):,/-]*\\s*");
    private static final Pattern NUMERAL_AFTER = Pattern.compile(
            "(?i)(?<=\\p{L}{3})\\s*[,-]\\s*(?:[ivx]{1,4}|\\d)?\\.?\\s*(?:manual|manuale|clavier|klavier|manuaal|man\\.?)\\s*(?:[ivx]{1,4}|\\d)?$|(?<=\\p{L}{3})\\s*,\\s*(?:[ivx]{1,4})$");
    private static final Pattern TAIL = Pattern.compile("(?i)[\\s,(-]+(?:i"
            + " sv[e\u00e4]ll\\w*|organ|division|enclosed|unenclosed|expressive|\\(?cont\\w*|schwellbar)\\)?\\.?$");
    private static final Pattern NUMBER_ASIDE = Pattern.compile(
            "(?i)[(\\[](?:manual|man\\.?|clavier|klavier|manuaal)?\\s*([ivx]{1,4}|[1-5])(?:\\.?\\s*(?:manual|man\\.?))?\\s*[,)\\]]");
    private static final Map<String, String> SHORT = Map.of(
            "gt", "Great", "grt", "Great", "sw", "Swell", "swl", "Swell", "ch", "Choir", "ped", "Pedal", "pd", "Pedal");
    private static final int MOST_UNKNOWN = 2;
    private static final int LONGEST = 90;

    /** Reads a heading, if a line is one. */
    static Optional<DivisionHeading> read(String line, String language) {
        String text = EDGES.matcher(line).replaceAll("");
        if (text.isEmpty() || text.length() > 4 * LONGEST) {
            return Optional.empty();
        }
        int colon = line.indexOf(':');
        if (colon > 0) {
            Optional<DivisionHeading> before =
                    head(line.substring(0, colon), line.substring(colon + 1).strip(), language);
            if (before.isPresent()) {
                return Optional.of(before.get().joined(read(before.get().inline(), language)));
            }
        }
        return text.length() <= LONGEST ? head(text, "", language) : Optional.empty();
    }

    /** "I Manual: Hauptwerk" is one heading. */
    private DivisionHeading joined(Optional<DivisionHeading> second) {
        boolean numberThenName = second.isPresent()
                && word.role().isEmpty()
                && !second.get().word().role().isEmpty()
                && second.get().word().number().isEmpty();
        if (!numberThenName) {
            return this;
        }
        DivisionHeading named = second.get();
        DivisionWord both = new DivisionWord(named.word.role(), word.number(), named.word.box(), named.word.words());
        return new DivisionHeading(
                named.name,
                both,
                named.enclosed.or(() -> enclosed),
                keys.isPresent() ? keys : named.keys,
                named.inline);
    }

    private static Optional<DivisionHeading> head(String text, String inline, String language) {
        String bare = PARENTHESES.matcher(text).replaceAll(" ");
        String core = COUNTS.matcher(Compass.without(bare)).replaceAll(" ");
        if (bare.isBlank()) {
            core = COUNTS.matcher(Compass.without(text.replaceAll("[()\\[\\]]", " ")))
                    .replaceAll(" ");
        }
        if (Feet.MARKED.matcher(core).find() || core.contains("/")) {
            return Optional.empty();
        }
        List<String> words = Spelling.words(core);
        Parts parts = Parts.of(words, language).numbered(NUMBER_ASIDE.matcher(text));
        boolean named = parts.divisions().size() == 1;
        boolean twice = parts.divisions().size() == 2
                && (parts.divisions()
                                .get(0)
                                .role()
                                .equals(parts.divisions().get(1).role())
                        || (parts.unknown() == 0 && !joined(core)));
        boolean numbered =
                parts.number().isPresent() && (parts.manual() || words.size() == 1 || isNumeralThenName(core, parts));
        boolean only = parts.unknown() == 0 && (named || twice || numbered || (parts.manual() && words.size() == 1));
        boolean loud =
                parts.unknown() <= MOST_UNKNOWN && named && parts.beginsWithDivision() && isLoud(core, text, inline);
        if (!only && !loud) {
            return Optional.empty();
        }
        if (words.size() == 1 && words.get(0).matches("\\d|p|so|ec|ow|a")) {
            return Optional.empty();
        }
        DivisionWord first =
                named || twice ? parts.divisions().get(0) : new DivisionWord("", parts.number(), false, "");
        DivisionWord word = new DivisionWord(first.role(), parts.number(), first.box(), first.words());
        return Optional.of(new DivisionHeading(
                named(core, word),
                word,
                enclosed(text + " " + inlineNote(inline), word),
                Compass.keys(text + " " + inlineNote(inline), word.isPedal()),
                withoutNote(inline)));
    }

    private static boolean joined(String core) {
        return (core.contains("-") && !core.contains(" - ")) || core.contains("+");
    }

    private static boolean isNumeralThenName(String core, Parts parts) {
        return parts.divisions().size() == 1 && parts.unknown() == 0 && !core.isBlank();
    }

    private static boolean isLoud(String core, String text, String inline) {
        boolean capitals = core.equals(core.toUpperCase(Locale.ROOT));
        return (capitals
                        || !inline.isEmpty()
                        || text.endsWith(":")
                        || core.toLowerCase(Locale.ROOT).matches(".*\\b(?:organ|division)\\b.*"))
                && !core.matches(".*\\b(?:to|zu|an|au)\\b.*");
    }

    /** "GREAT: 61 notes" says something of the division, not a stop. */
    private static String inlineNote(String inline) {
        return withoutNote(inline).isEmpty() ? inline : "";
    }

    private static String withoutNote(String inline) {
        String rest = COUNTS.matcher(Compass.without(PARENTHESES.matcher(inline).replaceAll(" ")))
                .replaceAll(" ");
        List<String> words = Spelling.words(rest);
        boolean named = !words.isEmpty() && DivisionWord.at(words, 0, "").isPresent();
        boolean note = !named && FILLERS.containsAll(words);
        return note ? "" : inline;
    }

    private static Optional<Boolean> enclosed(String text, DivisionWord word) {
        String plain = Spelling.plain(text);
        if (OPEN.matcher(plain).find()) {
            return Optional.of(false);
        }
        if (ENCLOSED.matcher(plain).find() || word.box()) {
            return Optional.of(true);
        }
        return Optional.empty();
    }

    private static String named(String core, DivisionWord word) {
        String name = EDGES.matcher(core.replaceAll("\\s+", " ")).replaceAll("");
        if (SHORT.containsKey(Spelling.spelled(name))) {
            return SHORT.get(Spelling.spelled(name));
        }
        if (word.role().isEmpty() && word.number().isPresent() && name.matches("(?i)[ivx]+|\\d")) {
            return "Manual " + name.toUpperCase(Locale.ROOT);
        }
        if (!word.role().isEmpty()) {
            String trimmed = EDGES.matcher(TAIL.matcher(name).replaceFirst("")).replaceAll("");
            name = trimmed.isBlank() ? name : trimmed;
            name = EDGES.matcher(NUMERAL_AFTER.matcher(name).replaceFirst("")).replaceAll("");
            String shorter =
                    EDGES.matcher(NUMERAL_BEFORE.matcher(name).replaceFirst("")).replaceAll("");
            name = shorter.isBlank() ? name : shorter;
        }
        return name.length() > 3 && name.equals(name.toUpperCase(Locale.ROOT)) ? capitalised(name) : name;
    }

    private static String capitalised(String name) {
        return Stream.of(name.split(" ", -1))
                .map(each -> RankCount.number(each) > 0 || each.length() < 2
                        ? each
                        : each.substring(0, 1) + each.substring(1).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" "));
    }

    /** What the words of a heading are. */
    private record Parts(
            List<DivisionWord> divisions, OptionalInt number, boolean manual, int unknown, boolean beginsWithDivision) {

        /** With the manual's number that stands in parentheses. */
        Parts numbered(Matcher aside) {
            boolean found = number.isEmpty() && aside.find();
            Integer inside = found ? NUMBERS.get(aside.group(1).toLowerCase(Locale.ROOT)) : null;
            return inside == null
                    ? this
                    : new Parts(divisions, OptionalInt.of(inside), manual, unknown, beginsWithDivision);
        }

        static Parts of(List<String> words, String language) {
            List<DivisionWord> divisions = new ArrayList<>();
            OptionalInt number = OptionalInt.empty();
            boolean manual = false;
            boolean begins = false;
            int unknown = 0;
            int at = 0;
            while (at < words.size()) {
                String word = words.get(at);
                Optional<DivisionWord.Spotted> spotted = DivisionWord.at(words, at, language);
                boolean preposition = word.equals("i") && at > 0 && !MANUAL.contains(words.get(at - 1));
                if (NUMBERS.containsKey(word) && number.isEmpty() && !preposition) {
                    number = OptionalInt.of(NUMBERS.get(word));
                } else if (MANUAL.contains(word)) {
                    manual = true;
                } else if (spotted.isPresent() && !(word.equals("swell") && !divisions.isEmpty())) {
                    begins |= divisions.isEmpty() && unknown == 0;
                    divisions.add(spotted.get().word());
                    at += spotted.get().length() - 1;
                } else if (!FILLERS.contains(word)) {
                    unknown++;
                }
                at++;
            }
            return new Parts(divisions, number, manual, unknown, begins);
        }
    }
}
