package versewind.organ;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import versewind.organ.IncompleteInstrument.Part;

/**
 * Checks that an instrument is complete: every name is unique where it must be, and every reference leads somewhere.
 */
final class Completeness {

    private Completeness() {}

    /** Refuses what does not hold, with a sentence. */
    static void require(boolean holds, String sentence) {
        if (!holds) {
            throw new IllegalArgumentException(sentence);
        }
    }

    private static void require(boolean holds, Part part, int index, String problem, String remedy) {
        if (!holds) {
            throw new IncompleteInstrument(part, index, problem, remedy);
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

    private static void requireNew(Set<String> names, String name, Part part, int index, String things) {
        require(
                names.add(name),
                part,
                index,
                "two " + things + " are called \"" + name + "\"",
                "Give one of them another name.");
    }

    private static void checkDivisions(List<Division> divisions) {
        Set<String> names = new HashSet<>();
        boolean anyManual = false;
        boolean anyPedal = false;
        for (int i = 0; i < divisions.size(); i++) {
            Division division = divisions.get(i);
            requireNew(names, division.name(), Part.DIVISION, i, "divisions");
            require(
                    !division.isPedal() || !anyPedal,
                    Part.DIVISION,
                    i,
                    "an instrument has one pedal at most",
                    "Put all its stops into one pedal division.");
            anyPedal |= division.isPedal();
            anyManual |= !division.isPedal();
        }
        require(anyManual, Part.INSTRUMENT, 0, "an instrument has one manual at least", "Add a manual division.");
    }

    private static void checkStops(List<Instrument.Knob> stops) {
        Set<StopName> names = new HashSet<>();
        for (int i = 0; i < stops.size(); i++) {
            StopName name = stops.get(i).name();
            require(
                    i < Instrument.MOST_STOPS,
                    Part.STOP,
                    i,
                    "an instrument has " + Instrument.MOST_STOPS + " stops at most",
                    "Leave out those that nobody plays.");
            require(
                    names.add(name),
                    Part.STOP,
                    i,
                    name.division() + " has two stops called \"" + name.label() + "\"",
                    "Give one of them another name.");
        }
    }

    private static void checkBorrowing(Instrument organ) {
        List<Instrument.Knob> stops = organ.stops();
        for (int i = 0; i < stops.size(); i++) {
            Set<Integer> seen = new HashSet<>();
            int at = i;
            while (stops.get(at).stop().borrowed().isPresent()) {
                require(
                        seen.add(at),
                        Part.STOP,
                        i,
                        stops.get(i).name() + " borrows from itself",
                        "Let one stop of the circle have pipes.");
                at = lender(organ, at);
            }
        }
    }

    private static int lender(Instrument organ, int at) {
        Instrument.Knob borrower = organ.stops().get(at);
        StopName name = borrower.stop().borrowed().orElseThrow();
        OptionalInt lender = organ.stop(name);
        if (lender.isEmpty()) {
            throw new IncompleteInstrument(
                    Part.STOP,
                    at,
                    borrower.name() + " borrows from \"" + name + "\", which does not exist",
                    Nearest.sentence(
                            name.toString(),
                            organ.stops().stream()
                                    .map(stop -> stop.name().toString())
                                    .toList(),
                            "The stops are"));
        }
        require(
                organ.stops().get(lender.getAsInt()).stop().ranks()
                        == borrower.stop().ranks(),
                Part.STOP,
                at,
                borrower.name() + " and the stop it borrows from have different numbers of ranks",
                "Give both the same number of ranks.");
        return lender.getAsInt();
    }

    private static void checkMechanisms(Instrument organ) {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < organ.couplers().size(); i++) {
            Coupler coupler = organ.couplers().get(i);
            requireNew(names, coupler.name(), Part.COUPLER, i, "couplers");
            requireDivision(organ, coupler.source(), Part.COUPLER, i, coupler.name());
            requireDivision(organ, coupler.keyboard(), Part.COUPLER, i, coupler.name());
        }
        names.clear();
        for (int i = 0; i < organ.tremulants().size(); i++) {
            Tremulant tremulant = organ.tremulants().get(i);
            requireNew(names, tremulant.name(), Part.TREMULANT, i, "tremulants");
            requireDivision(organ, tremulant.division(), Part.TREMULANT, i, tremulant.name());
        }
        for (String division : organ.pistons().divisionals().keySet()) {
            requireDivision(organ, division, Part.PISTONS, 0, "the divisional pistons");
        }
    }

    private static void requireDivision(Instrument organ, String division, Part part, int index, String asker) {
        if (organ.division(division).isEmpty()) {
            throw new IncompleteInstrument(
                    part,
                    index,
                    asker + " names the division \"" + division + "\", which does not exist",
                    Nearest.sentence(division, organ.divisionNames(), "The divisions are"));
        }
    }
}
