package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Stop;

/**
 * The heading of a division: "Manual I C-g3", "II. Récit expressif", "GREAT (unenclosed)".
 *
 * @param name what the division is called
 * @param word what kind of division it is
 * @param enclosed how much of it stands in a box, where that is said
 * @param keys its compass, where that is said
 * @param inline what follows on the same line
 */
record DivisionHeading(String name, DivisionWord word, Optional<Boxed> enclosed, OptionalInt keys, String inline) {

    /** How much of a division stands in a swell box. */
    enum Boxed {
        NOT,
        /** Some of its stops, which the list may mark. */
        PARTLY,
        WHOLLY
    }

    private static final Map<String, String> SHORT = Map.of(
            "gt", "Great", "grt", "Great", "sw", "Swell", "swl", "Swell", "ch", "Choir", "ped", "Pedal", "pd", "Pedal");
    private static final TokenForm COUNT =
            TokenForm.of("number =speaking? <counted>", "number [\"]|<inch> [.]|<wind>*");
    private static final TokenForm TAIL = TokenForm.of("[,-]* _<heading_tail>", "[,-] <heading_tail>");
    private static final TokenForm NUMBER_BEHIND = TokenForm.of("[,-] count? [.]? <manual> [.]? count?", "[,] roman");
    private static final TokenForm NUMBER_BEFORE =
            TokenForm.of("<manual>? [.]? count ~[\u00b0]|<ordinal_end>? [.]? <manual>? [.:,/-]|close*");
    private static final TokenForm NUMBER_ASIDE =
            TokenForm.of("open <manual>? [.]? count [.]? <manual>? [.]? [,]|close");
    private static final TokenForm PAIR = TokenForm.of(
            "roman|number [.]? [+-] roman|number|<pedal_letters> [.]?", "<pedal_letters> [.]? [+-] roman|number");
    /** "III. Koppelmanual". */
    private static final Pattern COMPOUND = Pattern.compile("(?i)^[ivx]+[.)]? +(\\p{L}+manual)$");

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final String EDGES = ".,;:*\u2022=~#-";
    private static final String DASH = " - ";
    private static final int MOST_UNKNOWN = 2;
    private static final int LONGEST = 90;
    private static final int LONGEST_SHORT = 4;

    /** Reads a heading, if a line is one. */
    static Optional<DivisionHeading> read(String line, String language) {
        String text = Spelling.trimmed(line, EDGES);
        if (text.isEmpty() || text.length() > 4 * LONGEST || Compass.isOfSeveral(text)) {
            return Optional.empty();
        }
        int colon = line.indexOf(':');
        if (colon > 0) {
            Optional<DivisionHeading> before =
                    head(line.substring(0, colon + 1), line.substring(colon + 1).strip(), language);
            if (before.isPresent()) {
                return Optional.of(before.get().joined(read(before.get().inline(), language)));
            }
        }
        int dash = line.indexOf(DASH);
        if (colon < 0 && dash > 0 && line.indexOf(',', line.indexOf(',') + 1) > dash) {
            String stops = line.substring(dash + DASH.length()).strip();
            Optional<DivisionHeading> before = head(line.substring(0, dash) + ":", stops, language);
            if (before.isPresent()
                    && DivisionWord.at(Spelling.words(stops), 0, language).isEmpty()) {
                return before;
            }
        }
        Optional<DivisionHeading> whole = text.length() <= LONGEST ? head(text, "", language) : Optional.empty();
        return whole.or(() -> noted(text, language)).or(() -> measured(text, language));
    }

    /** "Pedal C-d1, Subbass 16'": what follows the compass and a comma are the stops. */
    private static Optional<DivisionHeading> measured(String text, String language) {
        int comma = text.indexOf(',');
        return comma > 0 && comma <= LONGEST && Pitches.isMarked(text.substring(comma))
                ? head(text.substring(0, comma), text.substring(comma + 1).strip(), language)
                        .filter(head ->
                                !Compass.without(text.substring(0, comma)).equals(text.substring(0, comma)))
                : Optional.empty();
    }

    /** With what a note below it says of its compass and its box. */
    DivisionHeading noted(String note) {
        return new DivisionHeading(
                name,
                word,
                enclosed.or(() -> enclosed(note, word)),
                keys.isPresent() ? keys : Compass.keys(note, word.isPedal()),
                inline);
    }

