package versewind.organ;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * An organ in its room. Always complete: names are unique where they must be, and every reference leads to a part.
 *
 * <p>Stops, couplers, tremulants and divisions also have an index, their place in the order of the file; a
 * {@link Registration} refers to these.
 */
public final class Instrument {

    /** The most stops that an instrument can have. */
    public static final int MOST_STOPS = 300;

    private final String name;
    private final String place;
    private final Action action;
    private final double trimDb;
    private final List<Division> divisions;
    private final List<Coupler> couplers;
    private final List<Tremulant> tremulants;
    private final Pistons pistons;
    private final Room room;

    private final List<Knob> stops;
    private final Map<StopName, Integer> stopByName;
    private final Map<String, Integer> divisionByName;

    /**
     * A stop with its division.
     *
     * @param division index of its division
     * @param stop what it is
     * @param name its name in plans
     */
    public record Knob(int division, Stop stop, StopName name) {}

    /**
     * Makes an instrument of its parts.
     *
     * @param name name of the organ
     * @param place the place it stands in
     * @param action how the keys reach the pallets
     * @param trimDb how much louder than estimated the whole organ is, in dB, -20 to 20
     * @param divisions one at least, one of them a manual
     * @param couplers in the order of their knobs
     * @param tremulants in the order of their knobs
     * @param pistons its pistons, {@link Pistons#NONE} for none
     * @param room the place it stands in
     * @throws IllegalArgumentException with a sentence, if the parts do not fit together
     */
    public Instrument(
            String name,
            String place,
            Action action,
            double trimDb,
            List<Division> divisions,
            List<Coupler> couplers,
            List<Tremulant> tremulants,
            Pistons pistons,
            Room room) {
        this.name = name;
        this.place = place;
        this.action = action;
        this.trimDb = trimDb;
        this.divisions = List.copyOf(divisions);
        this.couplers = List.copyOf(couplers);
        this.tremulants = List.copyOf(tremulants);
        this.pistons = pistons;
        this.room = room;
        this.stops = knobs(this.divisions);
        this.divisionByName = indices(divisionNames());
        this.stopByName = indices(stops.stream().map(Knob::name).toList());
        Completeness.check(this);
    }

    private static List<Knob> knobs(List<Division> divisions) {
        List<Knob> knobs = new ArrayList<>();
        for (int d = 0; d < divisions.size(); d++) {
            Division division = divisions.get(d);
            for (Stop stop : division.stops()) {
                knobs.add(new Knob(d, stop, new StopName(division.name(), stop.label())));
            }
        }
        return List.copyOf(knobs);
    }

    private static <T> Map<T, Integer> indices(List<T> names) {
        Map<T, Integer> indices = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
            indices.put(names.get(i), i);
        }
        return indices;
    }

    /** Name of the organ. */
    public String name() {
        return name;
    }

    /** Where it stands. */
    public String place() {
        return place;
    }

    /** How the keys reach the pallets. */
    public Action action() {
        return action;
    }

    /** How much louder than estimated the whole organ is, in dB. */
    public double trimDb() {
        return trimDb;
    }

    /** Its divisions, in the order of the file. */
    public List<Division> divisions() {
        return divisions;
    }

    /** Its couplers, in the order of the file. */
    public List<Coupler> couplers() {
        return couplers;
    }

    /** Its tremulants, in the order of the file. */
    public List<Tremulant> tremulants() {
        return tremulants;
    }

    /** Names of its divisions, in the order of the file. */
    public List<String> divisionNames() {
        return divisions.stream().map(Division::name).toList();
    }

    /** Names of its couplers, in the order of the file. */
    public List<String> couplerNames() {
        return couplers.stream().map(Coupler::name).toList();
    }

    /** Names of its tremulants, in the order of the file. */
    public List<String> tremulantNames() {
        return tremulants.stream().map(Tremulant::name).toList();
    }

    /** Its pistons. */
    public Pistons pistons() {
        return pistons;
    }

    /** The room it stands in. */
    public Room room() {
        return room;
    }

    /** All stops, division after division. */
    public List<Knob> stops() {
        return stops;
    }

    /** Index of the stop of this name. */
    public OptionalInt stop(StopName stopName) {
        Integer index = stopByName.get(stopName);
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    /** Index of the division of this name. */
    public OptionalInt division(String divisionName) {
        Integer index = divisionByName.get(divisionName);
        return index == null ? OptionalInt.empty() : OptionalInt.of(index);
    }

    /** Index of the coupler of this name. */
    public OptionalInt coupler(String couplerName) {
        return index(couplerNames(), couplerName);
    }

    /** Index of the tremulant of this name. */
    public OptionalInt tremulant(String tremulantName) {
        return index(tremulantNames(), tremulantName);
    }

    private static OptionalInt index(List<String> names, String name) {
        int index = names.indexOf(name);
        return index < 0 ? OptionalInt.empty() : OptionalInt.of(index);
    }

    /** Indices of the manual divisions, in the order of the file. */
    public List<Integer> manualDivisions() {
        return IntStream.range(0, divisions.size())
                .filter(i -> !divisions.get(i).isPedal())
                .boxed()
                .toList();
    }

    /** Index of the pedal division, if there is one. */
    public OptionalInt pedalDivision() {
        for (int i = 0; i < divisions.size(); i++) {
            if (divisions.get(i).isPedal()) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * Index of the division from which hymns are led: of the unenclosed manual divisions (of all, if every one is
     * enclosed) the one with most principals, mixtures and chorus reeds; the first of equals. An estimate; common
     * practice, no source.
     */
    public int mainDivision() {
        List<Integer> open = manualDivisions().stream()
                .filter(division -> !divisions.get(division).isEnclosed())
                .toList();
        int main = -1;
        long most = -1;
        for (int division : open.isEmpty() ? manualDivisions() : open) {
            long chorus = divisions.get(division).stops().stream()
                    .filter(Instrument::ofTheChorus)
                    .count();
            if (chorus > most) {
                most = chorus;
                main = division;
            }
        }
        return main;
    }

    private static boolean ofTheChorus(Stop stop) {
        return switch (stop.family()) {
            case PRINCIPAL, MIXTURE, CHORUS_REED -> true;
            case FLUTE, STRING, CELESTE, MUTATION, CORNET, SOLO_REED -> false;
        };
    }

    /** Index of the stop whose pipes a stop plays: itself, or the stop at the end of its chain of borrowing. */
    public int rankOf(int stop) {
        int at = stop;
        Optional<StopName> lender = stops.get(at).stop().borrowed();
        while (lender.isPresent()) {
            at = stopByName.get(lender.get());
            lender = stops.get(at).stop().borrowed();
        }
        return at;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Instrument that
                && name.equals(that.name)
                && place.equals(that.place)
                && action == that.action
                && trimDb == that.trimDb
                && divisions.equals(that.divisions)
                && couplers.equals(that.couplers)
                && tremulants.equals(that.tremulants)
                && pistons.equals(that.pistons)
                && room.equals(that.room);
    }

    @Override
    public int hashCode() {
        return name.hashCode() * 31 + divisions.hashCode();
    }

    @Override
    public String toString() {
        return place.isBlank() ? name : name + ", " + place;
    }
}
