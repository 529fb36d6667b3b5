package versewind.stoplist;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import versewind.organ.Coupler;
import versewind.stoplist.UnresolvedCoupler.End;
import versewind.stoplist.UnresolvedCoupler.Implied;
import versewind.stoplist.UnresolvedCoupler.Named;

/**
 * The couplers of a line: "Swell to Great 16, 8, 4", "II/I, I/P", "Tirasses G.O., Pos., R\u00e9c.".
 *
 * @param couplers what was read, each coupler once
 * @param rest what was not understood
 */
record CouplerLine(List<UnresolvedCoupler> couplers, List<String> rest) {

    /** Whether a line stands where couplers are listed. */
    enum Where {
        AMONG_COUPLERS,
        AMONG_ACCESSORIES,
        ELSEWHERE
    }

    private static final Pattern SEPARATORS =
            Pattern.compile("[,;\u2022\u00b7|\\t]|\\s{2,}|\\.\\s+(?=\\p{Lu}\\p{Ll}{3,})(?!Super|Sub|Unis)");
    private static final Pattern DASHES = Pattern.compile("\\s-\\s");
    private static final Pattern AND = Pattern.compile("(?i)\\s(?:und|and|et|en|e|y|och|og|&|u\\.)\\s");
    private static final Pattern PAIRS =
            Pattern.compile("(?<=[\\p{L}\\d.)])(?<!irasse)(?<!irasses)\\s+(?=[\\p{L}\\d.]+\\s?[/+]\\s?[\\p{L}\\d])");
    private static final Pattern PAIR_SIGN = Pattern.compile("[/+]");
    private static final Pattern LABEL = Pattern.compile("([^:]{2,60}):\\s*");
    private static final Pattern NOT_COUPLERS = Pattern.compile(
            "(?i)reversib|reversab|\\bpistons?\\b|\\bstuds?\\b|combination|\\brev\\b\\.?|\\btoe\\b|cancel(?:s|ler)?\\b|\\btransfer\\b|generalkoppel|\\bcomposition\\b|kombination|\\bthumb\\b");
    private static final Pattern PARENTHESES = Pattern.compile("[(\\[]([^)\\]]*)[)\\]]");
    private static final Pattern ORDINAL = Pattern.compile(
            "^\\s*(?:\\d{1,3}[.)]|[a-z][.)]|[*\u2022-])\\s+|^\\s*\\d{1,3}\\s+(?=\\p{L})|^\\s*[IVX]+[.)]?\\s+(?=\\p{L}{2,}.*\\bto\\b)");
    private static final Pattern PITCH_BEFORE = Pattern.compile("^(\\d{1,2}'?)\\s+(?=\\p{L}{2,}.*)");

    /** Reads the couplers of a line; none where it is no line of couplers. */
    static CouplerLine read(String line, Where where, Set<Coupler.Kind> hint, String language) {
        Reader reader = new Reader(where, hint, language);
        reader.line(line);
        return new CouplerLine(List.copyOf(reader.couplers), List.copyOf(reader.rest));
    }

    /** The pitches that the label of a list of couplers names. */
    static Set<Coupler.Kind> hint(String label, String language) {
        return CouplerWords.of(label, language).kinds();
    }

    private static final class Reader {
        private final Where where;
        private final String language;
        private final List<UnresolvedCoupler> couplers = new ArrayList<>();
        private final List<String> rest = new ArrayList<>();
        private Set<Coupler.Kind> hint;
        private boolean tirasses;
        private boolean hadTo;

        Reader(Where where, Set<Coupler.Kind> hint, String language) {
            this.where = where;
            this.hint = hint;
            this.language = language;
        }

        void line(String line) {
            String text = line;
            var label = LABEL.matcher(text);
            if (label.lookingAt()) {
                CouplerWords words = CouplerWords.of(label.group(1), language);
                if (words.unknown() <= 1 && (words.saysCoupler() || where != Where.ELSEWHERE) && !words.joins()) {
                    hint = words.kinds().isEmpty() ? hint : words.kinds();
                    tirasses = words.tirasse()
                            || (words.saysCoupler()
                                    && words.divisions().size() == 1
                                    && words.divisions().get(0).word().isPedal());
                    text = text.substring(label.end());
                }
            }
            segments(text).forEach(this::segment);
        }

