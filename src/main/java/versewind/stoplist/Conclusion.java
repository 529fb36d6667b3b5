package versewind.stoplist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import versewind.organ.Division;

/** What a whole list comes to: manuals are counted, and couplers find the divisions that they join. */
final class Conclusion {

    /** From the lowest keyboard up, where three or more have English or French names. Common practice, no source. */
    private static final List<String> ENGLISH_ORDER =
            List.of("choir", "positive", "great", "swell", "solo", "bombarde", "resonance", "echo", "other");

    private static final Map<String, List<String>> LIKE = Map.of(
            "great", List.of("great"),
            "swell", List.of("swell", "upper"),
            "upper", List.of("upper", "swell"),
            "positive", List.of("positive", "choir", "breast"),
            "choir", List.of("choir", "positive"),
            "breast", List.of("breast", "positive"),
            "bombarde", List.of("bombarde", "solo"),
            "solo", List.of("solo", "bombarde"),
            "echo", List.of("echo"));

    private static final int LAST_TITLE_LINE = 5;
    private static final int LONGEST_TITLE = 60;

    /** What a title tells besides the name: years, numbers of stops, who built it. */
    private static final Pattern MORE = Pattern.compile("(?:\\.\\s(?=\\d)|\\s-\\s|,\\s(?=[^,]*\\d)|\\s\\().*$");

    private final Gathered gathered;
    private final String language;
    private final List<GatheredDivision> drafts;
    private final List<Unread> unread;
    private final List<OptionalInt> manuals;

    Conclusion(Gathered gathered, String language) {
        this.gathered = gathered;
        this.language = language;
        this.drafts = gathered.divisions();
        this.unread = new ArrayList<>(gathered.unread());
        this.manuals = manuals();
    }

