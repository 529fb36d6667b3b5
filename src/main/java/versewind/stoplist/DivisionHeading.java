package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.stoplist.Token.Kind;

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

    private static final Map<String, String> SHORT = Map.of(
            "gt", "Great", "grt", "Great", "sw", "Swell", "swl", "Swell", "ch", "Choir", "ped", "Pedal", "pd", "Pedal");
    private static final String EDGES = ".,;:*\u2022=~#-";
    private static final int MOST_UNKNOWN = 2;
    private static final int LONGEST = 90;

    /** Reads a heading, if a line is one. */
    static Optional<DivisionHeading> read(String line, String language) {
        String text = Spelling.trimmed(line, EDGES);
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
        return new DivisionHeading(
                named.name,
                named.word.numbered(word.number()),
                named.enclosed.or(() -> enclosed),
                keys.isPresent() ? keys : named.keys,
                named.inline);
    }

    private static Optional<DivisionHeading> head(String text, String inline, String language) {
        String outside = new Line(text).outside();
        String core = withoutCounts(Compass.without(outside.isBlank() ? text.replaceAll("[()\\[\\]]", " ") : outside));
        List<String> words = Spelling.words(core);
        if (core.contains("/") || Pitches.isMarked(core) || (words.size() == 1 && isTooShort(words.get(0)))) {
            return Optional.empty();
        }
        Parts parts = Parts.of(words, language).numbered(new Line(text));
        boolean named = parts.divisions().size() == 1;
        boolean twice = parts.divisions().size() == 2
                && (parts.divisions()
                                .get(0)
                                .role()
                                .equals(parts.divisions().get(1).role())
                        || (parts.unknown() == 0 && !joins(core)));
        boolean numbered = parts.number().isPresent() && (parts.manual() || words.size() == 1 || named);
        boolean only = parts.unknown() == 0 && (named || twice || numbered || (parts.manual() && words.size() == 1));
        boolean loud =
                parts.unknown() <= MOST_UNKNOWN && named && parts.beginsWithDivision() && isLoud(core, text, inline);
        if (!only && !loud) {
            return Optional.empty();
        }
        DivisionWord first = named || twice ? parts.divisions().get(0) : DivisionWord.numbered("", 0);
        DivisionWord word = first.numbered(parts.number());
        String note = withoutNote(inline).isEmpty() ? text + " " + inline : text + " ";
        return Optional.of(new DivisionHeading(
                named(core, word), word, enclosed(note, word), Compass.keys(note, word.isPedal()), withoutNote(inline)));
    }

    private static boolean isTooShort(String word) {
        return WordClass.TOO_SHORT.has(word) || (word.length() == 1 && Character.isDigit(word.charAt(0)));
    }

    private static boolean joins(String core) {
        return (core.contains("-") && !core.contains(" - ")) || core.contains("+");
    }

    private static boolean isLoud(String core, String text, String inline) {
        boolean isSet = core.equals(core.toUpperCase(Locale.ROOT)) || !inline.isEmpty() || text.endsWith(":");
        return (isSet || WordClass.LOUD.in(core)) && !WordClass.NOT_A_HEADING.in(core);
    }

    /** Without "12 stops", "4 ranks", "3 1/2 inches wind". */
    private static String withoutCounts(String text) {
        Line line = new Line(text);
        BitSet cut = new BitSet();
        for (int i = 0; i < line.size(); i++) {
            if (!line.is(i, Kind.NUMBER)) {
                continue;
            }
            boolean speaking = line.is(i + 1, Kind.WORD) && line.at(i + 1).plain().equals("speaking");
            int end = i + (speaking ? 2 : 1);
            if (line.is(end, WordClass.COUNTED)) {
                cut.set(i, end + 1);
            } else if ((line.is(end, Kind.QUOTE) && line.at(end).text().equals("\"")) || line.is(end, WordClass.INCH)) {
                do {
                    end++;
                } while (line.is(end, WordClass.WIND) || line.isSign(end, "."));
                cut.set(i, end);
            }
        }
        return line.without(cut, ' ');
    }

    /** What follows a heading, unless that is a note on the division, as in "GREAT: 61 notes". */
    private static String withoutNote(String inline) {
        List<String> words = Spelling.words(withoutCounts(Compass.without(new Line(inline).outside())));
        boolean named = !words.isEmpty() && DivisionWord.at(words, 0, "").isPresent();
        return !named && words.stream().allMatch(WordClass.HEADING_FILLER::has) ? "" : inline;
    }

    private static Optional<Boolean> enclosed(String text, DivisionWord word) {
        List<String> words = Spelling.words(text);
        if (WordClass.UNENCLOSED.in(words)) {
            return Optional.of(false);
        }
        return WordClass.ENCLOSED.in(words) || word.box() ? Optional.of(true) : Optional.empty();
    }

    private static String named(String core, DivisionWord word) {
        String name = Spelling.trimmed(core.replaceAll("\\s+", " "), EDGES);
        String known = SHORT.get(Spelling.spelled(name));
        if (known != null) {
            return known;
        }
        if (word.role().isEmpty() && word.number().isPresent() && name.matches("(?i)[ivx]+|\\d")) {
            return "Manual " + name.toUpperCase(Locale.ROOT);
        }
        if (!word.role().isEmpty()) {
            name = without(name, DivisionHeading::tail);
            name = without(name, DivisionHeading::numberBehind);
            name = without(name, DivisionHeading::numberBefore);
        }
        return name.length() > 3 && name.equals(name.toUpperCase(Locale.ROOT)) ? capitalised(name) : name;
    }

    /** Finds tokens of a line that do not belong to a division's name. */
    private interface Aside {
        BitSet of(Line line);
    }

    private static String without(String name, Aside aside) {
        Line line = new Line(name);
        String shorter = Spelling.trimmed(line.without(aside.of(line), ' '), EDGES);
        return shorter.isBlank() ? name : shorter;
    }

    private static BitSet range(int from, int to) {
        BitSet range = new BitSet();
        range.set(from, Math.max(from, to));
        return range;
    }

    /** "organ" or "enclosed" at the end. */
    private static BitSet tail(Line line) {
        for (int i = Math.max(1, line.size() - 2); i < line.size(); i++) {
            boolean apart = line.gap(i) > 0 || line.isSign(i - 1, ",-");
            if (apart && line.phrase(WordClass.HEADING_TAIL, i) == line.size() - i) {
                return range(i, line.size());
            }
        }
        return new BitSet();
    }

    private static boolean isNumber(Line line, int token) {
        return token >= 0
                && token < line.size()
                && (line.at(token).isWhole(1) || line.at(token).text().matches("(?i)[ivx]{1,4}"));
    }

    /** ", Manual II", "- II. Manual", ", II" at the end. */
    private static BitSet numberBehind(Line line) {
        int from = line.size() - (isNumber(line, line.size() - 1) ? 1 : 0);
        boolean number = from < line.size();
        boolean manual = line.is(from - 1, WordClass.MANUAL);
        if (manual) {
            from--;
            from -= line.isSign(from - 1, ".") && isNumber(line, from - 2) ? 2 : isNumber(line, from - 1) ? 1 : 0;
        }
        boolean named = line.is(from - 2, Kind.WORD) && line.at(from - 2).text().length() >= 3;
        return named && ((manual && line.isSign(from - 1, ",-")) || (number && line.isSign(from - 1, ",")))
                ? range(from - 1, line.size())
                : new BitSet();
    }

    /** "II. Manual: ", "Manual II, ", "2nd " at the beginning. */
    private static BitSet numberBefore(Line line) {
        int at = line.is(0, WordClass.MANUAL) ? line.isSign(1, ".") ? 2 : 1 : 0;
        if (!isNumber(line, at)) {
            return new BitSet();
        }
        at++;
        at += line.isSign(at, "\u00b0") || (line.is(at, WordClass.ORDINAL_END) && line.gap(at) == 0) ? 1 : 0;
        at += line.isSign(at, ".") ? 1 : 0;
        if (line.is(at, WordClass.MANUAL)) {
            at++;
        }
        while (line.isSign(at, ".:,/-") || line.is(at, Kind.CLOSE)) {
            at++;
        }
        return range(0, at);
    }

    private static String capitalised(String name) {
        return Stream.of(name.split(" ", -1))
                .map(each -> Numerals.number(each) > 0 || each.length() < 2
                        ? each
                        : each.substring(0, 1) + each.substring(1).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" "));
    }

    /** What the words of a heading are. */
    private record Parts(
            List<DivisionWord> divisions, OptionalInt number, boolean manual, int unknown, boolean beginsWithDivision) {

        /** With the manual's number that stands in parentheses. */
        Parts numbered(Line line) {
            for (int i = 0; number.isEmpty() && i < line.size(); i++) {
                int at = i + 1 + (line.is(i + 1, WordClass.MANUAL) ? line.isSign(i + 2, ".") ? 2 : 1 : 0);
                if (!line.is(i, Kind.OPEN) || !isNumber(line, at)) {
                    continue;
                }
                int end = at + 1 + (line.isSign(at + 1, ".") ? 1 : 0);
                end += line.is(end, WordClass.MANUAL) ? line.isSign(end + 1, ".") ? 2 : 1 : 0;
                int inside = WordClass.ordinal(Spelling.spelled(line.at(at).text()));
                if (inside > 0 && (line.isSign(end, ",") || line.is(end, Kind.CLOSE))) {
                    return new Parts(divisions, OptionalInt.of(inside), manual, unknown, beginsWithDivision);
                }
            }
            return this;
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
                boolean preposition = word.equals("i") && at > 0 && !WordClass.MANUAL.has(words.get(at - 1));
                if (WordClass.ordinal(word) > 0 && number == 0 && !preposition) {
                    number = WordClass.ordinal(word);
                } else if (WordClass.MANUAL.has(word)) {
                    manual = true;
                } else if (spotted.isPresent() && !(word.equals("swell") && !divisions.isEmpty())) {
                    begins |= divisions.isEmpty() && unknown == 0;
                    divisions.add(spotted.get().word());
                    at += spotted.get().length() - 1;
                } else if (!WordClass.HEADING_FILLER.has(word)) {
                    unknown++;
                }
                at++;
            }
            OptionalInt numbered = number > 0 ? OptionalInt.of(number) : OptionalInt.empty();
            return new Parts(divisions, numbered, manual, unknown, begins);
        }
    }
}
