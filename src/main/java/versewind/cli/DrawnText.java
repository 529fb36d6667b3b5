package versewind.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.Coupler;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Tremulant;
import versewind.plan.HandsAndFeet;

/** What is drawn, and how it is played, in words. */
final class DrawnText {

    private DrawnText() {}

    /**
     * What is drawn in one place of the organ.
     *
     * @param where the division, or what kind of thing it is
     * @param what the names, parted by commas
     */
    record Row(String where, String what) {}

    /** The stops by divisions, then couplers, tremulants and the boxes; nothing of what has nothing. */
    static List<Row> rows(Instrument instrument, Registration drawn) {
        List<Row> rows = new ArrayList<>();
        List<Division> divisions = instrument.divisions();
        for (int division = 0; division < divisions.size(); division++) {
            int here = division;
            add(
                    rows,
                    divisions.get(division).name(),
                    drawn.stops().stream()
                            .filter(stop -> instrument.stops().get(stop).division() == here)
                            .mapToObj(
                                    stop -> instrument.stops().get(stop).stop().label()));
        }
        add(
                rows,
                "couplers",
                drawn.couplers().stream().mapToObj(instrument.couplers()::get).map(Coupler::name));
        add(
                rows,
                "tremulants",
                drawn.tremulants().stream()
                        .mapToObj(instrument.tremulants()::get)
                        .map(Tremulant::name));
        add(
                rows,
                "boxes",
                IntStream.range(0, divisions.size())
                        .filter(division -> divisions.get(division).isEnclosed())
                        .mapToObj(division -> divisions.get(division).name() + " "
                                + drawn.boxes().get(division).word()));
        return rows;
    }

    private static void add(List<Row> rows, String where, Stream<String> names) {
        String what = names.collect(Collectors.joining(", "));
        if (!what.isEmpty()) {
            rows.add(new Row(where, what));
        }
    }

    /** "four parts, on Great". */
    static String hands(Instrument instrument, HandsAndFeet hands) {
        String right = instrument.divisions().get(hands.right()).name();
        String left = instrument.divisions().get(hands.left()).name();
        return hands.layout().word() + (right.equals(left) ? ", on " + right : ", right " + right + ", left " + left);
    }
}
