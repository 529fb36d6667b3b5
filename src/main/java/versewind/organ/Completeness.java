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

    private static void require(boolean holds, Part part, int index, String sentence) {
        if (!holds) {
            throw new IncompleteInstrument(part, index, sentence);
        }
    }

    /** Refuses an instrument whose parts do not fit together. */
    static void check(Instrument organ) {
        require(!organ.name().isBlank(), Part.INSTRUMENT, 0, "an instrument needs a name");
        require(
                Math.abs(organ.trimDb()) <= Stop.WIDEST_TRIM_DB,
                Part.INSTRUMENT,
                0,
                "a trim lies between -20 and 20 dB");
        checkDivisions(organ.divisions());
        checkStops(organ.stops());
        checkBorrowing(organ);
        checkMechanisms(organ);
    }

    private static void checkDivisions(List<Division> divisions) {
        Set<String> names = new HashSet<>();
        boolean anyManual = false;
        boolean anyPedal = false;
        for (int i = 0; i < divisions.size(); i++) {
            Division division = divisions.get(i);
            require(
                    names.add(division.name()),
                    Part.DIVISION,
                    i,
                    "two divisions are called \"" + division.name() + "\"");
            require(!division.isPedal() || !anyPedal, Part.DIVISION, i, "an instrument has one pedal at most");
            anyPedal |= division.isPedal();
            anyManual |= !division.isPedal();
        }
        require(anyManual, Part.INSTRUMENT, 0, "an instrument has one manual at least");
    }

    private static void checkStops(List<Instrument.Knob> stops) {
        Set<StopName> names = new HashSet<>();
        for (int i = 0; i < stops.size(); i++) {
            StopName name = stops.get(i).name();
            require(i < Instrument.MOST_STOPS, Part.STOP, i, "an instrument has 300 stops at most");
            require(names.add(name), Part.STOP, i, name.division() + " has two stops called \"" + name.label() + "\"");
        }
    }

    private static void checkBorrowing(Instrument organ) {
        List<Instrument.Knob> stops = organ.stops();
        for (int i = 0; i < stops.size(); i++) {
            Set<Integer> seen = new HashSet<>();
            int at = i;
            while (stops.get(at).stop().borrowed().isPresent()) {
                StopName lender = stops.get(at).stop().borrowed().get();
                require(seen.add(at), Part.STOP, i, stops.get(i).name() + " borrows from itself");
                OptionalInt next = organ.stop(lender);
                require(
                        next.isPresent(),
                        Part.STOP,
                        at,
                        stops.get(at).name() + " borrows from \"" + lender + "\", which does not exist");
                require(
                        stops.get(next.getAsInt()).stop().ranks()
                                == stops.get(at).stop().ranks(),
                        Part.STOP,
                        at,
                        stops.get(at).name() + " and the stop it borrows from have different numbers of ranks");
                at = next.getAsInt();
            }
        }
    }

    private static void checkMechanisms(Instrument organ) {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < organ.couplers().size(); i++) {
            Coupler coupler = organ.couplers().get(i);
            require(names.add(coupler.name()), Part.COUPLER, i, "two couplers are called \"" + coupler.name() + "\"");
            requireDivision(organ, coupler.source(), Part.COUPLER, i, coupler.name());
            requireDivision(organ, coupler.keyboard(), Part.COUPLER, i, coupler.name());
        }
        names.clear();
        for (int i = 0; i < organ.tremulants().size(); i++) {
            Tremulant tremulant = organ.tremulants().get(i);
            require(
                    names.add(tremulant.name()),
                    Part.TREMULANT,
                    i,
                    "two tremulants are called \"" + tremulant.name() + "\"");
            requireDivision(organ, tremulant.division(), Part.TREMULANT, i, tremulant.name());
        }
        for (String division : organ.pistons().divisionals().keySet()) {
            requireDivision(organ, division, Part.PISTONS, 0, "the divisional pistons");
        }
    }

    private static void requireDivision(Instrument organ, String division, Part part, int index, String asker) {
        require(
                organ.division(division).isPresent(),
                part,
                index,
                asker + " names the division \"" + division + "\", which does not exist");
    }
}