    StopList stopList() {
        List<ReadDivision> divisions = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            GatheredDivision draft = drafts.get(i);
            if (draft.stops().isEmpty()) {
                unread.add(new Unread(
                        draft.line(), draft.name(), "the heading of a division without stops", Unread.Weight.NOTE));
            } else {
                divisions.add(new ReadDivision(
                        draft.name(), manuals.get(i), draft.isEnclosed(), draft.keys(), draft.stops()));
            }
        }
        List<ReadCoupler> couplers = couplers();
        List<ReadTremulant> tremulants = tremulants();
        ReadPistons pistons = pistons();
        unread.sort(Comparator.comparingInt(Unread::line));
        String title = title();
        return new StopList(divisions, couplers, tremulants, pistons, title, unread);
    }

    /** What stands in the first line of all, where that is before the first division and short. */
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
                && title.matches(".*\\p{L}{3,}.*")
                && !Feet.MARKED.matcher(title).find();
        if (!isName) {
            return "";
        }
        String name = MORE.matcher(title).replaceFirst("");
        if (name.equals(title)) {
            unread.removeIf(each -> each.line() == first && each.why().equals(Unread.BEFORE));
        }
        return name;
    }

    /** Lines of pistons that are wholly understood are no notes any more. */
    private ReadPistons pistons() {
        int generals = 0;
        int levels = 0;
        Map<String, Integer> divisionals = new LinkedHashMap<>();
        Set<Integer> lines = new TreeSet<>();
        for (Unread each : List.copyOf(unread)) {
            if (each.weight() != Unread.Weight.NOTE || !PistonLine.isOfPistons(each.text())) {
                continue;
            }
            PistonLine line = PistonLine.read(each.text(), language);
            if (!line.saysAnything()) {
                continue;
            }
            generals = Math.max(generals, line.generals());
            levels = Math.max(levels, line.levels());
            if (line.toEach() > 0) {
                drafts.stream()
                        .filter(draft -> !draft.stops().isEmpty())
                        .forEach(draft -> divisionals.merge(draft.name(), line.toEach(), Math::max));
            }
            line.divisionals().forEach((word, count) -> division(word)
                    .ifPresent(
                            division -> divisionals.merge(drafts.get(division).name(), count, Math::max)));
            lines.add(each.line());
            unread.remove(each);
            line.rest().stream()
                    .filter(rest -> !rest.matches("(?i)(?:.*\\s)?pistons?|.*studs?|.*combinations?|.*kombinationen"))
                    .forEach(rest -> unread.add(new Unread(each.line(), rest, each.why(), each.weight())));
        }
        return lines.isEmpty() ? ReadPistons.NONE : new ReadPistons(generals, divisionals, levels, lines);
    }

    private List<Integer> manualIndices() {
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            if (!drafts.get(i).isPedal() && !drafts.get(i).stops().isEmpty()) {
                indices.add(i);
            }
        }
        return indices;
    }

    private List<OptionalInt> manuals() {
        List<OptionalInt> numbers = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        drafts.forEach(draft -> draft.word().number().ifPresent(taken::add));
        List<Integer> order = new ArrayList<>(manualIndices());
        boolean english = order.size() >= 3 && (language.equals("en") || language.equals("fr"));
        if (english) {
            order.sort(Comparator.comparingInt(i -> {
                int place = ENGLISH_ORDER.indexOf(drafts.get(i).word().role());
                return place < 0 ? ENGLISH_ORDER.size() : place;
            }));
        }
        int[] given = new int[drafts.size()];
        int next = 1;
        for (int i : order) {
            if (drafts.get(i).word().number().isPresent()) {
                given[i] = drafts.get(i).word().number().getAsInt();
                continue;
            }
            while (taken.contains(next)) {
                next++;
            }
            given[i] = Math.min(next, Division.MOST_MANUALS);
            taken.add(given[i]);
        }
        for (int i = 0; i < drafts.size(); i++) {
            numbers.add(
                    drafts.get(i).isPedal()
                            ? OptionalInt.empty()
                            : OptionalInt.of(Math.max(1, Math.min(given[i], Division.MOST_MANUALS))));
        }
        return numbers;
    }

    private List<ReadCoupler> couplers() {
        List<ReadCoupler> couplers = new ArrayList<>();
        Set<List<Object>> seen = new HashSet<>();
        for (Gathered.PlacedCoupler placed : gathered.couplers()) {
            RoughCoupler rough = placed.coupler();
            String source = end(rough.source(), placed.here());
            String keyboard = end(rough.keyboard(), placed.here());
            boolean whole = !source.isEmpty() && !keyboard.isEmpty();
            List<Object> same = whole
                    ? List.of(source, keyboard, rough.kind())
                    : List.of(Spelling.spelled(rough.text()), rough.source(), rough.keyboard(), rough.kind());
            if (seen.add(same)) {
                couplers.add(new ReadCoupler(rough.text().strip(), source, keyboard, rough.kind(), placed.line()));
            } else {
                unread.add(new Unread(
                        placed.line(), rough.text(), "the same coupler stands in the list before", Unread.Weight.NOTE));
            }
        }
        return named(couplers);
    }

    /** Couplers of one text get names of their own. */
    private static List<ReadCoupler> named(List<ReadCoupler> couplers) {
        List<ReadCoupler> named = new ArrayList<>();
        Set<String> taken = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        for (ReadCoupler coupler : couplers) {
            long alike = couplers.stream()
                    .filter(each -> each.name().equalsIgnoreCase(coupler.name()))
                    .count();
            boolean telling =
                    coupler.name().matches(".*\\p{L}{3,}.*") || coupler.name().matches(".*\\S\\s?[/+>-]\\s?\\S.*");
            String name = alike == 1 && telling ? coupler.name() : composed(coupler);
            String distinct = name;
            for (int i = 2; !taken.add(distinct); i++) {
                distinct = name + " (" + i + ")";
            }
            named.add(coupler.named(distinct));
        }
        return named;
    }

    private static String composed(ReadCoupler coupler) {
        String ends = coupler.source().isEmpty() || coupler.keyboard().isEmpty()
                ? coupler.name()
                : coupler.source().equals(coupler.keyboard())
                        ? coupler.source()
                        : coupler.source() + " to " + coupler.keyboard();
        return switch (coupler.kind()) {
            case UNISON -> ends;
            case OCTAVE -> ends + " Octave";
            case SUB_OCTAVE -> ends + " Sub Octave";
            case UNISON_OFF -> ends + " Unison Off";
        };
    }

    private String end(RoughCoupler.End end, int here) {
        if (end instanceof RoughCoupler.Named named) {
            return division(named.word()).map(i -> drafts.get(i).name()).orElse("");
        }
        OptionalInt index =
                switch ((RoughCoupler.Implied) end) {
                    case MAIN -> main();
                    case SECOND -> second();
                    case PEDAL -> pedal();
                    case HERE -> here >= 0 && !drafts.get(here).isPedal() ? OptionalInt.of(here) : main();
                };
        return index.isPresent() ? drafts.get(index.getAsInt()).name() : "";
    }

    private OptionalInt main() {
        List<Integer> indices = manualIndices();
        Optional<Integer> great = indices.stream()
                .filter(i -> drafts.get(i).word().role().equals("great"))
                .findFirst();
        Optional<Integer> lowest = indices.stream().min(Comparator.comparingInt(this::manual));
        return great.or(() -> lowest).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private int manual(int division) {
        return manuals.get(division).orElse(0);
    }

    private OptionalInt second() {
        int main = main().orElse(-1);
        return manualIndices().stream()
                .filter(i -> i != main)
                .sorted(Comparator.comparingInt(this::manual))
                .mapToInt(i -> i)
                .findFirst();
    }

    private OptionalInt pedal() {
        for (int i = 0; i < drafts.size(); i++) {
            if (drafts.get(i).isPedal()) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** The division that a word means: by its own words, by its number, by its kind. */
    private Optional<Integer> division(DivisionWord word) {
        if (word.isPedal()) {
            OptionalInt pedal = pedal();
            return pedal.isPresent() ? Optional.of(pedal.getAsInt()) : Optional.empty();
        }
        if (word.role().equals(DivisionWord.MAIN)) {
            OptionalInt main = main();
            return main.isPresent() ? Optional.of(main.getAsInt()) : Optional.empty();
        }
        List<Integer> indices = manualIndices();
        if (word.number().isPresent()) {
            int number = word.number().getAsInt();
            return indices.stream().filter(i -> manual(i) == number).findFirst();
        }
        Optional<Integer> same = indices.stream()
                .filter(i -> Spelling.spelled(drafts.get(i).name()).equals(Spelling.spelled(word.words()))
                        || Spelling.spelled(drafts.get(i).word().words()).equals(Spelling.spelled(word.words())))
                .findFirst();
        return same.or(() -> initials(word, indices))
                .or(() -> LIKE.getOrDefault(word.role(), List.of(word.role())).stream()
                        .flatMap(role -> indices.stream()
                                .filter(i -> drafts.get(i).word().role().equals(role)))
                        .findFirst());
    }

    /** "OW" for an Oberwerk, "Pos" for a Positiv: the division that begins with the first letter, if it is the only one. */
    private Optional<Integer> initials(DivisionWord word, List<Integer> indices) {
        if (word.words().length() > 3) {
            return Optional.empty();
        }
        List<Integer> fitting = indices.stream()
                .filter(i -> Spelling.spelled(drafts.get(i).name())
                        .startsWith(word.words().substring(0, 1)))
                .toList();
        boolean role =
                indices.stream().anyMatch(i -> drafts.get(i).word().role().equals(word.role()));
        return fitting.size() == 1 && !role ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    private List<ReadTremulant> tremulants() {
        List<ReadTremulant> tremulants = new ArrayList<>();
        Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        for (Gathered.PlacedTremulant placed : gathered.tremulants()) {
            Optional<Integer> named = placed.division().flatMap(this::division);
            int division = named.orElseGet(() -> placed.here() >= 0 ? placed.here() : supposed());
            if (division < 0) {
                unread.add(new Unread(
                        placed.line(),
                        placed.text(),
                        "a tremulant, but the list has no division",
                        Unread.Weight.DOUBT));
                continue;
            }
            String of = drafts.get(division).name();
            String name = placed.text();
            for (int i = 1; !names.add(name); i++) {
                name = placed.text() + " " + of + (i > 1 ? " (" + i + ")" : "");
            }
            tremulants.add(new ReadTremulant(name, of, placed.line()));
        }
        return tremulants;
    }

    /** Where a tremulant is mostly found: in a box, else on the second manual. */
    private int supposed() {
        List<Integer> indices = manualIndices();
        return indices.stream()
                .filter(i -> drafts.get(i).isEnclosed())
                .findFirst()
                .orElseGet(() -> second().orElse(main().orElse(-1)));
    }
}
