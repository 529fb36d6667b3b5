package versewind.stoplist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Coupler;

/** Builds the result of a whole list: gives couplers and tremulants their divisions, finds pistons and the title. */
final class StopListBuilder {

    private static final String WITHOUT_STOPS = "the heading of a division without stops";
    private static final String PARTLY_ENCLOSED =
            "only some of its stops stand in the swell box: all are taken to; please check";

    private static final String OTHER_WAY =
            "the two divisions of a coupler above, the other way round: taken for another";

    private static final int LAST_TITLE_LINE = 5;
    private static final int LONGEST_TITLE = 60;
    private static final int MOST_TWICE = 3;
    private static final int LONGEST_SHORTENED = 4;

    /** Additions to the name in a title: years, numbers of stops, the builder. */
    private static final TokenForm MORE = TokenForm.of("[.] _number", "_[-] _word|number|roman|open", "_open");

    private static final TokenForm OF_NUMBERS = TokenForm.of("roman|number [-] roman|number [.]?");

    private final ParsedLines gathered;
    private final String language;
    private final List<ParsedDivision> divisions;
    private final List<Unread> unread;
    private final Keyboards keyboards;

    StopListBuilder(ParsedLines gathered, String language) {
        this.gathered = gathered;
        this.language = language;
        this.divisions = gathered.divisions();
        this.unread = new ArrayList<>(gathered.unread());
        this.keyboards = new Keyboards(divisions, language);
    }

    StopList stopList() {
        octaveCouplers();
        OptionalInt manualKeys = Compass.ofAll(gathered.unread(), false, language);
        OptionalInt pedalKeys = Compass.ofAll(gathered.unread(), true, language);
        boolean allBoxed = gathered.unread().stream()
                .anyMatch(each -> each.why().equals(Unread.BEFORE)
                        && WordList.of("all enclosed").in(each.text()));
        List<ReadDivision> read = new ArrayList<>();
        for (ParsedDivision division : divisions) {
            if (division.stops().isEmpty()) {
                unread.add(new Unread(
                        division.line(),
                        division.name(),
                        WITHOUT_STOPS,
                        PistonLine.isOfPistons(division.name()) ? Unread.Weight.NOTE : Unread.Weight.DOUBT));
            } else {
                if (division.isUnclearWhichAreEnclosed()) {
                    unread.add(new Unread(division.line(), division.name(), PARTLY_ENCLOSED, Unread.Weight.DOUBT));
                }
                read.add(new ReadDivision(
                        division.name(),
                        keyboards.number(division),
                        allBoxed || division.isEnclosed(),
                        division.keys().isPresent() ? division.keys() : division.isPedal() ? pedalKeys : manualKeys,
                        division.stops()));
            }
        }
        permanent();
        gathered.unheaded().ifPresent(unread::add);
        gathered.ofCouplers().filter(heading -> gathered.couplers().isEmpty()).ifPresent(this::unnamed);
        List<ReadCoupler> couplers = couplers();
        List<ReadTremulant> tremulants = tremulants();
        ReadPistons pistons = pistons();
        unread.replaceAll(Unread::weighed);
        read.forEach(division -> twice(division).ifPresent(unread::add));
        unread.sort(Comparator.comparingInt(Unread::line));
        String title = title();
        return new StopList(read, couplers, tremulants, pistons, title, unread);
    }

    /**
     * "Octave" without a pitch beside the tremulant, "Sub Octave" or "Unison Off" of its division is a coupler: no
     * stop stands there.
     */
    private void octaveCouplers() {
        for (int i = 0; i < divisions.size(); i++) {
            int here = i;
            List<ReadStop> stops = divisions.get(i).stops();
            List<ReadStop> couplers = stops.stream()
                    .filter(stop -> stop.supposed()
                            && WordList.of("bare octave").isAll(Spelling.words(stop.name()))
                            && isBesideCoupler(here, stop.line()))
                    .toList();
            stops.removeAll(couplers);
            couplers.forEach(stop -> gathered.add(new ParsedLines.PlacedCoupler(
                    new UnresolvedCoupler(
                            stop.name(),
                            UnresolvedCoupler.Implied.HERE,
                            UnresolvedCoupler.Implied.HERE,
                            Coupler.Kind.OCTAVE),
                    here,
                    stop.line())));
        }
    }

