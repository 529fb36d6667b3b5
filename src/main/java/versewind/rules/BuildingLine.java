package versewind.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;

/**
 * The line along which a registration grows on one keyboard of an organ, and shrinks back: flutes, principals, the
 * second chorus, mixtures, reeds in a box, reeds of the main manual, doubles, the 32 ft; the pedal keeps pace. Steps of
 * {@link BuildingStep} for which the organ has no stops are left out.
 *
 * <p>The line is a list of additions. Each draws a few stops and perhaps the coupler that brings them, and may take the
 * place of stops drawn earlier: a principal stands for the flute of its pitch, which it would cover.
 *
 * <p>Common practice, no source. Checked against: {@code BuildingLineTest}.
 */
public final class BuildingLine {

    private final OrganFacts organ;
    private final List<Addition> additions;
    private final List<Rung> rungs = new ArrayList<>();

    /**
     * One addition.
     *
     * @param step the step of the order to which it belongs
     * @param words its name: "principals 8 4", "Swell coupled"
     * @param draws stops that are drawn
     * @param couplers couplers that are drawn
     * @param replaces stops drawn earlier for which these stand
     */
    public record Addition(BuildingStep step, String words, IndexSet draws, IndexSet couplers, IndexSet replaces) {}

    /**
     * Everything that is drawn after an addition.
     *
     * @param step the step that is reached
     * @param number of the step among those that this organ has, counted from 1
     * @param words its name: "principals 8 4"
     * @param stops all stops drawn
     * @param couplers all couplers drawn
     */
    public record Rung(BuildingStep step, int number, String words, IndexSet stops, IndexSet couplers) {}

    /**
     * The line of a keyboard.
     *
     * @param organ the instrument
     * @param hands the keyboard of the left hand, which plays the chords, and the part of the feet
     * @param never stops that are not to be drawn
     */
    public BuildingLine(OrganFacts organ, HandsAndFeet hands, IndexSet never) {
        this(organ, hands, never, IndexSet.EMPTY);
    }

    /** The line of a keyboard that takes what is drawn, or usually drawn, before its equals. */
    public BuildingLine(OrganFacts organ, HandsAndFeet hands, IndexSet never, IndexSet drawn) {
        this.organ = organ;
        additions = organ.additions(hands, never, drawn);
        IndexSet stops = IndexSet.EMPTY;
        IndexSet couplers = IndexSet.EMPTY;
        int number = 0;
        for (Addition each : additions) {
            boolean isSameStep = number > 0 && rungs.get(rungs.size() - 1).step() == each.step();
            number += isSameStep ? 0 : 1;
            stops = stops.minus(each.replaces()).plus(each.draws());
            couplers = couplers.plus(each.couplers());
            rungs.add(new Rung(each.step(), number, each.words(), stops, couplers));
        }
    }

    /** The additions in their order. */
    public List<Addition> additions() {
        return additions;
    }

    /** What is drawn after every addition, the softest first. */
    public List<Rung> rungs() {
        return List.copyOf(rungs);
    }

    /** How many steps of the order the organ has on this keyboard. */
    public int steps() {
        return rungs.isEmpty() ? 0 : rungs.get(rungs.size() - 1).number();
    }

    /** The rung that a registration has reached: the highest of which nothing is missing. Empty below the first. */
    public Optional<Rung> reached(Registration drawn) {
        int last = -1;
        while (last + 1 < additions.size() && isMade(last + 1, drawn)) {
            last++;
        }
        return last < 0 ? Optional.empty() : Optional.of(rungs.get(last));
    }

    /** The step that a registration has reached, in words: "step 5 of 8: principals 8 4 2". */
    public Optional<String> reachedInWords(Registration drawn) {
        return reached(drawn).map(rung -> "step " + rung.number() + " of " + steps() + ": " + rung.words());
    }

    /** The first addition that a registration lacks; empty where it has all. */
    public Optional<Addition> next(Registration drawn) {
        return IntStream.range(0, additions.size())
                .filter(index -> !isMade(index, drawn))
                .mapToObj(additions::get)
                .findFirst();
    }

    /** The additions of which anything is drawn, the last of the order first. */
    public List<Addition> begun(Registration drawn) {
        List<Addition> begun = new ArrayList<>();
        for (int index = additions.size() - 1; index >= 0; index--) {
            if (isBegun(index, drawn)) {
                begun.add(additions.get(index));
            }
        }
        return begun;
    }

    /** A registration with an addition made. */
    public static Registration with(Registration drawn, Addition addition) {
        return drawn.withStops(drawn.stops().minus(addition.replaces()).plus(addition.draws()))
                .withCouplers(drawn.couplers().plus(addition.couplers()));
    }

    /**
     * A registration with an addition taken back, but for stops that are kept. What the addition had replaced returns;
     * stops that its coupler had brought stay drawn, since nobody hears them.
     */
    Registration without(Registration drawn, Addition addition, IndexSet kept) {
        if (!addition.couplers().isEmpty()) {
            return drawn.withCouplers(drawn.couplers().minus(addition.couplers()));
        }
        IndexSet gone = drawn.stops().and(addition.draws()).minus(kept);
        IndexSet back = IndexSet.of(addition.replaces().stream().filter(stop -> gone.stream()
                .anyMatch(other -> organ.divisionOf(other) == organ.divisionOf(stop)
                        && organ.layer(other).isKinOf(organ.layer(stop)))));
        return drawn.withStops(drawn.stops().minus(gone).plus(back));
    }

    /** Stops that belong to the line. */
    public IndexSet stops() {
        IndexSet all = IndexSet.EMPTY;
        for (Addition each : additions) {
            all = all.plus(each.draws());
        }
        return all;
    }

    /** Couplers that belong to the line. */
    public IndexSet couplers() {
        return rungs.isEmpty() ? IndexSet.EMPTY : rungs.get(rungs.size() - 1).couplers();
    }

    /** True if anything of an addition is drawn; a stop that comes back, only over what had taken its place. */
    private boolean isBegun(int index, Registration drawn) {
        Addition addition = additions.get(index);
        if (!addition.couplers().isEmpty()) {
            return drawn.couplers().meets(addition.couplers());
        }
        IndexSet here = drawn.stops().and(addition.draws());
        for (Addition earlier : additions.subList(0, index)) {
            if (!drawn.stops().meets(earlier.draws())) {
                here = here.minus(earlier.replaces());
            }
        }
        return !here.isEmpty();
    }

    /** True if an addition is drawn whole, but for what a later one that is drawn stands for. */
    private boolean isMade(int index, Registration drawn) {
        Addition addition = additions.get(index);
        IndexSet missing = addition.draws().minus(drawn.stops());
        for (Addition later : additions.subList(index + 1, additions.size())) {
            missing = missing.meets(later.replaces()) && drawn.stops().meets(later.draws())
                    ? missing.minus(later.replaces())
                    : missing;
        }
        return missing.isEmpty() && addition.couplers().minus(drawn.couplers()).isEmpty();
    }
}