        private static List<String> segments(String text) {
            List<String> segments = new ArrayList<>();
            for (String part : SEPARATORS.split(outside(text), -1)) {
                Stream<String> pieces = Stream.of(part);
                if (DASHES.matcher(part).results().count() >= 1
                        && (PAIR_SIGN.matcher(part).find() || part.matches("(?i).*\\bto\\b.*"))) {
                    pieces = DASHES.splitAsStream(part);
                }
                pieces.flatMap(each -> PAIR_SIGN.matcher(each).results().count() > 1
                                ? PAIRS.splitAsStream(each)
                                : Stream.of(each))
                        .filter(each -> !each.isBlank())
                        .forEach(
                                each -> segments.add(each.replace('\u0001', ',').strip()));
            }
            return segments;
        }

        /** Commas in parentheses part nothing. */
        private static String outside(String text) {
            return PARENTHESES.matcher(text).replaceAll(match -> match.group()
                    .replace(',', '\u0001')
                    .replace("\\", "\\\\")
                    .replace("$", "\\$"));
        }

        private void segment(String segment) {
            var before = PITCH_BEFORE.matcher(segment);
            boolean goesOn = before.find()
                    && !couplers.isEmpty()
                    && couplers.get(couplers.size() - 1).text().matches(".*\\d'?");
            if (goesOn) {
                segment(before.group(1));
                segment(segment.substring(before.end()));
                return;
            }
            String numbered = ORDINAL.matcher(segment).replaceFirst("");
            String bare = PARENTHESES.matcher(numbered).replaceAll(" ").strip();
            String inside = PARENTHESES
                    .matcher(numbered)
                    .results()
                    .map(match -> match.group(1))
                    .reduce("", (a, b) -> a + " " + b);
            if (bare.isEmpty()) {
                return;
            }
            if (NOT_COUPLERS.matcher(segment).find()) {
                rest.add(segment);
                return;
            }
            String[] halves = AND.split(bare, -1);
            if (halves.length > 1
                    && Stream.of(halves)
                            .allMatch(half -> CouplerWords.of(half, language).joins())) {
                Stream.of(halves).forEach(this::segment);
                return;
            }
            CouplerWords words = CouplerWords.of(bare, language);
            int already = couplers.size();
            if (!couplers.isEmpty() && words.isOnlyPitches() && goesOn(bare)) {
                UnresolvedCoupler last = couplers.get(couplers.size() - 1);
                kindsInOrder(words.kinds()).forEach(kind -> couplers.add(last.with(kind)));
            } else if ((!couplers.isEmpty() || tirasses) && words.isOnlyDivisions()) {
                further(bare, words);
            } else if (isCoupler(bare, words)) {
                take(bare, words, inside);
            }
            if (couplers.size() == already) {
                rest.add(segment);
            }
        }

        /** Whether pitches alone go on with the coupler before: figures do, and "unison off" on one keyboard. */
        private boolean goesOn(String pitches) {
            UnresolvedCoupler last = couplers.get(couplers.size() - 1);
            return !pitches.matches("(?i).*[a-z]{4,}.*")
                    || (pitches.matches("(?i)unison off") && last.source().equals(last.keyboard()));
        }

        /** "Tirasses I, II, III"; "Swell to Great, Choir". */
        private void further(String text, CouplerWords words) {
            for (Named each : words.divisions()) {
                if (tirasses) {
                    add(text, each, Implied.PEDAL, kinds(words, ""));
                } else if (hadTo) {
                    add(text, couplers.get(couplers.size() - 1).source(), each, kinds(words, ""));
                }
            }
        }

        private boolean isCoupler(String text, CouplerWords words) {
            boolean among = where != Where.ELSEWHERE;
            boolean feet = Feet.MARKED.matcher(text).find();
            boolean joined = words.joins() && words.unknown() <= (among ? 1 : 0);
            boolean said = words.saysCoupler()
                    && words.unknown() <= (among ? 2 : 1)
                    && (among || !feet || words.divisions().size() > 0);
            boolean own = words.divisions().size() == 1
                    && !words.kinds().isEmpty()
                    && words.unknown() == 0
                    && (among
                            || (!feet
                                    && !words.kinds().equals(Set.of(Coupler.Kind.UNISON))
                                    && text.matches("(?i).*[a-z]{3,}.*(?:oct|okt|off|sub|super|grave|aigu).*")));
            boolean alone = words.divisions().isEmpty()
                    && words.unknown() == 0
                    && !words.isOnlyDivisions()
                    && ((among && !words.kinds().isEmpty() && !feet)
                            || Spelling.plain(text)
                                    .matches("(?:sub[- ]?octaves?(?: to .*)?|unison off|octaves?"
                                            + " (?:graves?|aigu\\w*)|subo[ck]ta\\w*koppel|supero[ck]ta\\w*koppel|sub-?oktave|sub"
                                            + " and super octaves?)"));
            return joined || said || own || alone;
        }

