package versewind.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Stop;

/**
 * The order in which the trade builds up a registration, and the one in which it writes it down.
 *
 * <p>On a manual 8 ft comes first, then 4, 2, the twelfth, 16 ft, mixtures, and the chorus reeds last; on the pedal 16,
 * 8, 4, mixture, reeds, 32. A chorus has no gap: 4 ft stands on 8, 2 on 4, a twelfth on 2, a mixture on 8, 4 and 2, a
 * manual 16 ft on 4 and 2, chorus reeds on the flue chorus; the pedal grows alongside the manuals and not before them.
 * Celestes, solo reeds, cornets and the higher mutations are colours and belong to no chorus. Common practice, no
 * source.
 */
public final class BuildingOrder {

    private static final Footage TWO = Footage.of(2);
    private static final Footage FOUR = Footage.of(4);
    private static final Footage EIGHT = Footage.of(8);
    private static final Footage SIXTEEN = Footage.of(16);
    private static final Footage TWELFTH = new Footage(8, 3);

    private final Instrument organ;

    /** The order for an instrument. */
    public BuildingOrder(Instrument organ) {
        this.organ = organ;
    }

    /** When a stop joins a chorus, the first step first. */
    private enum Step {
        FIRST,
        SECOND,
        THIRD,
        TWELFTH,
        DEEP,
        MIXTURE,
        REED,
        DEEP_OR_HIGH_REED,
        COLOUR
    }

    /** As a registration is written: flues from the deepest pitch upward, compound stops, then the reeds likewise. */
    public static final Comparator<Stop> WRITTEN = Comparator.comparing(
                    (Stop stop) -> stop.family().isReed())
            .thenComparing(stop -> stop.family().isCompound())
            .thenComparing(stop -> stop.footage().orElse(TWO))
            .thenComparing(Stop::family);

