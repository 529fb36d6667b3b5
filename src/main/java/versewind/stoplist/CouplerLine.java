package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
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

    /** True if a line stands where couplers are listed. */
    enum Where {
        AMONG_COUPLERS,
        AMONG_ACCESSORIES,
        ELSEWHERE
    }

    private static final Pattern LEADING_QUOTES = Pattern.compile("^[\\s\"']+");
    private static final TokenForm NUMBERED = TokenForm.of("#3|letter [.]|close", "#3|[*\u2022-]");
    private static final TokenForm NUMERAL = TokenForm.of("roman [.]|close?");
    private static final TokenForm PITCH_FIRST = TokenForm.of("#2 ~quote? _word|roman");
    private static final int LONGEST_LABEL = 60;

    /** No coupler has a longer name; whatever is read piece by piece is never longer. */
    private static final int LONGEST_COUPLER = 200;

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
        /** True after what is no coupler: bare divisions behind it go on with nothing. */
        private boolean isBroken;

        private boolean hadTo;

        Reader(Where where, Set<Coupler.Kind> hint, String language) {
            this.where = where;
            this.hint = hint;
            this.language = language;
        }

        void line(String text) {
            int colon = text.indexOf(':');
            CouplerWords label = CouplerWords.of(text.substring(0, Math.max(0, colon)), language);
            boolean isLabel = colon > 1
                    && colon <= LONGEST_LABEL
                    && label.unknown() <= 1
                    && (label.saysCoupler() || where != Where.ELSEWHERE)
                    && !label.joins();
            if (isLabel) {
                hint = label.kinds().isEmpty() ? hint : label.kinds();
                tirasses = label.isToPedal()
                        || (label.saysCoupler()
                                && label.divisions().size() == 1
                                && label.divisions().get(0).word().isPedal());
            }
            boolean isHead = colon > 1
                    && colon <= LONGEST_LABEL
                    && label.divisions().isEmpty()
                    && label.kinds().isEmpty()
                    && !label.joins();
            String said = isLabel || isHead ? text.substring(colon + 1) : text;
            segments(LEADING_QUOTES.matcher(said).replaceFirst("")).forEach(this::segment);
        }

        private List<String> segments(String text) {
            return Segments.split(text, Reader::isBetween).stream()
                    .flatMap(part -> dashed(part).stream())
                    .flatMap(part -> halves(part).stream())
                    .flatMap(part -> pairs(part).stream())
                    .toList();
        }

        /** True if a token parts two couplers: a sign, or a point before a new sentence. */
        private static boolean isBetween(Line line, int token) {
            boolean sentence = line.isSign(token, ".")
                    && !(line.is(token - 1, Token.Kind.NUMBER) && (token == 1 || line.isSign(token - 2, ".,;")))
                    && line.is(token + 1, Token.Kind.WORD)
                    && line.gap(token + 1) > 0
                    && line.at(token + 1).text().length() > 3
                    && Character.isUpperCase(line.at(token + 1).text().charAt(0))
                    && Character.isLowerCase(line.at(token + 1).text().charAt(1))
                    && !line.is(token + 1, "pitch of coupler");
            boolean numbered = line.isSign(token, ".")
                    && line.is(token - 1, Token.Kind.WORD)
                    && line.is(token + 1, Token.Kind.NUMBER)
                    && line.isSign(token + 2, ".");
            boolean roman = line.isSign(token, ".")
                    && line.is(token - 1, Token.Kind.WORD)
                    && line.is(token + 1, Token.Kind.ROMAN)
                    && line.is(token + 2, Token.Kind.WORD);
            return sentence || numbered || roman || line.isSign(token, ",;\u2022\u00b7|");
        }

        /** "II to I - III to I". */
        private static List<String> dashed(String part) {
            boolean joins = part.contains("/")
                    || part.contains("+")
                    || WordList.of("coupled to").in(part);
            boolean worded = WordList.of("coupled to").in(part)
                    && !WordList.of("coupler").in(part);
            return joins
                    ? Segments.split(part, (line, i) -> Segments.isApart(line, i, worded ? "-/" : "-"))
                    : List.of(part);
        }

        /** "II/P and I/P". */
        private List<String> halves(String part) {
            List<String> halves = Segments.split(part, Segments::isAnd);
            boolean all = halves.stream()
                    .allMatch(half -> CouplerWords.of(half, language).joins());
            return all ? halves : List.of(part);
        }

        /** "II/I III/I" without anything between. */
        private static List<String> pairs(String part) {
            Line line = new Line(part);
            List<Integer> signs = IntStream.range(1, line.size() - 1)
                    .filter(i -> line.isSign(i, "/+"))
                    .boxed()
                    .toList();
            List<String> pairs = new ArrayList<>();
            int from = 0;
            for (int sign : signs) {
                int start = line.at(sign - 1).is(Token.Kind.SIGN) ? sign - 2 : sign - 1;
                boolean apart = signs.size() > 1
                        && start > 0
                        && line.gap(start) > 0
                        && !line.is(start - 1, "to pedal")
                        && !line.isSign(start - 1, "/+");
                if (apart) {
                    pairs.add(part.substring(from, line.at(start).start()).strip());
                    from = line.at(start).start();
                }
            }
            pairs.add(part.substring(from));
            return pairs;
        }

        private void segment(String numbered) {
            if (numbered.length() > LONGEST_COUPLER) {
                rest.add(numbered);
                return;
            }
            Line line = new Line(numbered);
            int goesOn = couplers.isEmpty() || !endsInFigure(last().text()) ? 0 : PITCH_FIRST.at(line, 0);
            if (goesOn > 0) {
                int rest = line.start(goesOn - 1);
                segment(numbered.substring(0, rest).strip());
                segment(numbered.substring(rest));
                return;
            }
            String segment = unnumbered(line);
            String bare = outside(segment);
            String inside = inside(segment);
            if (bare.isEmpty()) {
                return;
            }
            if (WordList.of("no coupler").in(segment)) {
                isBroken = true;
                rest.add(numbered);
                return;
            }
            CouplerWords words = CouplerWords.of(bare, language);
            int already = couplers.size();
            if (!couplers.isEmpty() && words.isOnlyPitches() && goesOn(bare)) {
                UnresolvedCoupler last = last();
                kindsInOrder(words.kinds()).forEach(kind -> couplers.add(last.with(kind)));
            } else if ((!couplers.isEmpty() || tirasses) && !isBroken && words.isOnlyDivisions()) {
                further(bare, words);
            } else if (isCoupler(bare, words)) {
                take(bare, words, inside);
            }
            isBroken = couplers.size() == already;
            if (isBroken) {
                rest.add(numbered);
            }
        }

        private UnresolvedCoupler last() {
            return couplers.get(couplers.size() - 1);
        }

        private static boolean endsInFigure(String text) {
            String figure = text.endsWith("'") ? text.substring(0, text.length() - 1) : text;
            return !figure.isEmpty() && Character.isDigit(figure.charAt(figure.length() - 1));
        }

        /** Without "12.", "a)", "12 " or a bullet before it; "III Swell to Great" is numbered too. */
        private static String unnumbered(Line line) {
            boolean to = line.is(0, Token.Kind.ROMAN)
                    && line.is(1, Token.Kind.WORD)
                    && (Spelling.words(line.text()).contains("to")
                            || !DivisionWord.entries(line.at(1).plain()).isEmpty());
            int from = to ? NUMERAL.at(line, 0) : NUMBERED.at(line, 0);
            boolean named = (!to && from == 2)
                    || line.isSign(0, "*\u2022-")
                    || (line.is(from) && line.at(from).isWord());
            return from > 0 && line.gap(from) > 0 && named ? line.text().substring(line.start(from)) : line.text();
        }

        private static String outside(String text) {
            Line line = new Line(text);
            return line.without(line.brackets(), ' ').strip();
        }

        private static String inside(String text) {
            Line line = new Line(text);
            BitSet outside = line.brackets();
            outside.flip(0, line.size());
            return line.without(outside, ' ');
        }

        /** True if pitches alone go on with the coupler before: figures do, and "unison off" on one keyboard. */
        private boolean goesOn(String pitches) {
            List<String> words = Spelling.words(pitches);
            return words.stream().allMatch(word -> word.length() <= 3)
                    || (words.equals(List.of("unison", "off"))
                            && last().source().equals(last().keyboard()));
        }

        /** "Tirasses I, II, III"; "Swell to Great, Choir". */
        private void further(String text, CouplerWords words) {
            for (Named each : words.divisions()) {
                if (tirasses) {
                    add(text, each, Implied.PEDAL, kinds(words, ""));
                } else if (hadTo) {
                    add(text, last().source(), each, kinds(words, ""));
                }
            }
        }

        private boolean isCoupler(String text, CouplerWords words) {
            boolean among = where != Where.ELSEWHERE;
            boolean feet = Pitches.isMarked(text);
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
                                    && WordList.of("own pitch").in(text)));
            boolean alone = words.divisions().isEmpty()
                    && words.unknown() == 0
                    && !words.isOnlyDivisions()
                    && ((among && !words.kinds().isEmpty() && !feet)
                            || WordList.of("alone").isAll(Spelling.words(text)));
            return joined || said || own || alone;
        }

        private void take(String text, CouplerWords words, String inside) {
            List<Coupler.Kind> kinds = kinds(words, inside);
            boolean joins = words.joins() && !(words.isToPedal() && areOnlyManuals(words));
            // "Tirasse II, Octaves graves II": a pitch in words is that of another coupler
            boolean goesOn =
                    tirasses && (words.kinds().isEmpty() || text.chars().anyMatch(Character::isDigit));
            tirasses = !joins && (words.isToPedal() || goesOn);
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
            if (words.isOfManuals() || (words.saysCoupler() && kinds.equals(List.of(Coupler.Kind.UNISON)))) {
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
            } else if (words.isOfManuals() || division.word().number().orElse(1) > 1 || !words.saysCoupler()) {
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

        /** True if the keyboard is named first: the pedal always is one, and with - or + the main division too. */
        private static boolean isTurned(DivisionWord first, DivisionWord second, String text) {
            if (first.isPedal() || second.isPedal()) {
                return first.isPedal();
            }
            boolean slash = text.contains("/") || text.contains(">");
            boolean lower = first.number().orElse(9) < second.number().orElse(0);
            return !slash && (first.role().equals("great") || first.role().equals(DivisionWord.MAIN) || lower);
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
