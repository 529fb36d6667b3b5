package versewind.organ;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Former names of an instrument's parts, so that older plans still open: the present name of each, or that it is gone.
 *
 * <p>A stop is looked up under the present name of its division; if the division is gone, under its former name.
 *
 * @param divisions by their former names
 * @param stops by their former names
 * @param couplers by their former names
 * @param tremulants by their former names
 * @param boxes present names of the divisions that were once enclosed
 */
public record FormerNames(
        Map<String, Now<String>> divisions,
        Map<StopName, Now<StopName>> stops,
        Map<String, Now<String>> couplers,
        Map<String, Now<String>> tremulants,
        Set<String> boxes) {

    /** No former names. */
    public static final FormerNames NONE = new FormerNames(Map.of(), Map.of(), Map.of(), Map.of(), Set.of());

    /**
     * The fate of a part.
     *
     * @param name its present name; empty if it is gone
     */
    public record Now<T>(Optional<T> name) {

        /** A part with another name. */
        public static <T> Now<T> called(T name) {
            return new Now<>(Optional.of(name));
        }

        /** A part that is gone. */
        public static <T> Now<T> gone() {
            return new Now<>(Optional.empty());
        }
    }

    public FormerNames {
        divisions = Collections.unmodifiableMap(new LinkedHashMap<>(divisions));
        stops = Collections.unmodifiableMap(new LinkedHashMap<>(stops));
        couplers = Collections.unmodifiableMap(new LinkedHashMap<>(couplers));
        tremulants = Collections.unmodifiableMap(new LinkedHashMap<>(tremulants));
        boxes = Collections.unmodifiableSet(new LinkedHashSet<>(boxes));
    }

    /** True if there are no former names. */
    public boolean isNone() {
        return equals(NONE);
    }

    /** The present division of this name; empty if there never was one. */
    public Optional<Now<String>> division(Instrument organ, String name) {
        return organ.division(name).isPresent()
                ? Optional.of(Now.called(name))
                : Optional.ofNullable(divisions.get(name));
    }

    /** The present stop of this name; empty if there never was one. */
    public Optional<Now<StopName>> stop(Instrument organ, StopName name) {
        Optional<Now<String>> division = division(organ, name.division());
        if (division.isEmpty()) {
            return Optional.empty();
        }
        StopName today = new StopName(division.get().name().orElse(name.division()), name.label());
        if (organ.stop(today).isPresent()) {
            return Optional.of(Now.called(today));
        }
        Optional<Now<StopName>> now = Optional.ofNullable(stops.get(today));
        return now.isPresent() || division.get().name().isPresent() ? now : Optional.of(Now.gone());
    }

    /** The present coupler of this name; empty if there never was one. */
    public Optional<Now<String>> coupler(Instrument organ, String name) {
        return organ.coupler(name).isPresent()
                ? Optional.of(Now.called(name))
                : Optional.ofNullable(couplers.get(name));
    }

    /** The present tremulant of this name; empty if there never was one. */
    public Optional<Now<String>> tremulant(Instrument organ, String name) {
        return organ.tremulant(name).isPresent()
                ? Optional.of(Now.called(name))
                : Optional.ofNullable(tremulants.get(name));
    }

    /**
     * The former names after another change of the instrument.
     *
     * @param change the fate of each part in this change
     * @param organ the instrument after the change; its present names are no former names
     */
    public FormerNames after(FormerNames change, Instrument organ) {
        UnaryOperator<String> division = name ->
                change.divisions.getOrDefault(name, Now.called(name)).name().orElse(name);
        Map<StopName, Now<StopName>> allStops = new LinkedHashMap<>();
        stops.forEach((was, now) ->
                allStops.put(new StopName(division.apply(was.division()), was.label()), then(now, change.stops)));
        change.stops.forEach(
                (was, now) -> allStops.put(new StopName(division.apply(was.division()), was.label()), now));
        allStops.keySet().removeIf(name -> organ.stop(name).isPresent());
        Map<String, Now<String>> allDivisions = together(divisions, change.divisions);
        allDivisions.keySet().removeIf(name -> organ.division(name).isPresent());
        Map<String, Now<String>> allCouplers = together(couplers, change.couplers);
        allCouplers.keySet().removeIf(name -> organ.coupler(name).isPresent());
        Map<String, Now<String>> allTremulants = together(tremulants, change.tremulants);
        allTremulants.keySet().removeIf(name -> organ.tremulant(name).isPresent());
        Set<String> allBoxes = new LinkedHashSet<>(change.boxes);
        boxes.forEach(name -> allBoxes.add(division.apply(name)));
        allBoxes.removeIf(name -> organ.division(name).isEmpty()
                || organ.divisions().get(organ.division(name).getAsInt()).isEnclosed());
        return new FormerNames(allDivisions, allStops, allCouplers, allTremulants, allBoxes);
    }

    private static Map<String, Now<String>> together(Map<String, Now<String>> before, Map<String, Now<String>> change) {
        Map<String, Now<String>> all = new LinkedHashMap<>();
        before.forEach((was, now) -> all.put(was, then(now, change)));
        all.putAll(change);
        return all;
    }

    private static <T> Now<T> then(Now<T> now, Map<T, Now<T>> change) {
        return now.name().map(name -> change.getOrDefault(name, now)).orElse(now);
    }
}