    /**
     * "Pedal Organ, two octaves from CC": what follows a comma is a note on the division, if it names no stop; so is
     * what a dash parts from it, where that speaks of the swell box.
     */
    private static Optional<DivisionHeading> noted(String text, String language) {
        int dash = text.indexOf(DASH);
        boolean ofBox = dash > 0 && isOfBox(text.substring(dash + DASH.length()));
        int comma = ofBox ? dash : text.indexOf(',');
        boolean fits = comma > 0 && text.length() <= LONGEST && !Pitches.isMarked(withoutCounts(text));
        String note = text.substring(comma + 1);
        boolean isNote = fits
                && DivisionWord.in(WordList.of("box of division").without(Spelling.words(note)), language)
                        .isEmpty()
                && Lexicon.get()
                        .find(new Line(note).letters(), NameContext.NONE)
                        .isEmpty()
                && Lexicon.get()
                        .known(new Line(text).outside(), NameContext.NONE)
                        .isEmpty();
        return isNote || (fits && ofBox)
                ? head(text.substring(0, comma), "", language).map(head -> head.noted(note))
                : Optional.empty();
    }

    private static boolean isOfBox(String note) {
        return Stream.of("enclosed", "unenclosed", "partly")
                .anyMatch(kind -> WordList.of(kind).at(Spelling.words(note), 0) > 0);
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
        return second.get().below(this);
    }

    /** With the number that stands in the heading above it. */
    DivisionHeading below(DivisionHeading above) {
        DivisionHeading whole = and(above);
        return new DivisionHeading(name, word.numbered(above.word.number()), whole.enclosed, whole.keys, inline);
    }

    /** With what another heading of the same division says. */
    DivisionHeading and(DivisionHeading other) {
        return new DivisionHeading(
                name, word, enclosed.or(() -> other.enclosed), keys.isPresent() ? keys : other.keys, inline);
    }

    private static Optional<DivisionHeading> head(String text, String inline, String language) {
        String outside = new Line(text).outside();
        String core = withoutCounts(Compass.without(outside.isBlank() ? text.replaceAll("[()\\[\\]]", " ") : outside));
        List<String> words = WordList.of("heading verb").without(Spelling.words(core));
        boolean isVerbal = words.size() < Spelling.words(core).size();
        if (words.isEmpty()
                || core.contains("/")
                || core.indexOf('>') > 0
                || PAIR.is(new Line(core))
                || WordList.of("in box with").at(words, 0) > 0
                || Pitches.isMarked(withoutCounts(text))
                || (words.size() == 1
                        && isTooShort(words.get(0))
                        && (inline.isEmpty() || !Spelling.trimmed(core, EDGES).equals("P")))) {
            return Optional.empty();
        }
        Parts parts = Parts.of(words, language).numbered(new Line(text));
        boolean named = parts.divisions().size() == 1;
        boolean twice = parts.divisions().size() == 2
                && (parts.divisions().get(0).role().isEmpty()
                        || parts.divisions().get(1).role().isEmpty()
                        || parts.divisions().get(0).isPedal()
                                == parts.divisions().get(1).isPedal())
                && (parts.divisions()
                                .get(0)
                                .role()
                                .equals(parts.divisions().get(1).role())
                        || (parts.unknown() == 0 && !joins(core)));
        boolean numbered = parts.number().isPresent() && (parts.manual() || words.size() == 1 || named);
        boolean only = parts.unknown() == 0 && (named || twice || numbered || (parts.manual() && words.size() == 1));
        boolean loud = parts.unknown() <= MOST_UNKNOWN
                && named
                && (parts.beginsWithDivision() || text.endsWith(":") || !inline.isEmpty())
                && !PistonLine.isOfPistons(core)
                && isLoud(core, text, inline);
        boolean couples = parts.number().isPresent()
                && WordList.of("coupled to").in(core)
                && parts.divisions().stream().anyMatch(DivisionWord::isPedal);
        if (couples || (!only && !loud)) {
            return Optional.empty();
        }
        DivisionWord first = named || twice
                ? parts.divisions().get(0).boxed(parts.divisions().stream().anyMatch(DivisionWord::box))
                : DivisionWord.numbered("", 0);
        Line aside = new Line(text);
        BitSet outer = aside.brackets();
        outer.flip(0, aside.size());
        String inside = Spelling.trimmed(aside.without(outer, ' '), "()[]{}");
        Optional<DivisionWord> told = parts.divisions().isEmpty()
                ? DivisionWord.in(Spelling.words(inside), language).map(DivisionWord.Spotted::word)
                : Optional.empty();
        DivisionWord word = told.orElse(first).numbered(parts.number());
        boolean isName = told.isPresent()
                && Character.isUpperCase(inside.charAt(0))
                && spotted(inside, language).length() > LONGEST_SHORT;
        boolean begins = isVerbal
                || isOrdinal(words.get(0))
                || (named && WordList.of("manual").has(words.get(0)))
                || WordList.of("heading place").has(words.get(0));
        String name = only && !begins ? core : spotted(core, language);
        String note = withoutNote(inline).isEmpty() ? text + " " + inline : text + " ";
        return Optional.of(new DivisionHeading(
                named(isName ? spotted(inside, language) : name, word),
                word,
                enclosed(note, word),
                Compass.keys(note, word.isPedal()),
                withoutNote(inline)));
    }

