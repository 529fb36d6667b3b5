package versewind.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.organ.Coupler;
import versewind.organ.Footage;
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

    /** Stops of one kind within so many dB of the loudest are equals, of which the softest is drawn first. */
    private static final double EQUALS_DB = 6;

    /** Where the lowest pitch of a mixture is not known, in feet. */
    private static final double USUAL_MIXTURE_FEET = 1.5;

    private final OrganFacts organ;
    private final int lead;
    private final int feet;
    private final boolean hasPedalStops;
    private final IndexSet never;
    private final List<Addition> additions = new ArrayList<>();
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
        this.organ = organ;
        this.never = never;
        lead = hands.left();
        feet = hands.layout().usesPedal() ? organ.pedal() : OrganFacts.NO_PEDAL;
        hasPedalStops = feet != OrganFacts.NO_PEDAL && hands.layout() != HandsAndFeet.Layout.COUPLED_DOWN;
        addFoundations();
        addSecondChorus();
        addMixtures();
        addEnclosedReeds();
        addMainReeds();
        addDoubles();
        addThirtyTwoFeet();
        climb();
    }

    /** The additions in their order. */
    public List<Addition> additions() {
        return List.copyOf(additions);
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
        List<Addition> begun = new ArrayList<>(additions);
        begun.removeIf(each -> !isBegun(each, drawn));
        Collections.reverse(begun);
        return begun;
    }

    /** A registration with an addition made. */
    public static Registration with(Registration drawn, Addition addition) {
        return drawn.withStops(drawn.stops().minus(addition.replaces()).plus(addition.draws()))
                .withCouplers(drawn.couplers().plus(addition.couplers()));
    }

    /**
     * A registration with an addition taken back. What the addition had replaced returns; stops that its coupler had
     * brought stay drawn, since nobody hears them.
     */
    public static Registration without(Registration drawn, Addition addition) {
        IndexSet couplers = drawn.couplers().minus(addition.couplers());
        return addition.couplers().isEmpty()
                ? drawn.withStops(drawn.stops().minus(addition.draws()).plus(addition.replaces()))
                : drawn.withCouplers(couplers);
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

    private static boolean isBegun(Addition addition, Registration drawn) {
        return addition.couplers().isEmpty()
                ? drawn.stops().meets(addition.draws())
                : drawn.couplers().meets(addition.couplers());
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

    private void climb() {
        IndexSet stops = IndexSet.EMPTY;
        IndexSet couplers = IndexSet.EMPTY;
        int number = 0;
        BuildingStep step = null;
        for (Addition each : additions) {
            stops = stops.minus(each.replaces()).plus(each.draws());
            couplers = couplers.plus(each.couplers());
            number += each.step() == step ? 0 : 1;
            step = each.step();
            rungs.add(new Rung(step, number, each.words(), stops, couplers));
        }
    }

    private void add(BuildingStep step, String words, IndexSet draws, IndexSet couplers, IndexSet replaces) {
        IndexSet fresh = draws.minus(drawn());
        if (!fresh.isEmpty() || !couplers.isEmpty()) {
            additions.add(new Addition(step, words, fresh, couplers, replaces));
        }
    }

    private void add(BuildingStep step, String words, IndexSet draws) {
        add(step, words, draws, IndexSet.EMPTY, IndexSet.EMPTY);
    }

    private IndexSet drawn() {
        IndexSet stops = IndexSet.EMPTY;
        for (Addition each : additions) {
            stops = stops.minus(each.replaces()).plus(each.draws());
        }
        return stops;
    }

    /** Flutes, then principals, of the keyboard itself; the pedal’s soft 16 ft from the first, a firmer one later. */
    private void addFoundations() {
        IndexSet flute8 = first(lead, StopClass.FLUTE_8, StopClass.STRING_8);
        IndexSet flute4 = first(lead, StopClass.FLUTE_4);
        IndexSet principal8 = first(lead, StopClass.PRINCIPAL_8);
        IndexSet principal4 = first(lead, StopClass.PRINCIPAL_4);
        IndexSet clearly = coupler(lead, feet).isEmpty() ? first(feet, StopClass.PEDAL_8) : IndexSet.EMPTY;
        IndexSet bass = soft16().plus(clearly);
        boolean isFonds = organ.isFonds(lead);
        if (!flute8.isEmpty()) {
            add(BuildingStep.FLUTE_8, "flute 8", flute8.plus(bass), coupler(lead, feet), IndexSet.EMPTY);
            add(BuildingStep.FLUTES_8_4, "flutes 8 4", flute4);
        }
        if (isFonds) {
            add(BuildingStep.PRINCIPAL_8, "fonds 8", allEights().plus(pedalEight()), IndexSet.EMPTY, flute4);
        } else if (flute8.isEmpty()) {
            add(BuildingStep.PRINCIPAL_8, "principal 8", principal8.plus(bass), coupler(lead, feet), IndexSet.EMPTY);
            add(BuildingStep.PRINCIPAL_8, "principal 8 with flute 4", flute4);
        } else if (!principal8.isEmpty()) {
            String words = flute4.isEmpty() ? "principal 8" : "principal 8 with flute 4";
            add(BuildingStep.PRINCIPAL_8, words, principal8.plus(pedalEight()), IndexSet.EMPTY, flute8);
        }
        String chorus = isFonds ? "fonds 8 4" : "principals 8 4";
        if (!principal4.isEmpty()) {
            IndexSet replaced = soft16().minus(firm16()).plus(flute4);
            add(
                    BuildingStep.PRINCIPALS_8_4,
                    chorus,
                    principal4.plus(pedalEight()).plus(firm16()),
                    IndexSet.EMPTY,
                    replaced);
        }
        IndexSet two = first(lead, StopClass.PRINCIPAL_2, StopClass.FLUTE_2);
        add(BuildingStep.PRINCIPALS_8_4_2, chorus + " 2", two);
        add(
                BuildingStep.PRINCIPALS_8_4_2,
                chorus + " 2 with the twelfth",
                two.isEmpty() ? two : first(lead, StopClass.TWELFTH));
    }

    /** The chorus of another manual, one in a box before others; where there is none, nothing. */
    private void addSecondChorus() {
        OptionalInt second = seconds().stream()
                .filter(this::isChorus)
                .mapToInt(division -> division)
                .findFirst();
        if (second.isPresent()) {
            addChorusOf(second.getAsInt(), BuildingStep.SECOND_CHORUS);
        }
    }

    private void addChorusOf(int division, BuildingStep step) {
        IndexSet eightFour = first(division, StopClass.PRINCIPAL_8, StopClass.FLUTE_8, StopClass.STRING_8)
                .plus(first(division, StopClass.PRINCIPAL_4, StopClass.FLUTE_4));
        String name = name(division);
        add(step, name + " 8 4 coupled", eightFour, coupler(division, lead), IndexSet.EMPTY);
        add(step, name + " 8 4 2 coupled", first(division, StopClass.PRINCIPAL_2, StopClass.FLUTE_2));
    }

    private void addMixtures() {
        addMixturesOf(lead);
        add(
                BuildingStep.MIXTURES,
                "mixtures and the pedal’s 4 ft",
                hasMixture() ? first(feet, StopClass.PEDAL_4) : IndexSet.EMPTY);
        add(
                BuildingStep.MIXTURES,
                "mixtures and the pedal’s mixture",
                hasMixture() ? first(feet, StopClass.PEDAL_MIXTURE) : IndexSet.EMPTY);
        coupled().forEach(this::addMixturesOf);
    }

    private boolean hasMixture() {
        return drawn().stream().anyMatch(stop -> organ.layer(stop) == StopClass.MIXTURE);
    }

    /** Mixtures of a division that has 8 and 4 ft, the lowest first; single high ranks in their order. */
    private void addMixturesOf(int division) {
        if (!isChorus(division)) {
            return;
        }
        List<Integer> ripieno = organ.ripienoOf(division).stream()
                .filter(stop -> !never.contains(stop))
                .toList();
        List<Integer> mixtures = ripieno.isEmpty() ? ordered(division, StopClass.MIXTURE) : ripieno;
        for (int mixture : mixtures) {
            add(
                    BuildingStep.MIXTURES,
                    ripieno.isEmpty()
                            ? name(division) + " mixture"
                            : "ripieno to " + organ.stop(mixture).name(),
                    IndexSet.of(mixture));
        }
    }

    /** Full Swell: the reeds of another manual that stands in a box, over its own flues. */
    private void addEnclosedReeds() {
        OptionalInt boxed = seconds().stream()
                .filter(organ::isEnclosed)
                .filter(division -> !first(division, StopClass.REED_8).isEmpty())
                .mapToInt(division -> division)
                .findFirst();
        if (boxed.isEmpty()) {
            return;
        }
        int division = boxed.getAsInt();
        if (!isCoupled(division)) {
            addChorusOf(division, BuildingStep.ENCLOSED_REEDS);
        }
        String name = name(division);
        add(BuildingStep.ENCLOSED_REEDS, name + " oboe", organ.oboe(division, never));
        addReedsOf(division, BuildingStep.ENCLOSED_REEDS);
    }

    private void addMainReeds() {
        addReedsOf(lead, BuildingStep.MAIN_REEDS);
        coupled().forEach(division -> addReedsOf(division, BuildingStep.MAIN_REEDS));
    }

    /** Reeds of 8 ft, then those of 16 and 4, and the pedal’s with them. */
    private void addReedsOf(int division, BuildingStep step) {
        List<Integer> eights = ordered(division, StopClass.REED_8);
        if (eights.isEmpty() || !isChorus(division)) {
            return;
        }
        boolean isMain = step == BuildingStep.MAIN_REEDS;
        String full = isMain ? name(division) + " reeds" : "full " + name(division);
        add(
                step,
                name(division) + " reed 8",
                first(division, StopClass.REED_8).plus(first(feet, StopClass.PEDAL_REED_16)));
        add(step, full, first(division, isMain ? StopClass.REED_4 : StopClass.REED_16));
        add(step, full, first(division, isMain ? StopClass.REED_16 : StopClass.REED_4));
        add(step, full, IndexSet.of(eights.stream().mapToInt(stop -> stop)));
        add(step, "reeds and the pedal’s reed 8", isMain ? first(feet, StopClass.PEDAL_REED_8) : IndexSet.EMPTY);
    }

    private void addDoubles() {
        boolean isFull = drawn().stream()
                .anyMatch(stop -> organ.layer(stop) == StopClass.PRINCIPAL_2 || organ.layer(stop) == StopClass.FLUTE_2);
        if (!isFull) {
            return;
        }
        add(BuildingStep.DOUBLES, name(lead) + " 16 ft", first(lead, StopClass.DOUBLE));
        add(
                BuildingStep.DOUBLES,
                "second principals",
                all(lead, StopClass.PRINCIPAL_8).plus(all(lead, StopClass.PRINCIPAL_4)));
        add(BuildingStep.DOUBLES, "doubles and the pedal’s heavy 16 ft", heavy16());
        seconds().stream()
                .filter(division -> !isCoupled(division) && isChorus(division))
                .forEach(division -> {
                    addChorusOf(division, BuildingStep.DOUBLES);
                    add(BuildingStep.DOUBLES, name(division) + " mixture", all(division, StopClass.MIXTURE));
                });
    }

    /** The octave coupler of a box, where no mixture, double or clarion would speak through it; then the 32 ft. */
    private void addThirtyTwoFeet() {
        coupled().stream().filter(organ::isEnclosed).forEach(this::addOctaveCouplerOf);
        boolean isReedy = drawn().stream().anyMatch(stop -> organ.layer(stop) == StopClass.REED_8);
        if (!isReedy) {
            return;
        }
        add(BuildingStep.THIRTY_TWO_FEET, "32 ft flue", first(feet, StopClass.PEDAL_32));
        add(BuildingStep.THIRTY_TWO_FEET, "32 ft flue and reed", first(feet, StopClass.PEDAL_REED_32));
    }

    private void addOctaveCouplerOf(int division) {
        boolean isTooMuch = drawn().stream()
                .filter(stop -> organ.divisionOf(stop) == division)
                .mapToObj(organ::layer)
                .anyMatch(each -> each == StopClass.MIXTURE || each == StopClass.REED_16 || each == StopClass.REED_4);
        OptionalInt coupler = organ.coupler(Coupler.Kind.OCTAVE, division, lead);
        if (!isTooMuch && coupler.isPresent()) {
            add(
                    BuildingStep.THIRTY_TWO_FEET,
                    name(division) + " octave coupler",
                    IndexSet.EMPTY,
                    IndexSet.of(coupler.getAsInt()),
                    IndexSet.EMPTY);
        }
    }

    /** True if a division has flues of 8 and 4 ft. */
    private boolean isChorus(int division) {
        return !first(division, StopClass.PRINCIPAL_8, StopClass.FLUTE_8, StopClass.STRING_8)
                        .isEmpty()
                && !first(division, StopClass.PRINCIPAL_4, StopClass.FLUTE_4).isEmpty();
    }

    /** Other manuals that a coupler brings, those in a box first, then those with principals. */
    private List<Integer> seconds() {
        return organ.manuals().stream()
                .filter(division -> !organ.isOneKeyboard(division, lead))
                .filter(division -> !organ.isForSolos(division))
                .filter(division -> !coupler(division, lead).isEmpty())
                .sorted(Comparator.comparing((Integer division) -> !organ.isEnclosed(division))
                        .thenComparing(division -> first(division, StopClass.PRINCIPAL_8, StopClass.PRINCIPAL_4)
                                .isEmpty()))
                .toList();
    }

    private List<Integer> coupled() {
        return seconds().stream().filter(this::isCoupled).toList();
    }

    private boolean isCoupled(int division) {
        IndexSet coupler = coupler(division, lead);
        return additions.stream().anyMatch(each -> each.couplers().meets(coupler));
    }

    private IndexSet coupler(int source, int keyboard) {
        if (keyboard == OrganFacts.NO_PEDAL) {
            return IndexSet.EMPTY;
        }
        OptionalInt found = organ.coupler(Coupler.Kind.UNISON, source, keyboard);
        return found.isPresent() ? IndexSet.of(found.getAsInt()) : IndexSet.EMPTY;
    }

    private String name(int division) {
        return organ.organ().divisions().get(division).name();
    }

    private IndexSet allEights() {
        IndexSet all = IndexSet.EMPTY;
        for (int stop : organ.stopsOf(lead)) {
            all = organ.layer(stop).isEightFootFlue() && !never.contains(stop) ? all.with(stop) : all;
        }
        return all;
    }

    /** The flues of 16 ft of the pedal, the lightest first; those with pipes of their own, where there are any. */
    private List<Integer> pedal16() {
        List<Integer> all = byLevel(feet, StopClass.PEDAL_16).stream()
                .sorted(Comparator.comparingInt(organ::weight).thenComparingDouble(organ::levelDb))
                .toList();
        List<Integer> own =
                all.stream().filter(stop -> !organ.isBorrowedFromManual(stop)).toList();
        return own.isEmpty() ? all : own;
    }

    private IndexSet soft16() {
        return IndexSet.of(pedal16().stream().limit(1).mapToInt(stop -> stop));
    }

    /** The 16 ft that carries a chorus: neither the lightest nor the heaviest of several. */
    private IndexSet firm16() {
        List<Integer> all = pedal16();
        return all.isEmpty() ? IndexSet.EMPTY : IndexSet.of(all.get((all.size() - 1) / 2));
    }

    private IndexSet heavy16() {
        List<Integer> all = pedal16();
        return all.isEmpty() ? IndexSet.EMPTY : IndexSet.of(all.get(all.size() - 1));
    }

    private IndexSet pedalEight() {
        return first(feet, StopClass.PEDAL_8);
    }

    /** Stops of a class in a division: the deepest first, of one pitch the softest first. */
    private List<Integer> ordered(int division, StopClass wanted) {
        boolean isSilent = division == OrganFacts.NO_PEDAL || (division == organ.pedal() && !hasPedalStops);
        return isSilent
                ? List.of()
                : organ.stopsOf(division).stream()
                        .filter(stop -> organ.layer(stop) == wanted && !never.contains(stop))
                        .sorted(Comparator.comparingDouble((Integer stop) -> -feet(stop))
                                .thenComparingDouble(organ::levelDb))
                        .toList();
    }

    private double feet(int stop) {
        return organ.stop(stop).footage().map(Footage::feet).orElse(USUAL_MIXTURE_FEET);
    }

    /** The stops of a class that have its deepest pitch, the softest first. */
    private List<Integer> byLevel(int division, StopClass wanted) {
        List<Integer> all = ordered(division, wanted);
        return all.stream().filter(stop -> feet(stop) == feet(all.get(0))).toList();
    }

    private IndexSet all(int division, StopClass wanted) {
        return IndexSet.of(ordered(division, wanted).stream().mapToInt(stop -> stop));
    }

    /** The softest of the equals of the first class of which the division has any. */
    private IndexSet first(int division, StopClass... classes) {
        for (StopClass wanted : classes) {
            List<Integer> all = byLevel(division, wanted);
            if (!all.isEmpty()) {
                double leastDb = organ.levelDb(all.get(all.size() - 1)) - EQUALS_DB;
                return IndexSet.of(all.stream()
                        .filter(stop -> organ.levelDb(stop) >= leastDb)
                        .limit(1)
                        .mapToInt(stop -> stop));
            }
        }
        return IndexSet.EMPTY;
    }
}
