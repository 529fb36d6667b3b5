package versewind.stoplist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Finds the stops whose pipes others use: "from Great", "ext. Trumpet", "Transmission aus HW", "emprunt du R\u00e9cit".
 *
 * <p>What is said may name a division, a stop, or both. Without a stop's name, a stop of the same name lends; in the
 * same division where none is named. Stops of one family come before others, and those with pipes of their own before
 * borrowed ones. Where nothing fits, the stop is left with pipes of its own.
 */
final class BorrowedRanks {

    private static final TokenForm SAYS = TokenForm.of("<lent_by> ~[.]? <lent_of>? [.]?");
    private static final TokenForm KEY = TokenForm.of("<middle>? [.]? <key_of_stop> ~[#]? octave*");

    private final List<ReadDivision> divisions;

    /**
     * A stop of a list.
     *
     * @param division its division's index
     * @param stop its index in the division
     */
    record At(int division, int stop) {}

    BorrowedRanks(List<ReadDivision> divisions) {
        this.divisions = List.copyOf(divisions);
    }

    /** True if a remark says from which key a stop begins, "from tenor C", or whose basses it has. */
    static boolean isFromKey(String remark) {
        Line line = new Line(remark);
        return IntStream.range(0, line.size()).anyMatch(i -> {
            int says = SAYS.at(line, i);
            return says > 0 && (isPartOfCompass(line, i) || KEY.at(line, i + says) > 0);
        });
    }

    /**
     * The words that say where a stop is borrowed from: "Great", "Swell Rohrflute", ""; empty if it is not borrowed.
     */
    static Optional<String> says(ReadStop stop) {
        for (String remark : stop.remarks()) {
            Line line = new Line(remark);
            for (int i = line.size() - 1; i >= 0; i--) {
                int says = i == 0 || line.gap(i) > 0 || line.is(i - 1, Token.Kind.OPEN) ? SAYS.at(line, i) : 0;
                says = isPartOfCompass(line, i) ? 0 : says;
                String rest = says > 0 ? remark.substring(line.start(i + says)).strip() : "";
                if (says > 0 && KEY.at(line, i + says) == 0) {
                    return Optional.of(rest);
                }
            }
        }
        return Optional.empty();
    }

    /** "Bass from Stopped Diapason", "1-12 from Bourdon": only some of its pipes are those of another. */
    private static boolean isPartOfCompass(Line line, int says) {
        return says > 0
                && (line.is(says - 1, Token.Kind.NUMBER)
                        || WordList.of("part of compass").in(line.part(0, says)));
    }

    /** The stop whose pipes a stop uses; empty where it has its own. */
    Optional<At> of(At borrower) {
        ReadStop stop = at(borrower);
        return says(stop).isPresent() ? lender(borrower, stop, says(stop).get()) : namesake(borrower, stop);
    }

    /** True if the list says that a stop uses the pipes of another, or names another division beside it. */
    boolean isBorrowed(At borrower) {
        return says(at(borrower)).isPresent() || otherDivision(borrower).isPresent();
    }

    /** The division beside the name of a stop of the pedal, "Trombone 16 (Great)", where nothing else stands there. */
    private OptionalInt otherDivision(At borrower) {
        return at(borrower).remarks().stream()
                .map(this::named)
                .filter(lent -> lent.name().isEmpty() && lent.division().isPresent())
                .mapToInt(lent -> lent.division().getAsInt())
                .filter(division -> division != borrower.division())
                .findFirst();
    }

    /** "Violone 16 (Gt)": the stop of this name in another division, or in a pedal one of its family. */
    private Optional<At> namesake(At borrower, ReadStop stop) {
        OptionalInt other = otherDivision(borrower);
        if (other.isEmpty()) {
            return Optional.empty();
        }
        String wanted = Spelling.sounded(stop.name());
        boolean isPedal = divisions.get(borrower.division()).isPedal();
        return candidates(borrower, stop, other.getAsInt()).stream()
                .filter(each -> isCalled(at(each), wanted)
                        ? isPedal || at(each).footage().equals(stop.footage())
                        : isPedal && at(each).family() == stop.family())
                .min(Comparator.comparingInt((At each) -> isCalled(at(each), wanted) ? 0 : 1)
                        .thenComparingInt(each -> at(each).footage().equals(stop.footage()) ? 0 : 1));
    }