    private boolean isBesideCoupler(int division, int line) {
        return gathered.tremulants().stream().anyMatch(each -> each.here() == division && each.line() == line - 1)
                || gathered.couplers().stream()
                        .anyMatch(each -> each.here() == division && Math.abs(each.line() - line) <= 1);
    }

    /** "Usual couplers": a doubt about which they are. */
    private void unnamed(Unread heading) {
        boolean isUsual = CouplerLine.isUsual(heading.text());
        if (isUsual) {
            CouplerLine.usual(heading.text())
                    .forEach(each -> gathered.add(new ParsedLines.PlacedCoupler(each, -1, heading.line())));
        }
        unread.add(isUsual ? new Unread(heading.line(), heading.text(), PlayingAids.USUAL, heading.weight()) : heading);
    }

    /** "Pedal permanently coupled to the Great": a coupler, or a note where the pedal has no stops of its own. */
    private void permanent() {
        boolean pedal = divisions.stream()
                .anyMatch(each -> each.isPedal() && !each.stops().isEmpty());
        for (Unread each : List.copyOf(unread)) {
            List<String> words = Spelling.words(each.text());
            boolean ofPedal = words.size() <= 2
                    || IntStream.range(0, words.size()).anyMatch(i -> DivisionWord.at(words, i, language)
                            .filter(found -> found.word().isPedal())
                            .isPresent());
            if (!ofPedal || !WordList.of("permanent").in(words)) {
                continue;
            }
            unread.remove(each);
            if (pedal) {
                UnresolvedCoupler coupler = new UnresolvedCoupler(
                        each.text(),
                        UnresolvedCoupler.Implied.MAIN,
                        UnresolvedCoupler.Implied.PEDAL,
                        Coupler.Kind.UNISON);
                gathered.add(new ParsedLines.PlacedCoupler(coupler, -1, each.line()));
            } else {
                unread.removeIf(other -> other.why().equals(WITHOUT_STOPS)
                        && DivisionWord.in(Spelling.words(other.text()), language)
                                .filter(found -> found.word().isPedal())
                                .isPresent());
                String why = "the pedal has no stops of its own and plays the manual";
                unread.add(new Unread(each.line(), each.text(), why, Unread.Weight.NOTE));
            }
        }
    }

    /** A doubt about a division in which so many stops stand twice that it may be two. */
    private static Optional<Unread> twice(ReadDivision division) {
        Set<String> seen = new HashSet<>();
        List<ReadStop> again = division.stops().stream()
                .filter(stop -> !seen.add(Spelling.spelled(stop.name()) + " " + stop.feet()))
                .toList();
        return again.size() < MOST_TWICE
                ? Optional.empty()
                : Optional.of(new Unread(
                        again.get(0).line(),
                        division.name(),
                        again.size() + " of its stops are listed twice: it may be two divisions",
                        Unread.Weight.DOUBT));
    }

    /** The first line of all, if it is short and above the first division. */
    private String title() {
        int first = unread.stream()
                .filter(each -> each.why().equals(Unread.BEFORE))
                .mapToInt(Unread::line)
                .min()
                .orElse(0);
        String title = unread.stream()
                .filter(each -> each.line() == first && each.why().equals(Unread.BEFORE))
                .map(each -> each.text().strip())
                .collect(Collectors.joining(", "));
        boolean isName = first <= LAST_TITLE_LINE
                && title.length() <= LONGEST_TITLE
                && Spelling.hasWord(title)
                && !Pitches.isMarked(title);
        if (!isName) {
            return "";
        }
        Line line = new Line(title);
        int more = IntStream.range(1, line.size())
                .filter(i -> MORE.at(line, i) > 0 || (line.isSign(i, ",") && hasNumber(line, i + 1)))
                .findFirst()
                .orElse(line.size());
        if (more == line.size()) {
            unread.removeIf(each -> each.line() == first && each.why().equals(Unread.BEFORE));
        }
        return title.substring(0, line.at(more - 1).end());
    }

    /** True if a number stands before the next comma. */
    private static boolean hasNumber(Line line, int from) {
        return line.tokens().subList(from, line.size()).stream()
                .takeWhile(each -> !each.isSign(","))
                .anyMatch(each -> each.is(Token.Kind.NUMBER));
    }