    /** "Segundo": the number of a manual as a word. */
    private static boolean isOrdinal(String word) {
        return word.length() > 3 && DivisionWord.ordinal(word) > 0;
    }

    /** The word for a division among others: "Das Hauptwerk enth\u00e4lt". */
    private static String spotted(String core, String language) {
        Line line = new Line(core);
        List<String> words = line.tokens().stream().map(Token::plain).toList();
        return IntStream.range(0, words.size())
                .filter(i ->
                        i + 1 == words.size() || !WordList.of("heading place").has(words.get(i)))
                .mapToObj(i -> DivisionWord.at(words, i, language)
                        .map(found -> line.part(i, i + found.length()))
                        .orElse(""))
                .filter(part -> !part.isEmpty())
                .findFirst()
                .orElse(core);
    }

    private static boolean isTooShort(String word) {
        return WordList.of("too short").has(word) || (word.length() == 1 && Character.isDigit(word.charAt(0)));
    }

    private static boolean joins(String core) {
        return (core.contains("-") && !core.contains(" - "))
                || core.contains("+")
                || WordList.of("coupled to")
                        .in(Spelling.words(core).stream()
                                .dropWhile(WordList.of("heading place")::has)
                                .toList());
    }

    private static boolean isLoud(String core, String text, String inline) {
        boolean isSet = core.equals(core.toUpperCase(Locale.ROOT)) || !inline.isEmpty() || text.endsWith(":");
        return (isSet || WordList.of("loud").in(core))
                && !WordList.of("not a heading").in(core);
    }

    /** Without "12 stops", "4 ranks", "3 1/2 inches wind". */
    private static String withoutCounts(String text) {
        Line line = new Line(text);
        return line.without(line.all(i -> COUNT.at(line, i)), ' ');
    }

    /** The text after a heading; "" if it is a note on the division, as in "GREAT: 61 notes". */
    private static String withoutNote(String inline) {
        List<String> words = Spelling.words(withoutCounts(Compass.without(new Line(inline).outside())));
        boolean named = !words.isEmpty() && DivisionWord.at(words, 0, "").isPresent();
        return !named
                        && words.stream()
                                .allMatch(each -> WordList.of("heading filler").has(each)
                                        || WordList.of("heading place").has(each))
                ? ""
                : inline;
    }

    private static Optional<Boxed> enclosed(String text, DivisionWord word) {
        List<String> words = Spelling.words(text);
        if (WordList.of("partly").in(words)) {
            return Optional.of(Boxed.PARTLY);
        }
        if (WordList.of("unenclosed").in(words)) {
            return Optional.of(Boxed.NOT);
        }
        return WordList.of("enclosed").in(words) || word.box() ? Optional.of(Boxed.WHOLLY) : Optional.empty();
    }

