package versewind.proposal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import versewind.organ.Instrument;
import versewind.organ.Knobs;
import versewind.organ.Piston;
import versewind.organ.Pressed;
import versewind.organ.Registration;
import versewind.plan.Plan;
import versewind.plan.Verse;

/**
 * The pistons of an instrument that a proposal may set, and what those hold that hymns which are left alone have set:
 * the generals where there are any, else the divisionals.
 */
final class FreePistons {

    private static final int LEVEL = 1;

    private final Instrument organ;
    private final List<OptionalInt> divisions;
    private final Map<Piston, Knobs> held = new LinkedHashMap<>();

    private FreePistons(Instrument organ) {
        this.organ = organ;
        divisions = organ.pistons().generals() > 0
                ? List.of(OptionalInt.empty())
                : organ.pistons().divisionals().keySet().stream()
                        .map(organ::division)
                        .toList();
    }

    /**
     * Those of a plan.
     *
     * @param chosen indices of the hymns whose pistons are set anew
     */
    static FreePistons of(Instrument organ, Plan plan, List<Integer> chosen) {
        FreePistons pistons = new FreePistons(organ);
        for (int hymn = 0; hymn < plan.hymns().size(); hymn++) {
            if (!chosen.contains(hymn)) {
                plan.hymns().get(hymn).verses().forEach(pistons::hold);
            }
        }
        return pistons;
    }

    private void hold(Verse verse) {
        for (Piston piston : Pressed.of(organ, verse.piston()).pistons()) {
            held.putIfAbsent(piston, Knobs.drawn(verse.registration()).and(piston.reach(organ)));
        }
    }

    /** What can be set at once: everything by a general, or each division by a divisional of its own. */
    static List<Knobs> reaches(Instrument organ) {
        return new FreePistons(organ)
                .divisions.stream()
                        .map(division -> new Piston(LEVEL, division, 1).reach(organ))
                        .toList();
    }

    /** Whether a piston sets the whole organ; else what it does not set stays, or is moved by hand. */
    boolean setEverything() {
        return divisions.contains(OptionalInt.empty());
    }

    /** The registrations that generals hold. */
    Set<Knobs> owned() {
        return held.entrySet().stream()
                .filter(each -> each.getKey().isGeneral())
                .map(Map.Entry::getValue)
                .collect(Collectors.toSet());
    }

    /** How many different registrations can be set: generals, or the fewest divisionals of a division. */
    int free() {
        return divisions.stream()
                .mapToInt(division -> (int) inOrder(division).stream()
                        .filter(piston -> !held.containsKey(piston))
                        .count())
                .min()
                .orElse(0);
    }

    private List<Piston> inOrder(OptionalInt division) {
        int count = division.isEmpty()
                ? organ.pistons().generals()
                : organ.pistons().divisionals().get(organ.divisionNames().get(division.getAsInt()));
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> new Piston(LEVEL, division, number))
                .toList();
    }

    /**
     * The pistons that set a verse, which hold it from now on: a general, or a divisional for each division that
     * changes; blank where none is free.
     *
     * @param before what was drawn, if that is known
     */
    String press(Registration drawn, Optional<Registration> before) {
        List<Piston> pressed = new ArrayList<>();
        for (OptionalInt division : divisions) {
            Knobs reach = new Piston(LEVEL, division, 1).reach(organ);
            Knobs wanted = Knobs.drawn(drawn).and(reach);
            Knobs was = before.map(Knobs::drawn).orElse(Knobs.NONE).and(reach);
            if (division.isEmpty() || !wanted.equals(was)) {
                holding(division, wanted).ifPresent(pressed::add);
            }
        }
        boolean isOnOneLevel = pressed.stream().map(Piston::level).distinct().count() <= 1;
        return isOnOneLevel ? new Pressed(pressed).name(organ) : "";
    }

    private Optional<Piston> holding(OptionalInt division, Knobs wanted) {
        Optional<Piston> found = held.entrySet().stream()
                .filter(each -> each.getKey().division().equals(division)
                        && each.getValue().equals(wanted))
                .map(Map.Entry::getKey)
                .findFirst()
                .or(() -> inOrder(division).stream()
                        .filter(piston -> !held.containsKey(piston))
                        .findFirst());
        found.ifPresent(piston -> held.putIfAbsent(piston, wanted));
        return found;
    }
}