    /** Lines of pistons that are wholly understood are no notes any more. */
    private ReadPistons pistons() {
        int generals = 0;
        int levels = 0;
        Map<String, Integer> divisionals = new LinkedHashMap<>();
        Map<String, Integer> toEach = new LinkedHashMap<>();
        Set<Integer> lines = new TreeSet<>();
        for (Unread each : List.copyOf(unread)) {
            boolean goesOn = lines.contains(each.line());
            boolean isOfPistons = each.weight() == Unread.Weight.NOTE && PistonLine.isOfPistons(each.text());
            if (!goesOn && !isOfPistons) {
                continue;
            }
            PistonLine line = PistonLine.read(each.text(), language);
            if (!line.saysAnything()) {
                continue;
            }
            generals = Math.max(generals, line.generals());
            levels = Math.max(levels, line.levels());
            boolean ofManuals = WordList.of("each manual").in(each.text());
            divisions.stream()
                    .filter(division ->
                            line.toEach() > 0 && !division.stops().isEmpty() && !(ofManuals && division.isPedal()))
                    .forEach(division -> toEach.merge(division.name(), line.toEach(), Math::max));
            line.divisionals().forEach((word, count) -> keyboards
                    .meant(word)
                    .ifPresent(division -> divisionals.merge(division.name(), count, Math::max)));
            lines.add(each.line());
            unread.remove(each);
            line.rest().stream()
                    .filter(rest -> !WordList.of("said by pistons").has(lastWord(rest)))
                    .forEach(rest -> unread.add(new Unread(each.line(), rest, each.why(), each.weight())));
        }
        Map<String, Integer> ordered = new LinkedHashMap<>();
        divisions.stream()
                .map(ParsedDivision::name)
                .filter(name -> divisionals.containsKey(name) || toEach.containsKey(name))
                .forEach(name -> ordered.put(name, divisionals.getOrDefault(name, toEach.get(name))));
        return lines.isEmpty() ? ReadPistons.NONE : new ReadPistons(generals, ordered, levels, lines);
    }

    private static String lastWord(String text) {
        List<String> words = Spelling.words(text);
        return words.isEmpty() ? "" : words.get(words.size() - 1);
    }

    private List<ReadCoupler> couplers() {
        List<ReadCoupler> couplers = new ArrayList<>();
        Set<List<Object>> seen = new HashSet<>();
        Map<List<Object>, List<String>> asWritten = new HashMap<>();
        for (ParsedLines.PlacedCoupler placed : keyboards.oneByOne(gathered.couplers())) {
            UnresolvedCoupler rough = placed.coupler();
            boolean turned = isOntoOther(rough, placed.here());
            String source = end(turned ? rough.keyboard() : rough.source(), placed.here());
            String keyboard = end(turned ? rough.source() : rough.keyboard(), placed.here());
            boolean whole = !source.isEmpty() && !keyboard.isEmpty();
            List<Object> same = whole
                    ? List.of(source, keyboard, rough.kind())
                    : List.of(Spelling.spelled(rough.text()), rough.source(), rough.keyboard(), rough.kind());
            List<String> written = whole ? asWritten(rough, placed.here()) : List.of();
            if (seen.add(same)) {
                asWritten.put(same, written);
                couplers.add(new ReadCoupler(named(rough), source, keyboard, rough.kind(), placed.line()));
            } else if (isOtherWay(written, asWritten.getOrDefault(same, List.of()))
                    && seen.add(List.of(keyboard, source, rough.kind()))) {
                couplers.add(new ReadCoupler(named(rough), keyboard, source, rough.kind(), placed.line()));
                unread.add(new Unread(placed.line(), rough.text(), OTHER_WAY, Unread.Weight.DOUBT));
            } else {
                unread.add(new Unread(
                        placed.line(), rough.text(), "the same coupler is listed above", Unread.Weight.NOTE));
            }
        }
        return named(couplers);
    }