    private static String named(String core, DivisionWord word) {
        String name = Spelling.trimmed(BLANKS.matcher(core).replaceAll(" "), EDGES);
        String known = SHORT.get(Spelling.spelled(name));
        if (known != null) {
            return known;
        }
        if (word.role().isEmpty() && word.number().isPresent() && name.matches("(?i)[ivx]+|\\d")) {
            return "Manual " + name.toUpperCase(Locale.ROOT);
        }
        if (word.number().isPresent() && WordList.of("manual").isAll(Spelling.words(name))) {
            return name + " " + Stop.NUMERALS.get(word.number().getAsInt() - 1);
        }
        name = COMPOUND.matcher(name).replaceFirst("$1");
        if (!word.role().isEmpty()) {
            name = withoutEnd(name, TAIL);
            name = withoutEnd(name, NUMBER_BEHIND);
            Line line = new Line(name);
            name = orWhole(line.text().substring(line.start(NUMBER_BEFORE.at(line, 0))), name);
        }
        return name.length() > 3 && name.equals(name.toUpperCase(Locale.ROOT)) ? capitalised(name) : name;
    }

    /** Without what a form says of the end, if a word of three letters stands before it. */
    private static String withoutEnd(String name, TokenForm form) {
        Line line = new Line(name);
        for (int i = 1; i < line.size(); i++) {
            boolean named =
                    line.is(i - 1, Token.Kind.WORD) && line.at(i - 1).text().length() >= 3;
            if (form.at(line, i) == line.size() - i && (named || form == TAIL)) {
                return orWhole(line.part(0, i), name);
            }
        }
        return name;
    }

    private static String orWhole(String part, String whole) {
        String trimmed = Spelling.trimmed(part, EDGES + "(");
        return trimmed.isEmpty() ? whole : trimmed;
    }

    private static String capitalised(String name) {
        return Stream.of(name.split(" ", -1))
                .map(each -> Token.number(each) > 0 || each.length() < 2
                        ? each
                        : each.substring(0, 1) + each.substring(1).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" "));
    }

    /** The words of a heading, sorted. */
    private record Parts(
            List<DivisionWord> divisions, OptionalInt number, boolean manual, int unknown, boolean beginsWithDivision) {

        /** With the manual's number that stands in parentheses. */
        Parts numbered(Line line) {
            int aside = number.isEmpty() ? NUMBER_ASIDE.in(line) : -1;
            int inside = aside < 0
                    ? 0
                    : Spelling.words(line.part(aside, aside + NUMBER_ASIDE.at(line, aside))).stream()
                            .mapToInt(DivisionWord::ordinal)
                            .max()
                            .orElse(0);
            return inside == 0
                    ? this
                    : new Parts(divisions, OptionalInt.of(inside), manual, unknown, beginsWithDivision);
        }

        static Parts of(List<String> words, String language) {
            List<DivisionWord> divisions = new ArrayList<>();
            int number = 0;
            boolean manual = false;
            boolean begins = false;
            int unknown = 0;
            int at = 0;
            while (at < words.size()) {
                String word = words.get(at);
                Optional<DivisionWord.Spotted> spotted = DivisionWord.at(words, at, language);
                boolean preposition =
                        word.equals("i") && at > 0 && !WordList.of("manual").has(words.get(at - 1));
                boolean place =
                        at + 1 < words.size() && WordList.of("heading place").has(word) && !word.equals("i");
                if (place) {
                    at++;
                    continue;
                }
                if (DivisionWord.ordinal(word) > 0 && number == 0 && !preposition) {
                    number = DivisionWord.ordinal(word);
                } else if (WordList.of("manual").has(word)) {
                    manual = true;
                } else if (spotted.isPresent()
                        && !(word.equals("swell")
                                && !divisions.isEmpty()
                                && !words.get(at - 1).equals("or"))) {
                    begins |= divisions.isEmpty() && unknown == 0;
                    divisions.add(spotted.get().word());
                    at += spotted.get().length() - 1;
                } else if (!WordList.of("heading filler").has(word)
                        && !WordList.of("heading place").has(word)) {
                    unknown++;
                }
                at++;
            }
            OptionalInt numbered = number > 0 ? OptionalInt.of(number) : OptionalInt.empty();
            return new Parts(divisions, numbered, manual, unknown, begins);
        }
    }
}
