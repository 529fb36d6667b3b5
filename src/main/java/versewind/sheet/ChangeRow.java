package versewind.sheet;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import versewind.organ.BoxPosition;
import versewind.organ.Registration;
import versewind.rules.StopChangesByDivision;

/**
 * Stop changes of one kind.
 *
 * @param kind what is done
 * @param places to which knobs
 */
public record ChangeRow(Kind kind, List<Placed> places) {

    /** A kind of change, in the order in which they are made. */
    public enum Kind {
        PUT_IN("\u2212 ", Registration.PUT_IN),
        DRAW("+ ", "draw"),
        DRAW_WAITING("+ ", "draw"),
        BOX("", "box");

        private final String sign;
        private final String word;

        Kind(String sign, String word) {
            this.sign = sign;
            this.word = word;
        }

        /** The word after its sign: "+ draw". */
        String marked() {
            return sign + word;
        }

        public String word() {
            return word;
        }
    }

    public ChangeRow {
        places = List.copyOf(places);
    }

    /** A row for every kind of change that there is. */
    static List<ChangeRow> of(List<StopChangesByDivision> changes) {
        return of(changes, List.of());
    }

    /**
     * A row for every kind of change that there is.
     *
     * @param changes what is heard, and what is put in
     * @param waiting what is drawn for what follows and not heard here
     */
    static List<ChangeRow> of(List<StopChangesByDivision> changes, List<StopChangesByDivision> waiting) {
        return Stream.of(
                        row(Kind.PUT_IN, changes, StopChangesByDivision::putIn),
                        row(Kind.DRAW, changes, StopChangesByDivision::drawn),
                        row(Kind.DRAW_WAITING, waiting, StopChangesByDivision::drawn),
                        row(Kind.BOX, changes, each -> each.box().map(BoxPosition::word).stream()
                                .toList()))
                .filter(row -> !row.places().isEmpty())
                .toList();
    }

    private static ChangeRow row(
            Kind kind, List<StopChangesByDivision> changes, Function<StopChangesByDivision, List<String>> names) {
        return new ChangeRow(
                kind,
                changes.stream()
                        .filter(each -> !names.apply(each).isEmpty())
                        .map(each -> new Placed(
                                each.where().equals(StopChangesByDivision.COUPLERS) ? "" : each.where(),
                                names.apply(each)))
                        .toList());
    }

    /** "Great: Mixture III; Swell: Cornopean 8"; with what is said of those that wait. */
    String words() {
        String words = places.stream()
                .map(place -> (place.where().isEmpty() ? "" : place.where() + ": ") + SheetPages.labels(place.names()))
                .collect(Collectors.joining("; "));
        return kind == Kind.DRAW_WAITING ? words + " (" + Wording.WAITS + ")" : words;
    }

    /** Number of knobs; a box is none. */
    int knobs() {
        return kind == Kind.BOX
                ? 0
                : places.stream().mapToInt(place -> place.names().size()).sum();
    }

    /**
     * Knobs in one place of the console, or the position of its box.
     *
     * @param where the division's name; blank for couplers, which say themselves where they are
     * @param names what stands on the knobs
     */
    record Placed(String where, List<String> names) {

        public Placed {
            names = List.copyOf(names);
        }
    }
}
