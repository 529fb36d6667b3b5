package versewind.organ;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import versewind.organ.IncompleteInstrument.Part;

/** Checks that the parts of an instrument fit together: every name is unique where it must be, and leads somewhere. */
public final class Completeness {

    private final Parts parts;
    private final Set<String> divisions = new HashSet<>();
    private final Map<StopName, Optional<Stop>> stops = new HashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private Completeness(Parts parts) {
        this.parts = parts;
        for (Named<String, Division> division : parts.divisions()) {
            divisions.add(division.name());
        }
        for (Named<StopName, Stop> stop : parts.stops()) {
            stops.putIfAbsent(stop.name(), stop.part());
        }
    }

    /**
     * A part of an instrument.
     *
     * @param name its name
     * @param part what it is; empty as long as that is not known
     */
    public record Named<N, T>(N name, Optional<T> part) {}

    /**
     * The parts of an instrument as far as they are known, in the order of its file.
     *
     * @param divisionals names of the divisions that have divisional pistons
     */
    public record Parts(
            List<Named<String, Division>> divisions,
            List<Named<StopName, Stop>> stops,
            List<Named<String, Coupler>> couplers,
            List<Named<String, Tremulant>> tremulants,
            Set<String> divisionals) {

        static Parts of(Instrument organ) {
            return new Parts(
                    named(organ.divisions(), Division::name, each -> each),
                    named(organ.stops(), Instrument.Knob::name, Instrument.Knob::stop),
                    named(organ.couplers(), Coupler::name, each -> each),
                    named(organ.tremulants(), Tremulant::name, each -> each),
                    organ.pistons().divisionals().keySet());
        }

        private static <E, N, T> List<Named<N, T>> named(List<E> list, Function<E, N> name, Function<E, T> part) {
            List<Named<N, T>> named = new ArrayList<>();
            for (E each : list) {
                named.add(new Named<>(name.apply(each), Optional.of(part.apply(each))));
            }
            return List.copyOf(named);
        }
    }

    /**
     * A part that does not fit to the others.
     *
     * @param part what is at fault
     * @param index its index in the instrument, of a stop in {@link Instrument#stops()}; 0 for the instrument itself
     * @param problem what is wrong, without a capital and a full stop
     * @param remedy what to do, a sentence
     */
    public record Fault(Part part, int index, String problem, String remedy) {

        /** What is wrong and what to do, in sentences. */
        public String sentence() {
            return problem.substring(0, 1).toUpperCase(Locale.ROOT) + problem.substring(1) + ". " + remedy;
        }
    }

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
        List<Fault> faults = faults(Parts.of(organ));
        if (!faults.isEmpty()) {
            throw new IncompleteInstrument(faults.get(0));
        }
    }

    /** Everything that does not fit together. */
    public static List<Fault> faults(Parts parts) {
        Completeness completeness = new Completeness(parts);
        completeness.checkDivisions();
        completeness.checkStops();
        completeness.checkMechanisms();
        return List.copyOf(completeness.faults);
    }

    private void require(boolean holds, Part part, int index, String problem, String remedy) {
        if (!holds) {
            faults.add(new Fault(part, index, problem, remedy));
        }
    }

    private <T> void requireOwnNames(List<Named<String, T>> named, Part part) {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < named.size(); i++) {
            String name = named.get(i).name();
            require(
                    name.isBlank() || names.add(name),
                    part,
                    i,
                    "two " + part.name().toLowerCase(Locale.ROOT) + "s are called \"" + name + "\"",
                    "Give one of them another name.");
        }
    }

    private void checkDivisions() {
        requireOwnNames(parts.divisions(), Part.DIVISION);
        boolean anyManual = false;
        boolean anyPedal = false;
        for (int i = 0; i < parts.divisions().size(); i++) {
            boolean isPedal =
                    parts.divisions().get(i).part().filter(Division::isPedal).isPresent();
            require(
                    !isPedal || !anyPedal,
                    Part.DIVISION,
                    i,
                    "an instrument has one pedal at most",
                    "Put all its stops into one pedal division.");
            anyPedal |= isPedal;
            anyManual |= !isPedal;
        }
        require(anyManual, Part.INSTRUMENT, 0, "an instrument has one manual at least", "Add a manual division.");
    }

    private void checkStops() {
        Set<StopName> names = new HashSet<>();
        for (int i = 0; i < parts.stops().size(); i++) {
            StopName name = parts.stops().get(i).name();
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
        for (int i = 0; i < parts.stops().size(); i++) {
            StopName name = parts.stops().get(i).name();
            Optional<Stop> stop = parts.stops().get(i).part();
            Optional<StopName> lender = stop.flatMap(Stop::borrowed);
            if (lender.isPresent()) {
                checkBorrowed(i, name, stop.get(), lender.get());
            }
        }
    }

    private void checkBorrowed(int index, StopName name, Stop stop, StopName lender) {
        if (!stops.containsKey(lender)) {
            List<String> all =
                    parts.stops().stream().map(each -> each.name().toString()).toList();
            faults.add(new Fault(
                    Part.STOP,
                    index,
                    name + " borrows from \"" + lender + "\", which does not exist",
                    Nearest.sentence(lender.toString(), all, "The stops are")));
            return;
        }
        boolean isAlike =
                stops.get(lender).map(each -> each.ranks() == stop.ranks()).orElse(true);
        require(
                isAlike,
                Part.STOP,
                index,
                name + " and the stop it borrows from have different numbers of ranks",
                "Give both the same number of ranks.");
        require(
                !isAlike || !isCircle(name),
                Part.STOP,
                index,
                name + " borrows from itself",
                "Let one stop of the circle have pipes.");
    }

    private boolean isCircle(StopName start) {
        Set<StopName> seen = new HashSet<>();
        Optional<StopName> at = Optional.of(start);
        while (at.isPresent() && seen.add(at.get())) {
            at = stops.getOrDefault(at.get(), Optional.empty()).flatMap(Stop::borrowed);
        }
        return at.isPresent();
    }

    private void checkMechanisms() {
        requireOwnNames(parts.couplers(), Part.COUPLER);
        for (int i = 0; i < parts.couplers().size(); i++) {
            Named<String, Coupler> coupler = parts.couplers().get(i);
            if (coupler.part().isPresent()) {
                requireDivision(coupler.part().get().source(), Part.COUPLER, i, coupler.name());
                requireDivision(coupler.part().get().keyboard(), Part.COUPLER, i, coupler.name());
            }
        }
        requireOwnNames(parts.tremulants(), Part.TREMULANT);
        for (int i = 0; i < parts.tremulants().size(); i++) {
            Named<String, Tremulant> tremulant = parts.tremulants().get(i);
            if (tremulant.part().isPresent()) {
                requireDivision(tremulant.part().get().division(), Part.TREMULANT, i, tremulant.name());
            }
        }
        for (String name : parts.divisionals()) {
            requireDivision(name, Part.PISTONS, 0, "the divisional pistons");
        }
    }

    private void requireDivision(String division, Part part, int index, String asker) {
        if (!divisions.contains(division)) {
            List<String> all = parts.divisions().stream().map(Named::name).toList();
            faults.add(new Fault(
                    part,
                    index,
                    asker + " names the division \"" + division + "\", which does not exist",
                    Nearest.sentence(division, all, "The divisions are")));
        }
    }
}
