package versewind.rules;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import versewind.organ.Coupler;
import versewind.organ.Family;
import versewind.organ.Footage;
import versewind.organ.IndexSet;
import versewind.organ.Pipe;

/**
 * Which of several stops of one class a registration takes first: of the deepest pitch, and of equals the softest, but
 * of three principals of 8 ft the middle one.
 * Common practice, no source.
 *
 * @param organ the instrument
 * @param never stops that are not to be drawn
 * @param drawn stops that are drawn already, and so come before their equals
 * @param hasPedal true if pedal stops may be drawn
 */
record StopChoice(OrganFacts organ, IndexSet never, IndexSet drawn, boolean hasPedal) {

    /** Stops of one kind within so many dB of the loudest are equals, of which the softest is drawn first. */
    private static final double EQUALS_DB = 6;

    private static final List<StopClass> CHORUS = List.of(
            StopClass.PRINCIPAL_8, StopClass.PRINCIPAL_4, StopClass.PRINCIPAL_2, StopClass.MIXTURE, StopClass.REED_8);

    /** Where the lowest pitch of a mixture is not known, in feet. */
    private static final double USUAL_MIXTURE_FEET = 1.5;

    /** Every stop of an instrument may be drawn. */
    static StopChoice of(OrganFacts organ) {
        return new StopChoice(organ, IndexSet.EMPTY, IndexSet.EMPTY, true);
    }

    /**
     * Stops of a class in a division: the deepest first, of one pitch the softest first, strings last. Tubas are no
     * chorus reeds.
     */
    List<Integer> ordered(int division, StopClass wanted) {
        boolean isSilent = division == OrganFacts.NO_PEDAL || (division == organ.pedal() && !hasPedal);
        return isSilent
                ? List.of()
                : organ.stopsOf(division).stream()
                        .filter(stop -> organ.layer(stop) == wanted && !never.contains(stop))
                        .filter(stop -> !organ.bigReeds().contains(stop))
                        .sorted(Comparator.comparingDouble((Integer stop) -> -feet(stop))
                                .thenComparing(stop -> organ.stop(stop).family() == Family.STRING)
                                .thenComparingDouble(organ::levelDb))
                        .toList();
    }

    /**
     * The stops of a class in a division, the one that is drawn first at the head. Of three principals of 8 ft that is
     * the middle one: the smallest carries no chorus, and the largest is kept for the end.
     */
    Stream<Integer> preferred(int division, StopClass wanted) {
        List<Integer> all = byLevel(division, wanted);
        double leastDb = all.isEmpty() ? 0 : organ.levelDb(all.get(all.size() - 1)) - EQUALS_DB;
        List<Integer> equals =
                all.stream().filter(stop -> organ.levelDb(stop) >= leastDb).toList();
        List<Integer> small =
                wanted == StopClass.PRINCIPAL_8 ? equals.subList(0, Math.max(0, equals.size() - 1) / 2) : List.of();
        return ordered(division, wanted).stream()
                .sorted(Comparator.comparing((Integer stop) -> !drawn.contains(stop))
                        .thenComparing(stop -> !equals.contains(stop) || small.contains(stop)));
    }

    /** The first stop of the first class of which the division has any. */
    IndexSet first(int division, StopClass... classes) {
        return IndexSet.of(Stream.of(classes)
                .flatMap(wanted -> preferred(division, wanted))
                .limit(1)
                .mapToInt(stop -> stop));
    }

    /** All stops of a class in a division. */
    IndexSet all(int division, StopClass wanted) {
        return IndexSet.of(ordered(division, wanted).stream().mapToInt(stop -> stop));
    }

    /** All flues of 8 ft of a manual. */
    IndexSet allEights(int division) {
        return IndexSet.of(organ.stopsOf(division).stream()
                .filter(stop -> organ.layer(stop).isEightFootFlue() && !never.contains(stop))
                .mapToInt(stop -> stop));
    }

    /** True if a division has flues of 8 and 4 ft. */
    boolean isChorus(int division) {
        return !first(division, StopClass.PRINCIPAL_8, StopClass.FLUTE_8, StopClass.STRING_8)
                        .isEmpty()
                && !first(division, StopClass.PRINCIPAL_4, StopClass.FLUTE_4).isEmpty();
    }

