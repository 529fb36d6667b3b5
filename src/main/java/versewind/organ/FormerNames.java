package versewind.organ;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * What parts of an instrument were called before, so that a plan written then is still understood: what each became, or
 * that it is gone.
 *
 * <p>A stop is looked for under its division's name of today; where that division is gone, under the name it had.
 *
 * @param divisions by their former names
 * @param stops by their former names
 * @param couplers by their former names
 * @param tremulants by their former names
 * @param boxes the divisions, under their names of today, that stood in a box before
 */
public record FormerNames(
        Map<String, Now<String>> divisions,
        Map<StopName, Now<StopName>> stops,
        Map<String, Now<String>> couplers,
        Map<String, Now<String>> tremulants,
        Set<String> boxes) {

    /** Nothing ever had another name. */
    public static final FormerNames NONE = new FormerNames(Map.of(), Map.of(), Map.of(), Map.of(), Set.of());

    /**
     * What became of something.
     *
     * @param name what it is called today; empty if it is gone
     */
    public record Now<T>(Optional<T> name) {

        /** It has another name. */
        public static <T> Now<T> called(T name) {
            return new Now<>(Optional.of(name));
        }

        /** It is there no more. */
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

    /** Whether nothing ever had another name. */
    public boolean isNone() {
        return equals(NONE);
    }

    /** What a division is today; empty if there never was one of this name. */
    public Optional<Now<String>> division(Instrument organ, String name) {
        return organ.division(name).isPresent()
                ? Optional.of(Now.called(name))
                : Optional.ofNullable(divisions.get(name));
    }

    /** What a stop is today; empty if there never was one of this name. */
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

    /** What a coupler is today; empty if there never was one of this name. */
    public Optional<Now<String>> coupler(Instrument organ, String name) {
        return organ.coupler(name).isPresent()
                ? Optional.of(Now.called(name))
                : Optional.ofNullable(couplers.get(name));
    }

    /** What a tremulant is today; empty if there never was one of this name. */
    public Optional<Now<String>> tremulant(Instrument organ, String name) {
        return organ.tremulant(name).isPresent()
                ? Optional.of(Now.called(name))
                : Optional.ofNullable(tremulants.get(name));
    }

    /**
     * After the instrument has changed once more.
     *
     * @param change what became now of what was there until now
     * @param organ the instrument after the change: what is called so today was never called otherwise
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
