package versewind.organ;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** What makes an instrument complete: every name is unique where it must be, and every reference leads somewhere. */
final class Completeness {

    private Completeness() {}

    /** Refuses what does not hold, with a sentence. */
    static void require(boolean holds, String sentence) {
        if (!holds) {
            throw new IllegalArgumentException(sentence);
        }
    }

    /** Refuses an instrument whose parts do not fit together. */
    static void check(Instrument organ) {
        require(!organ.name().isBlank(), "an instrument needs a name");
        require(Math.abs(organ.trimDb()) <= Stop.WIDEST_TRIM_DB, "a trim lies between -20 and 20 dB");
        checkDivisions(organ.divisions());
        checkStops(organ.stops());
        checkBorrowing(organ);
        checkMechanisms(organ);
    }

    private static void checkDivisions(List<Division> divisions) {
        Set<String> names = new HashSet<>();
        for (Division division : divisions) {
            require(names.add(division.name()), "two divisions are called \"" + division.name() + "\"");
        }
        require(divisions.stream().anyMatch(each -> !each.isPedal()), "an instrument has one manual at least");
        require(divisions.stream().filter(Division::isPedal).count() <= 1, "an instrument has one pedal at most");
    }

    private static void checkStops(List<Instrument.Knob> stops) {
        require(stops.size() <= Instrument.MOST_STOPS, "an instrument has 300 stops at most");
        Set<StopName> names = new HashSet<>();
        for (Instrument.Knob knob : stops) {
            require(
                    names.add(knob.name()),
                    knob.name().division() + " has two stops called \""
                            + knob.name().label() + "\"");
        }
    }

    private static void checkBorrowing(Instrument organ) {
        List<Instrument.Knob> stops = organ.stops();
        for (int i = 0; i < stops.size(); i++) {
            Set<Integer> seen = new HashSet<>();
            int at = i;
            while (stops.get(at).stop().borrowed().isPresent()) {
                StopName lender = stops.get(at).stop().borrowed().get();
                require(seen.add(at), stops.get(i).name() + " borrows from itself");
                OptionalInt next = organ.stop(lender);
                require(
                        next.isPresent(),
                        stops.get(at).name() + " borrows from \"" + lender + "\", which does not exist");
                require(
                        stops.get(next.getAsInt()).stop().ranks()
                                == stops.get(at).stop().ranks(),
                        stops.get(at).name() + " and the stop it borrows from have different numbers of ranks");
                at = next.getAsInt();
            }
        }
    }

    private static void checkMechanisms(Instrument organ) {
        Set<String> names = new HashSet<>();
        for (Coupler coupler : organ.couplers()) {
            require(names.add(coupler.name()), "two couplers are called \"" + coupler.name() + "\"");
            requireDivision(organ, coupler.source(), coupler.name());
            requireDivision(organ, coupler.keyboard(), coupler.name());
        }
        names.clear();
        for (Tremulant tremulant : organ.tremulants()) {
            require(names.add(tremulant.name()), "two tremulants are called \"" + tremulant.name() + "\"");
            requireDivision(organ, tremulant.division(), tremulant.name());
        }
        for (String division : organ.pistons().divisionals().keySet()) {
            requireDivision(organ, division, "the divisional pistons");
        }
    }

    private static void requireDivision(Instrument organ, String division, String asker) {
        require(
                organ.division(division).isPresent(),
                asker + " names the division \"" + division + "\", which does not exist");
    }
}