    /** The solo reed of conical pipes that joins the reeds of its division. */
    IndexSet oboe(int division) {
        return IndexSet.of(ordered(division, StopClass.SOLO_REED).stream()
                .filter(stop ->
                        organ.stop(stop).pipe() == Pipe.CONICAL_REED && !StopClass.isVoxHumana(organ.stop(stop)))
                .limit(1)
                .mapToInt(stop -> stop));
    }

    /** The flues of 16 ft of the pedal, the lightest first; of equals those that have pipes of their own. */
    List<Integer> pedal16() {
        return byLevel(organ.pedal(), StopClass.PEDAL_16).stream()
                .sorted(Comparator.comparingInt(organ::weight)
                        .thenComparing(organ::isBorrowedFromManual)
                        .thenComparing(stop -> !drawn.contains(stop))
                        .thenComparingDouble(organ::levelDb))
                .toList();
    }

    /** The lightest 16 ft of the pedal. */
    IndexSet soft16() {
        return IndexSet.of(pedal16().stream().limit(1).mapToInt(stop -> stop));
    }

    /** The 16 ft that carries a chorus of flues: the firmest kind that is not open, or else the lightest. */
    IndexSet firm16() {
        return pedal16().stream()
                .filter(stop -> !organ.isOpenSixteen(stop))
                .reduce((first, other) -> organ.weight(other) > organ.weight(first) ? other : first)
                .map(IndexSet::of)
                .orElseGet(this::soft16);
    }

    /** The 8 ft of the pedal that carries a chorus: of several neither a stopped one nor the heaviest. */
    IndexSet firm8() {
        List<Integer> all = byLevel(organ.pedal(), StopClass.PEDAL_8).stream()
                .sorted(Comparator.comparingInt(organ::weight).thenComparingDouble(organ::levelDb))
                .toList();
        return all.isEmpty() ? IndexSet.EMPTY : IndexSet.of(all.get(all.size() / 2));
    }

    /** The heaviest 16 ft of the pedal, if that is an open one. */
    IndexSet heavy16() {
        return pedal16().stream()
                .filter(organ::isOpenSixteen)
                .reduce((lighter, heavier) -> heavier)
                .map(IndexSet::of)
                .orElse(IndexSet.EMPTY);
    }

    /**
     * Other manuals that a coupler brings: those of which something is drawn first, then those in a box, then those
     * with the fullest chorus.
     */
    List<Integer> others(int lead) {
        return organ.manuals().stream()
                .filter(division -> !organ.isOneKeyboard(division, lead))
                .filter(division -> !organ.isForSolos(division))
                .filter(division -> !coupler(division, lead).isEmpty())
                .sorted(Comparator.comparing((Integer division) -> !drawn.meets(organ.allOf(division)))
                        .thenComparing(division -> !organ.isEnclosed(division))
                        .thenComparingLong(division -> -CHORUS.stream()
                                .filter(each -> organ.has(division, each))
                                .count()))
                .toList();
    }

    /** The coupler that brings a division to a keyboard at its own pitch. */
    IndexSet coupler(int source, int keyboard) {
        if (keyboard == OrganFacts.NO_PEDAL) {
            return IndexSet.EMPTY;
        }
        OptionalInt found = organ.coupler(Coupler.Kind.UNISON, source, keyboard);
        return found.isPresent() ? IndexSet.of(found.getAsInt()) : IndexSet.EMPTY;
    }

    /** Name of a division. */
    String name(int division) {
        return organ.organ().divisions().get(division).name();
    }

    private double feet(int stop) {
        return organ.stop(stop).footage().map(Footage::feet).orElse(USUAL_MIXTURE_FEET);
    }

    /** The stops of a class that have its deepest pitch, the softest first. */
    private List<Integer> byLevel(int division, StopClass wanted) {
        List<Integer> all = ordered(division, wanted);
        return all.stream().filter(stop -> feet(stop) == feet(all.get(0))).toList();
    }
}
