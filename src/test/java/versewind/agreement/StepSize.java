package versewind.agreement;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import versewind.agreement.Fault.Remark;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.Plan;
import versewind.plan.Verse;

/**
 * What must be moved for one step while it is heard. A step moves two knobs of the manuals at most, and two of the
 * pedal with them, unless no fewer knobs would have made a step that is heard and keeps the order.
 */
final class StepSize {

    private static final int KNOBS = 2;

    /** From what change in level a step is heard, in dB; an estimate. */
    private static final double HEARD_DB = 0.5;

    private final Program program;
    private final Instrument organ;
    private final Plan plan;
    private final Verse before;
    private final Verse after;
    private final List<Knob> manual = new ArrayList<>();
    private final List<Knob> pedal = new ArrayList<>();

    private record Knob(boolean isCoupler, int index) {

        Registration toggled(Registration drawn) {
            return isCoupler ? drawn.toggleCoupler(index) : drawn.toggleStop(index);
        }
    }

    StepSize(Program program, Plan plan, Verse before, Verse after) {
        this.program = program;
        organ = program.organ();
        this.plan = plan;
        this.before = before;
        this.after = after;
        Registration from = before.registration();
        Registration to = after.registration();
        Speaking was = new Speaking(organ, from, before.hands());
        Speaking is = new Speaking(organ, to, after.hands());
        to.stops().minus(from.stops()).stream()
                .filter(stop -> was.isHeard(home(stop)))
                .forEach(this::addStop);
        from.stops().minus(to.stops()).stream()
                .filter(stop -> is.isHeard(home(stop)))
                .forEach(this::addStop);
        Stream.of(to.couplers().minus(from.couplers()), from.couplers().minus(to.couplers()))
                .flatMapToInt(IndexSet::stream)
                .forEach(coupler -> manual.add(new Knob(true, coupler)));
    }

    private void addStop(int stop) {
        (organ.divisions().get(home(stop)).isPedal() ? pedal : manual).add(new Knob(false, stop));
    }

    private int home(int stop) {
        return organ.stops().get(stop).division();
    }

    /** Where more is moved than need be: "manuals", "pedal". */
    List<String> tooMany() {
        List<String> parts = new ArrayList<>();
        if (manual.size() - Math.max(0, replaced() - 1) > KNOBS) {
            parts.add("manuals");
        }
        if (pedal.size() > KNOBS) {
            parts.add("pedal");
        }
        return parts.isEmpty() || !mayBeSmaller() ? List.of() : parts;
    }

    /** How many stops give way to others, or take their place back: of these the order allows no choice. */
    private long replaced() {
        IndexSet drawn =
                after.registration().stops().minus(before.registration().stops());
        IndexSet pushed =
                before.registration().stops().minus(after.registration().stops());
        return replaced(pushed, drawn) + replaced(drawn, pushed);
    }

    private long replaced(IndexSet some, IndexSet others) {
        return some.stream()
                .filter(stop -> !organ.divisions().get(home(stop)).isPedal())
                .filter(stop -> OrderTeacher.isReplaced(organ, stop, others))
                .count();
    }

    private boolean mayBeSmaller() {
        return few(manual).stream().anyMatch(hands -> few(pedal).stream()
                .anyMatch(feet ->
                        isStep(Stream.concat(hands.stream(), feet.stream()).toList())));
    }

    /** None, each one and each two of some knobs. */
    private static List<List<Knob>> few(List<Knob> knobs) {
        List<List<Knob>> few = new ArrayList<>(List.of(List.of()));
        for (int i = 0; i < knobs.size(); i++) {
            few.add(List.of(knobs.get(i)));
            for (int j = 0; j < i; j++) {
                few.add(List.of(knobs.get(j), knobs.get(i)));
            }
        }
        return few;
    }

    /** Whether some knobs alone are heard as a step the same way, and break nothing. */
    private boolean isStep(List<Knob> knobs) {
        Registration drawn = new Registration(
                before.registration().stops(),
                before.registration().couplers(),
                before.registration().tremulants(),
                after.registration().boxes());
        for (Knob knob : knobs) {
            drawn = knob.toggled(drawn);
        }
        Verse smaller = before.withRegistration(drawn);
        boolean isStronger = program.levelDba(after) > program.levelDba(before);
        double changeDb = program.levelDba(smaller) - program.levelDba(before);
        if ((isStronger ? changeDb : -changeDb) < HEARD_DB) {
            return false;
        }
        Set<Remark> were = new HashSet<>(Teacher.hard(organ, plan, before));
        return were.containsAll(Teacher.hard(organ, plan, smaller))
                && OrderTeacher.step(organ, before, smaller, isStronger).isEmpty();
    }
}
