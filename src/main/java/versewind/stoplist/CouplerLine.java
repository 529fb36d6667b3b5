package versewind.stoplist;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
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

    /** No couplers. */
    static final CouplerLine NONE = new CouplerLine(List.of(), List.of());

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
        if (where == Where.ELSEWHERE && !CouplerWords.mayCouple(line, language)) {
            return NONE;
        }
        Reader reader = new Reader(where, hint, language);
        reader.line(line);
        return new CouplerLine(List.copyOf(reader.couplers), List.copyOf(reader.rest));
    }

    /** The pitches that the label of a list of couplers names. */
    static Set<Coupler.Kind> hint(String label, String language) {
        return CouplerWords.of(label, language).kinds();
    }

    /** True if a text says that the couplers are the usual ones, "usual unison couplers". */
    static boolean isUsual(String text) {
        return WordList.of("usual").in(text) && WordList.of("collective").in(text);
    }

    /** The other manuals to the main one, and all of them to the pedal. */
    static List<UnresolvedCoupler> usual(String text) {
        return List.of(
                new UnresolvedCoupler(text, Implied.OTHERS, Implied.MAIN, Coupler.Kind.UNISON),
                new UnresolvedCoupler(text, Implied.MAIN, Implied.PEDAL, Coupler.Kind.UNISON),
                new UnresolvedCoupler(text, Implied.OTHERS, Implied.PEDAL, Coupler.Kind.UNISON));
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
            int first = text.indexOf(' ');
            CouplerWords label = CouplerWords.of(text.substring(0, Math.max(0, colon)), language);
            boolean isShort = colon < 0 && first > 0 && text.length() <= LONGEST_LABEL && text.indexOf(',') > first;
            CouplerWords opening = CouplerWords.of(isShort ? text.substring(0, first) : "", language);
            boolean isOpened = isShort && isOneDivision(opening) && isOwn(text.substring(first));
            if (isOpened || (isOwn(text.substring(colon + 1)) && (colon < 0 || isOneDivision(label)))) {
                CouplerWords of = isOpened ? opening : label;
                End end =
                        of.divisions().isEmpty() ? Implied.HERE : of.divisions().get(0);
                String own = text.substring(isOpened ? first : colon + 1);
                Set<Coupler.Kind> kinds =
                        new HashSet<>(CouplerWords.of(own, language).kinds());
                kinds.remove(Coupler.Kind.UNISON);
                add(text, end, end, kindsInOrder(kinds));
                return;
            }
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
            String plain = LEADING_QUOTES.matcher(said).replaceFirst("");
            // "Tirasses : Pos. - G.O. - R\u00e9c."
            boolean isList = tirasses && !plain.contains("/") && areOnlyManuals(CouplerWords.of(plain, language));
            String parted = isList ? plain.replace(" - ", ", ") : plain;
            Segments.split(parted, (line, i) -> line.isSign(i, ";")).stream()
                    .map(each -> colon < 0 || parted.contains(";") ? CouplerSegments.joined(each, language) : each)
                    .flatMap(each -> CouplerSegments.of(each, language).stream())
                    .forEach(this::segment);
        }

        /** "16, UO, 4": couplers of one division to itself, where the unison off stands among them. */
        private boolean isOwn(String text) {
            CouplerWords pitches = CouplerWords.of(text.length() > LONGEST_LABEL ? "" : text, language);
            return pitches.isOnlyPitches()
                    && pitches.kinds().size() > 1
                    && pitches.kinds().contains(Coupler.Kind.UNISON_OFF);
        }

        private static boolean isOneDivision(CouplerWords label) {
            return label.divisions().size() == 1
                    && label.unknown() == 0
                    && label.kinds().isEmpty();
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
            if (words.saysCoupler() && words.divisions().isEmpty() && isUsual(bare)) {
                usual(bare).forEach(couplers::add);
                isBroken = true;
                rest.add(numbered);
                return;
            }
            String compass = Compass.without(bare);
            if (compass.isBlank()
                    || (CouplerWords.of(compass, language).isOnlyDivisions() && !words.isOnlyDivisions())) {
                // "CC-G", "pedal C-d'"
                isBroken = true;
                rest.add(numbered);
                return;
            }
            int already = couplers.size();
            if (!couplers.isEmpty() && words.isOnlyPitches() && goesOn(bare)) {
                UnresolvedCoupler last = last();
                kindsInOrder(words.kinds()).forEach(kind -> couplers.add(last.with(kind)));
            } else if ((!couplers.isEmpty() || tirasses)
                    && !isBroken
                    && words.isOnlyDivisions()
                    && (hadTo || tirasses || !isPair(bare, words))) {
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
            boolean all = words.divisions().isEmpty() && words.unknown() > 0 && isCollective(text);
            boolean said = words.saysCoupler()
                    && !all
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
            return joined || isPair(text, words) || said || own || alone;
        }

        /** "Man. en Rugp.": two divisions joined by "and", where couplers are listed. */
        private boolean isPair(String text, CouplerWords words) {
            return where == Where.AMONG_COUPLERS
                    && words.divisions().size() == 2
                    && words.unknown() == 0
                    && WordList.of("and").in(text);
        }

        /** "Usual unison couplers": several, and which they are is not said. */
        private static boolean isCollective(String text) {
            return WordList.of("collective").in(text);
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
            } else if (words.joins()
                    || (words.divisions().size() == 2 && words.kinds().isEmpty())) {
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
            } else if (words.isOnto()
                    && words.saysCoupler()
                    && division.word().number().orElse(1) == 1) {
                add(text, Implied.SECOND, division, kinds);
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
