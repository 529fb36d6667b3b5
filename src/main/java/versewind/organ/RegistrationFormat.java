package versewind.organ;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is drawn, in the words in which it can be typed again. */
public final class RegistrationFormat {
    private static final int FEWEST_FOR_ALL = 4;

    private RegistrationFormat() {}

    /**
     * As the command line takes it, tremulants and boxes that are not open after it: "Great: Principal 4; couplers: ...;
     * Tremulant drawn; Swell closed".
     * A division of which most is drawn is told by what is not: "Swell: all but Celeste 8".
     */
    public static String typed(Instrument instrument, Registration drawn) {
        List<String> parts = new ArrayList<>();
        List<Division> divisions = instrument.divisions();
        for (int division = 0; division < divisions.size(); division++) {
            String stops = stops(instrument, division, drawn.stops());
            if (!stops.isEmpty()) {
                parts.add(divisions.get(division).name() + ": " + stops);
            }
        }
        String couplers = drawn.couplers().stream()
                .mapToObj(coupler -> instrument.couplers().get(coupler).name())
                .collect(Collectors.joining(", "));
        if (!couplers.isEmpty()) {
            parts.add("couplers: " + couplers);
        }
        drawn.tremulants()
                .forEach(tremulant ->
                        parts.add(instrument.tremulants().get(tremulant).name() + " drawn"));
        for (int division = 0; division < divisions.size(); division++) {
            BoxPosition position = drawn.boxes().get(division);
            if (divisions.get(division).isEnclosed() && position != BoxPosition.OPEN) {
                parts.add(divisions.get(division).name() + " " + position.word());
            }
        }
        return String.join("; ", parts);
    }

    private static String stops(Instrument instrument, int division, IndexSet drawn) {
        List<String> put = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (int stop = 0; stop < instrument.stops().size(); stop++) {
            if (instrument.stops().get(stop).division() == division) {
                String label = instrument.stops().get(stop).stop().label();
                (drawn.contains(stop) ? put : left).add(label);
            }
        }
        if (put.size() < FEWEST_FOR_ALL || left.size() > put.size() / 2) {
            return String.join(", ", put);
        }
        return left.isEmpty() ? "all" : "all but " + String.join(", ", left);
    }
}