    /** The sign of a coupler and the manuals it joins, as written; without the pedal, which is a keyboard only. */
    private List<String> asWritten(UnresolvedCoupler rough, int here) {
        Stream<String> manuals = CouplerWords.of(rough.text(), language).divisions().stream()
                .flatMap(each -> keyboards.meant(each, here).stream())
                .filter(each -> !each.isPedal())
                .map(ParsedDivision::name);
        String sign = rough.text()
                .codePoints()
                .filter(letter -> !Character.isLetterOrDigit(letter) && !Character.isWhitespace(letter))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return Stream.concat(Stream.of(sign), manuals).toList();
    }

    /** "Sub I-II" below "Sub II-I"; another sign may only be another way to write the same. */
    private static boolean isOtherWay(List<String> written, List<String> above) {
        return written.size() == 3
                && above.size() == 3
                && !written.equals(above)
                && written.equals(List.of(above.get(0), above.get(2), above.get(1)));
    }

    /** "I-II", where the great is the second manual and would be coupled to the first: it is meant as the keyboard. */
    private boolean isOntoOther(UnresolvedCoupler rough, int here) {
        return OF_NUMBERS.is(new Line(rough.text().strip()))
                && keyboards
                        .meant(rough.source(), here)
                        .filter(StopListBuilder::isGreat)
                        .isPresent()
                && keyboards
                        .meant(rough.keyboard(), here)
                        .filter(each -> !each.isPedal() && !isGreat(each))
                        .isPresent();
    }

    private static boolean isGreat(ParsedDivision division) {
        return division.word().role().equals("great");
    }

    /** Its text without the sign at its end; the point of a short word belongs to that. */
    private static String named(UnresolvedCoupler rough) {
        String text = Spelling.trimmed(rough.text(), ",;");
        Line line = new Line(text);
        int last = line.size() - 1;
        boolean isEnd = line.isSign(last, ".")
                && line.is(last - 1, Token.Kind.WORD)
                && line.at(last - 1).text().length() > LONGEST_SHORTENED;
        return isEnd ? text.substring(0, line.at(last).start()) : text;
    }

    /** Couplers of one text get names of their own. */
    private static List<ReadCoupler> named(List<ReadCoupler> couplers) {
        List<ReadCoupler> named = new ArrayList<>();
        DistinctNames names = new DistinctNames();
        Map<String, Long> counts = couplers.stream()
                .collect(Collectors.groupingBy(each -> each.name().toLowerCase(Locale.ROOT), Collectors.counting()));
        for (ReadCoupler coupler : couplers) {
            long alike = counts.get(coupler.name().toLowerCase(Locale.ROOT));
            boolean telling = Spelling.hasWord(coupler.name()) || joins(coupler.name());
            String name = alike == 1 && telling ? coupler.name() : composed(coupler);
            named.add(coupler.named(names.add(name)));
        }
        return named;
    }

    private static boolean joins(String name) {
        return IntStream.range(1, name.length() - 1).anyMatch(i -> "/+>-".indexOf(name.charAt(i)) >= 0);
    }

    private static String composed(ReadCoupler coupler) {
        boolean known = !coupler.source().isEmpty() && !coupler.keyboard().isEmpty();
        return coupler.kind().of(known ? Coupler.joined(coupler.source(), coupler.keyboard()) : coupler.name());
    }

    private String end(UnresolvedCoupler.End end, int here) {
        return keyboards.meant(end, here).map(ParsedDivision::name).orElse("");
    }

    private List<ReadTremulant> tremulants() {
        List<ReadTremulant> tremulants = new ArrayList<>();
        DistinctNames names = new DistinctNames();
        for (ParsedLines.PlacedTremulant placed : gathered.tremulants()) {
            Optional<ParsedDivision> division = placed.division()
                    .flatMap(keyboards::meant)
                    .or(() -> above(placed))
                    .or(keyboards::ofTremulant);
            if (division.isEmpty()) {
                unread.add(new Unread(
                        placed.line(),
                        placed.text(),
                        "a tremulant, but the list has no division",
                        Unread.Weight.DOUBT));
                continue;
            }
            String of = division.get().name();
            String name = names.add(names.isTaken(placed.text()) ? placed.text() + " " + of : placed.text());
            tremulants.add(new ReadTremulant(name, of, placed.line()));
        }
        return tremulants;
    }

    private Optional<ParsedDivision> above(ParsedLines.PlacedTremulant placed) {
        return placed.here() >= 0 ? Optional.of(divisions.get(placed.here())) : Optional.empty();
    }
}