    /** All stops in the order in which they are drawn, those of the divisions named first before their equals. */
    List<Integer> upward(List<Integer> divisionsFirst) {
        return IntStream.range(0, organ.stops().size())
                .boxed()
                .sorted(Comparator.comparing(this::step)
                        .thenComparing(stop -> stop(stop).family())
                        .thenComparing(stop -> place(divisionsFirst, division(stop)))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    private static int place(List<Integer> divisions, int division) {
        int place = divisions.indexOf(division);
        return place < 0 ? divisions.size() : place;
    }

    /**
     * Whether a stop can join those that are drawn, leaves no gap beneath it, and adds something: a flute under a
     * principal of its pitch hardly does.
     */
    boolean mayDraw(IndexSet drawn, int stop) {
        return mayThicken(drawn, stop) && !isUnderPrincipal(drawn, stop);
    }

    /** Whether a stop can join those that are drawn and leaves no gap beneath it, though it may hardly be heard. */
    boolean mayThicken(IndexSet drawn, int stop) {
        return !drawn.contains(stop) && step(stop) != Step.COLOUR && isSupported(drawn, stop);
    }

    private boolean isUnderPrincipal(IndexSet drawn, int stop) {
        Stop flute = stop(stop);
        return flute.family() == Family.FLUTE
                && !isPedal(division(stop))
                && drawn.stream()
                        .anyMatch(other -> division(other) == division(stop)
                                && stop(other).family() == Family.PRINCIPAL
                                && stop(other).footage().equals(flute.footage()));
    }

    /**
     * Whether a stop can be put in: nothing that rested on it hangs in the air, and no division loses its last stop,
     * nor a manual its last of 8 ft.
     */
    boolean mayPutIn(IndexSet drawn, int stop) {
        IndexSet rest = drawn.without(stop);
        int division = division(stop);
        if (rest.stream().noneMatch(other -> division(other) == division)) {
            return false;
        }
        if (!isPedal(division) && has(drawn, division, EIGHT) && !has(rest, division, EIGHT)) {
            return false;
        }
        return rest.stream().allMatch(other -> isSupported(rest, other) || !isSupported(drawn, other));
    }

    private boolean isSupported(IndexSet drawn, int stop) {
        int division = division(stop);
        return isPedal(division)
                ? isSupportedOnPedal(drawn, division, stop)
                : isSupportedOnManual(drawn, division, stop);
    }

    private boolean isSupportedOnManual(IndexSet drawn, int division, int stop) {
        return switch (step(stop)) {
            case FIRST, COLOUR -> true;
            case SECOND -> has(drawn, division, EIGHT);
            case THIRD -> has(drawn, division, FOUR);
            case TWELFTH -> has(drawn, division, TWO);
            case DEEP -> has(drawn, division, FOUR) && has(drawn, division, TWO);
            case MIXTURE ->
                has(drawn, division, EIGHT)
                        && has(drawn, division, FOUR)
                        && (has(drawn, division, TWO) || !has(all(), division, TWO));
            case REED ->
                has(drawn, division, FOUR)
                        && (hasStep(drawn, division, Step.MIXTURE) || !hasStep(all(), division, Step.MIXTURE));
            case DEEP_OR_HIGH_REED -> hasStep(drawn, division, Step.REED) || !hasStep(all(), division, Step.REED);
        };
    }

    private boolean isSupportedOnPedal(IndexSet drawn, int division, int stop) {
        return switch (step(stop)) {
            case FIRST, COLOUR -> true;
            case SECOND -> has(drawn, division, SIXTEEN);
            case THIRD -> has(drawn, division, EIGHT) && manualsHave(drawn, Step.THIRD);
            case TWELFTH, MIXTURE ->
                manualsHave(drawn, Step.MIXTURE) && (has(drawn, division, FOUR) || !has(all(), division, FOUR));
            case REED -> has(drawn, division, EIGHT) && manualsHave(drawn, Step.REED);
            case DEEP, DEEP_OR_HIGH_REED ->
                manualsHave(drawn, Step.REED)
                        && (hasStep(drawn, division, Step.REED) || !hasStep(all(), division, Step.REED));
        };
    }

    /** The pedal grows alongside the manuals and not before them. */
    private boolean manualsHave(IndexSet drawn, Step step) {
        return organ.manualDivisions().stream().anyMatch(manual -> hasStep(drawn, manual, step));
    }

    private Step step(int stop) {
        return isPedal(division(stop)) ? stepOnPedal(stop(stop)) : stepOnManual(stop(stop));
    }

    private static Step stepOnManual(Stop stop) {
        return switch (stop.family()) {
            case CELESTE, SOLO_REED, CORNET -> Step.COLOUR;
            case MIXTURE -> Step.MIXTURE;
            case MUTATION -> stop.footage().equals(Optional.of(TWELFTH)) ? Step.TWELFTH : Step.COLOUR;
            case CHORUS_REED -> is(stop, EIGHT) ? Step.REED : Step.DEEP_OR_HIGH_REED;
            case PRINCIPAL, FLUTE, STRING -> flue(stop, EIGHT, FOUR);
        };
    }

    private static Step stepOnPedal(Stop stop) {
        return switch (stop.family()) {
            case CELESTE, SOLO_REED, CORNET, MUTATION -> Step.COLOUR;
            case MIXTURE -> Step.MIXTURE;
            case CHORUS_REED -> is(stop, SIXTEEN) ? Step.REED : Step.DEEP_OR_HIGH_REED;
            case PRINCIPAL, FLUTE, STRING -> flue(stop, SIXTEEN, EIGHT);
        };
    }

    private static Step flue(Stop stop, Footage first, Footage second) {
        if (is(stop, first)) {
            return Step.FIRST;
        }
        if (is(stop, second)) {
            return Step.SECOND;
        }
        return stop.footage().orElseThrow().compareTo(first) < 0 ? Step.DEEP : Step.THIRD;
    }

    private boolean has(IndexSet drawn, int division, Footage pitch) {
        return drawn.stream().anyMatch(other -> division(other) == division && is(stop(other), pitch));
    }

    private boolean hasStep(IndexSet drawn, int division, Step step) {
        return drawn.stream().anyMatch(other -> division(other) == division && step(other) == step);
    }

    private IndexSet all() {
        return IndexSet.range(organ.stops().size());
    }

    private static boolean is(Stop stop, Footage pitch) {
        return stop.family() != Family.MIXTURE
                && stop.footage().filter(pitch::equals).isPresent();
    }

    private Stop stop(int stop) {
        return organ.stops().get(stop).stop();
    }

    private int division(int stop) {
        return organ.stops().get(stop).division();
    }

    private boolean isPedal(int division) {
        return organ.divisions().get(division).isPedal();
    }
}