        private void take(String text, CouplerWords words, String inside) {
            List<Coupler.Kind> kinds = kinds(words, inside);
            boolean joins = words.joins() && !(words.tirasse() && areOnlyManuals(words));
            tirasses = !joins && (words.tirasse() || tirasses);
            hadTo = words.before() < words.divisions().size();
            if (tirasses) {
                List<Named> sources = words.divisions().stream()
                        .filter(each -> !each.word().isPedal())
                        .toList();
                if (sources.isEmpty()) {
                    add(text, Implied.MAIN, Implied.PEDAL, kinds);
                }
                sources.forEach(each -> add(text, each, Implied.PEDAL, kinds));
            } else if (words.joins()) {
                pairs(text, words, kinds);
            } else if (words.divisions().isEmpty()) {
                none(text, words, kinds);
            } else {
                one(text, words.divisions().get(0), words, kinds);
            }
        }

        /** "Tirasses GO/Pos/R\u00e9c": the signs part what is coupled to the pedal one by one. */
        private static boolean areOnlyManuals(CouplerWords words) {
            return words.before() == words.divisions().size()
                    && words.divisions().stream().noneMatch(each -> each.word().isPedal());
        }

        private void none(String text, CouplerWords words, List<Coupler.Kind> kinds) {
            if (words.manuals() || (words.saysCoupler() && kinds.equals(List.of(Coupler.Kind.UNISON)))) {
                add(text, Implied.SECOND, Implied.MAIN, kinds);
            } else {
                add(text, Implied.HERE, Implied.HERE, kinds);
            }
        }

        private void one(String text, Named division, CouplerWords words, List<Coupler.Kind> kinds) {
            if ((!kinds.equals(List.of(Coupler.Kind.UNISON)) && !words.kinds().isEmpty())
                    || (!hint.isEmpty() && !kinds.contains(Coupler.Kind.UNISON))) {
                add(text, division, division, kinds);
            } else if (division.word().isPedal()) {
                add(text, Implied.MAIN, Implied.PEDAL, kinds);
            } else if (words.manuals() || division.word().number().orElse(1) > 1 || !words.saysCoupler()) {
                add(text, division, Implied.MAIN, kinds);
            } else {
                add(text, division, Implied.PEDAL, kinds);
            }
        }

        private void pairs(String text, CouplerWords words, List<Coupler.Kind> kinds) {
            List<Named> divisions = words.divisions();
            if (hadTo) {
                for (Named source : divisions.subList(0, words.before())) {
                    for (Named keyboard : divisions.subList(words.before(), divisions.size())) {
                        boolean turned = source.word().isPedal() && !language.equals("en");
                        add(text, turned ? keyboard : source, turned ? source : keyboard, kinds);
                    }
                }
                return;
            }
            for (int i = 0; i + 1 < divisions.size(); i++) {
                boolean turned =
                        isTurned(divisions.get(i).word(), divisions.get(i + 1).word(), text);
                add(text, divisions.get(turned ? i + 1 : i), divisions.get(turned ? i : i + 1), kinds);
            }
        }

        /** Whether the keyboard is named first: the pedal always is one, and with - or + the main division too. */
        private static boolean isTurned(DivisionWord first, DivisionWord second, String text) {
            if (first.isPedal() || second.isPedal()) {
                return first.isPedal();
            }
            boolean slash = text.contains("/") || text.contains(">");
            boolean lower = first.number().orElse(9) < second.number().orElse(0);
            return !slash && (first.role().equals("great") || lower);
        }

        private List<Coupler.Kind> kinds(CouplerWords words, String inside) {
            Set<Coupler.Kind> said = words.kinds().isEmpty() ? hint : words.kinds();
            List<Coupler.Kind> kinds = new ArrayList<>(said.isEmpty() ? List.of(Coupler.Kind.UNISON) : said);
            CouplerWords also = CouplerWords.of(inside, language);
            if (also.unknown() == 0) {
                also.kinds().stream().filter(kind -> !kinds.contains(kind)).forEach(kinds::add);
            }
            return kindsInOrder(kinds);
        }

        private static List<Coupler.Kind> kindsInOrder(Collection<Coupler.Kind> kinds) {
            return kinds.stream().sorted(Comparator.naturalOrder()).toList();
        }

        private void add(String text, End source, End keyboard, List<Coupler.Kind> kinds) {
            kinds.forEach(kind -> couplers.add(new UnresolvedCoupler(text, source, keyboard, kind)));
        }
    }
}
