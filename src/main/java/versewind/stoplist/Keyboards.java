package versewind.stoplist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import versewind.organ.Division;

/** The divisions of a whole list: from which manual each is played, and which of them a word means. */
final class Keyboards {

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

    private static final int LONGEST_INITIALS = 3;

    private final List<ParsedDivision> divisions;
    private final List<ParsedDivision> manuals;
    private final Map<ParsedDivision, Integer> numbers;

    Keyboards(List<ParsedDivision> divisions, String language) {
        this.divisions = divisions;
        this.manuals = divisions.stream()
                .filter(each -> !each.isPedal() && !each.stops().isEmpty())
                .toList();
        this.numbers = numbers(language);
    }

    private Map<ParsedDivision, Integer> numbers(String language) {
        Set<Integer> taken = new HashSet<>();
        divisions.forEach(each -> each.word().number().ifPresent(taken::add));
        Map<ParsedDivision, Integer> given = new HashMap<>();
        int next = 1;
        for (ParsedDivision manual : inOrder(language)) {
            if (manual.word().number().isPresent()) {
                int own = manual.word().number().getAsInt();
                given.put(manual, Math.max(1, Math.min(own, Division.MOST_MANUALS)));
                continue;
            }
            while (taken.contains(next)) {
                next++;
            }
            int number = Math.min(next, Division.MOST_MANUALS);
            taken.add(number);
            given.put(manual, number);
        }
        return given;
    }

    private List<ParsedDivision> inOrder(String language) {
        List<ParsedDivision> order = new ArrayList<>(manuals);
        if (order.size() >= 3 && (language.equals("en") || language.equals("fr"))) {
            order.sort(Comparator.comparingInt(each -> {
                int place = ENGLISH_ORDER.indexOf(each.word().role());
                return place < 0 ? ENGLISH_ORDER.size() : place;
            }));
        }
        return order;
    }

    /** The manual of a division that has stops; empty for the pedal. */
    OptionalInt number(ParsedDivision division) {
        return division.isPedal() ? OptionalInt.empty() : OptionalInt.of(numbers.get(division));
    }

    /** The division that an end of a coupler means, which stands under the heading of a division or of none. */
    Optional<ParsedDivision> meant(UnresolvedCoupler.End end, int here) {
        if (end instanceof UnresolvedCoupler.Named named) {
            return meant(named.word());
        }
        return switch ((UnresolvedCoupler.Implied) end) {
            case MAIN -> main();
            case SECOND, OTHERS -> second();
            case PEDAL -> pedal();
            case HERE -> here >= 0 && !divisions.get(here).isPedal() ? Optional.of(divisions.get(here)) : main();
        };
    }

    /** The division that a word means: by its own words, by its number, by its kind. */
    Optional<ParsedDivision> meant(DivisionWord word) {
        if (word.isPedal()) {
            return pedal();
        }
        if (word.role().equals(DivisionWord.MAIN)) {
            return main();
        }
        if (word.number().isPresent()) {
            int number = word.number().getAsInt();
            return manuals.stream().filter(each -> numbers.get(each) == number).findFirst();
        }
        String words = Spelling.spelled(word.words());
        return manuals.stream()
                .filter(each -> Spelling.spelled(each.name()).equals(words)
                        || Spelling.spelled(each.word().words()).equals(words))
                .findFirst()
                .or(() -> initials(word))
                .or(() -> LIKE.getOrDefault(word.role(), List.of(word.role())).stream()
                        .flatMap(role -> manuals.stream()
                                .filter(each -> each.word().role().equals(role)))
                        .findFirst())
                .or(() -> manuals.stream()
                        .filter(each -> word.role().equals("great") && isCalledManual(each))
                        .findFirst());
    }

    /** "Werck": the main division of old organs, which had no other name. */
    private static boolean isCalledManual(ParsedDivision division) {
        return division.word().role().isEmpty()
                && WordList.of("manual").has(Spelling.words(division.name()).get(0));
    }

    /**
     * "OW" for an Oberwerk, "Pos" for a Positiv: the division that begins with the first letter, if it is the only one.
     */
    private Optional<ParsedDivision> initials(DivisionWord word) {
        if (word.words().length() > LONGEST_INITIALS) {
            return Optional.empty();
        }
        List<ParsedDivision> fitting = manuals.stream()
                .filter(each ->
                        Spelling.spelled(each.name()).startsWith(word.words().substring(0, 1)))
                .toList();
        boolean role = manuals.stream().anyMatch(each -> each.word().role().equals(word.role()));
        return fitting.size() == 1 && !role ? Optional.of(fitting.get(0)) : Optional.empty();
    }

    /** Where a tremulant is mostly found: in a box, else on the second manual. */
    Optional<ParsedDivision> ofTremulant() {
        return manuals.stream()
                .filter(ParsedDivision::isEnclosed)
                .findFirst()
                .or(this::second)
                .or(this::main);
    }

    private Optional<ParsedDivision> main() {
        return manuals.stream()
                .filter(each -> each.word().role().equals("great"))
                .findFirst()
                .or(() -> manuals.stream().min(Comparator.comparingInt(numbers::get)));
    }

    private Optional<ParsedDivision> second() {
        return others().stream().findFirst();
    }

    /** The manuals besides the main one, from the lowest up. */
    private List<ParsedDivision> others() {
        Optional<ParsedDivision> main = main();
        return manuals.stream()
                .filter(each -> !Optional.of(each).equals(main))
                .sorted(Comparator.comparingInt(numbers::get))
                .toList();
    }

    /** The couplers, with one for each of the manuals that a text means together. */
    List<ParsedLines.PlacedCoupler> oneByOne(List<ParsedLines.PlacedCoupler> couplers) {
        return couplers.stream().flatMap(this::each).toList();
    }

    private Stream<ParsedLines.PlacedCoupler> each(ParsedLines.PlacedCoupler placed) {
        UnresolvedCoupler rough = placed.coupler();
        return rough.source() != UnresolvedCoupler.Implied.OTHERS
                ? Stream.of(placed)
                : others().stream()
                        .map(manual -> new UnresolvedCoupler.Named(DivisionWord.numbered("", numbers.get(manual))))
                        .map(manual -> new UnresolvedCoupler(rough.text(), manual, rough.keyboard(), rough.kind()))
                        .map(coupler -> new ParsedLines.PlacedCoupler(coupler, placed.here(), placed.line()));
    }

    private Optional<ParsedDivision> pedal() {
        return divisions.stream().filter(ParsedDivision::isPedal).min(Comparator.comparing(each -> each.stops()
                .isEmpty()));
    }
}