    /** True if the list does not name the lender, and no stop of the borrower's name was found: another one lends. */
    boolean isGuessed(At borrower, At lender) {
        ReadStop stop = at(borrower);
        return says(stop).map(said -> named(said).name().isEmpty()).orElse(true)
                && !isCalled(at(lender), Spelling.sounded(stop.name()));
    }

    private ReadStop at(At place) {
        return divisions.get(place.division()).stops().get(place.stop());
    }

    private Optional<At> lender(At borrower, ReadStop stop, String said) {
        Named lent = named(said);
        boolean isSaid = !lent.name().isEmpty();
        String wanted = Spelling.sounded(isSaid ? lent.name() : stop.name());
        int home = lent.division().orElse(isSaid ? -1 : borrower.division());
        // "(ext.)" alone: of the stop of another pitch above it
        boolean isBare = !isSaid && lent.division().isEmpty();
        return candidates(borrower, stop, home).stream()
                .filter(each -> !isSaid || isCalled(at(each), wanted))
                .min(Comparator.comparingInt((At each) -> isCalled(at(each), wanted) ? 0 : 1)
                        .thenComparingInt(each -> each.division() == borrower.division() ? 0 : 1)
                        .thenComparingInt(each -> at(each).family() == stop.family() ? 0 : 1)
                        .thenComparingInt(each -> isBare && at(each).footage().equals(stop.footage()) ? 1 : 0)
                        .thenComparingInt(each -> isBare && each.stop() > borrower.stop() ? 1 : 0)
                        .thenComparingInt(each -> says(at(each)).isPresent() ? 1 : 0)
                        .thenComparingInt(each -> at(each).footage().equals(stop.footage()) ? 0 : 1))
                .filter(each -> isCalled(at(each), wanted) || at(each).family() == stop.family());
    }

    /**
     * What a remark says of the lender.
     *
     * @param division the index of its division, if one is named
     * @param name the words for its name, run together; blank where none is said
     */
    private record Named(OptionalInt division, String name) {}

    private Named named(String said) {
        List<String> words = WordList.of("not in names").without(Spelling.words(new Line(said).letters()));
        OptionalInt named = OptionalInt.empty();
        String name = "";
        for (int from = 0; from < words.size(); from++) {
            Optional<DivisionWord.Spotted> spotted = DivisionWord.at(words, from, "");
            OptionalInt division = spotted.isPresent() ? division(spotted.get().word()) : OptionalInt.empty();
            if (named.isEmpty() && division.isPresent()) {
                named = division;
                from += spotted.get().length() - 1;
            } else {
                name = name + words.get(from);
            }
        }
        return new Named(named, name);
    }

    private static boolean isCalled(ReadStop stop, String sounded) {
        String name = Spelling.sounded(stop.name());
        return name.equals(sounded) || name.startsWith(sounded) || sounded.startsWith(name);
    }

    /** The stops that could lend, of one division or of all; chains that come back are none. */
    private List<At> candidates(At borrower, ReadStop stop, int home) {
        List<At> candidates = new ArrayList<>();
        for (int division = 0; division < divisions.size(); division++) {
            if (home >= 0 && division != home) {
                continue;
            }
            List<ReadStop> stops = divisions.get(division).stops();
            for (int i = 0; i < stops.size(); i++) {
                At at = new At(division, i);
                boolean comesBack = says(stops.get(i)).isPresent()
                        && (division > borrower.division() || (division == borrower.division() && i > borrower.stop()));
                if (!at.equals(borrower) && stops.get(i).ranks() == stop.ranks() && !comesBack) {
                    candidates.add(at);
                }
            }
        }
        return candidates;
    }

    private OptionalInt division(DivisionWord word) {
        return IntStream.range(0, divisions.size())
                .filter(i -> {
                    List<String> name = Spelling.words(divisions.get(i).name());
                    return IntStream.range(0, name.size())
                            .mapToObj(at -> DivisionWord.at(name, at, ""))
                            .flatMap(Optional::stream)
                            .anyMatch(spotted -> spotted.word().role().equals(word.role()));
                })
                .findFirst();
    }
}
