package versewind.rules;

import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.HandsAndFeet.Layout;

/**
 * What may fix a broken rule of choruses, the likeliest first; each is tried before it is offered. Common practice, no
 * source.
 */
final class Fixes {

    private static final StopClass[] PRINCIPAL_8 = {StopClass.PRINCIPAL_8, StopClass.FLUTE_8, StopClass.STRING_8};
    private static final StopClass[] FLUTE_8 = {StopClass.FLUTE_8, StopClass.STRING_8, StopClass.PRINCIPAL_8};
    private static final StopClass[] FOUR = {StopClass.PRINCIPAL_4, StopClass.FLUTE_4};
    private static final StopClass[] TWO = {StopClass.PRINCIPAL_2, StopClass.FLUTE_2};

    private Fixes() {}

    /** What fixes a fault, the likeliest first. */
    interface Ways extends BiFunction<Chorus, IndexSet, Stream<Fix>> {

        /** Other ways after these. */
        default Ways or(Ways others) {
            return (chorus, offenders) -> Stream.of(this, others).flatMap(ways -> ways.apply(chorus, offenders));
        }
    }

    private static Fix on(Chorus chorus, Registration drawn) {
        return new Fix(drawn, chorus.hands());
    }

    private static IndexSet drawn(Chorus chorus) {
        return chorus.registration().stops();
    }

    /** Without the stops, and couplers that bring nothing then; if nothing is left, with an 8 ft in their place. */
    static Stream<Fix> pushIn(Chorus chorus, IndexSet stops) {
        OrganFacts organ = chorus.organ();
        IndexSet left = drawn(chorus).minus(stops);
        IndexSet couplers = IndexSet.of(chorus.registration().couplers().stream()
                .filter(coupler -> left.meets(organ.allOf(organ.sourceOf(coupler)))
                        || !stops.meets(organ.allOf(organ.sourceOf(coupler)))));
        Registration rest = chorus.registration().withStops(left).withCouplers(couplers);
        Stream<Registration> ways = chorus.sounding().minus(stops).isEmpty()
                ? drawing(chorus, rest, eights(chorus))
                        .filter(drawn -> !drawn.stops().meets(stops))
                : Stream.of(rest);
        return ways.map(drawn -> on(chorus, drawn));
    }

    static Stream<Fix> pushInCouplers(Chorus chorus, IndexSet couplers) {
        return Stream.of(on(
                chorus,
                chorus.registration()
                        .withCouplers(chorus.registration().couplers().minus(couplers))));
    }

    static Stream<Fix> pushInTremulants(Chorus chorus, IndexSet tremulants) {
        return Stream.of(on(
                chorus,
                chorus.registration()
                        .withTremulants(chorus.registration().tremulants().minus(tremulants))));
    }

    /** With a stop of one of the classes. */
    static Ways draw(StopClass... classes) {
        return (chorus, offenders) ->
                drawing(chorus, chorus.registration(), classes).map(drawn -> on(chorus, drawn));
    }

    static Stream<Fix> drawEight(Chorus chorus, IndexSet offenders) {
        return draw(eights(chorus)).apply(chorus, offenders);
    }

    private static StopClass[] eights(Chorus chorus) {
        if (!chorus.isHand()) {
            return new StopClass[] {StopClass.PEDAL_16, StopClass.PEDAL_8};
        }
        return chorus.isPrincipalChorus() ? PRINCIPAL_8 : FLUTE_8;
    }

    /** With the 4 ft that is missing, the 8 ft, or both. */
    static Stream<Fix> drawEightAndFour(Chorus chorus, IndexSet offenders) {
        return drawFirst(chorus, eights(chorus), FOUR);
    }

    /** With the 2 ft that is missing, the 4 ft, or both. */
    static Stream<Fix> drawFourAndTwo(Chorus chorus, IndexSet offenders) {
        return drawFirst(chorus, FOUR, TWO);
    }

    private static Stream<Fix> drawFirst(Chorus chorus, StopClass[] low, StopClass[] high) {
        Registration now = chorus.registration();
        Stream<Registration> both = drawing(chorus, now, low).limit(1).flatMap(drawn -> drawing(chorus, drawn, high)
                .limit(1));
        return Stream.of(drawing(chorus, now, high), drawing(chorus, now, low), both)
                .flatMap(each -> each)
                .map(drawn -> on(chorus, drawn));
    }

    /** With the pitch that leaves a gap. */
    static Stream<Fix> fillGap(Chorus chorus, IndexSet offenders) {
        return draw(Offenders.missing(chorus).orElseThrow() == Pitch.FEET_4 ? FOUR : TWO)
                .apply(chorus, offenders);
    }

    /** With stops of the classes, of the division under the hand before others that sound from there. */
    private static Stream<Registration> drawing(Chorus chorus, Registration from, StopClass... classes) {
        StopChoice choice = StopChoice.of(chorus.organ());
        return IntStream.range(0, from.boxes().size())
                .filter(home -> home == chorus.division() || chorus.sounds(home))
                .boxed()
                .sorted(Comparator.comparing(home -> home != chorus.division()))
                .flatMap(home -> Stream.of(classes).flatMap(wanted -> choice.preferred(home, wanted)))
                .filter(stop -> !from.stops().contains(stop))
                .map(from::toggleStop);
    }

    /** With the partner of a celeste, a string before a flute. */
    static Stream<Fix> drawPartner(Chorus chorus, IndexSet celestes) {
        int home = chorus.organ().divisionOf(celestes.next(0));
        return Stream.of(StopClass.STRING_8, StopClass.FLUTE_8, StopClass.PRINCIPAL_8)
                .flatMap(wanted -> StopChoice.of(chorus.organ()).preferred(home, wanted))
                .map(stop -> on(chorus, chorus.registration().toggleStop(stop)));
    }

    /** With all that was passed over. */
    static Stream<Fix> drawMissing(Chorus chorus, IndexSet mixtures) {
        return drawThem(chorus, Offenders.missingBelow(chorus, mixtures));
    }

    static Stream<Fix> drawThem(Chorus chorus, IndexSet stops) {
        return Stream.of(
                on(chorus, chorus.registration().withStops(drawn(chorus).plus(stops))));
    }

    /** Without all but the first of every class. */
    static Stream<Fix> pushInSeconds(Chorus chorus, IndexSet doubled) {
        IndexSet keep = IndexSet.EMPTY;
        for (StopClass wanted : List.of(StopClass.PRINCIPAL_8, StopClass.PRINCIPAL_4)) {
            keep = keep.plus(IndexSet.of(StopChoice.of(chorus.organ())
                    .preferred(chorus.division(), wanted)
                    .filter(doubled::contains)
                    .limit(1)
                    .mapToInt(stop -> stop)));
        }
        return pushIn(chorus, doubled.minus(keep));
    }

    /** Half open, the boxes in which the pipes of some stops stand. */
    static Stream<Fix> openBox(Chorus chorus, IndexSet stops) {
        Registration drawn = chorus.registration();
        for (int stop : stops.stream().toArray()) {
            drawn = drawn.withBox(chorus.organ().homeOfPipes(stop), BoxPosition.HALF);
        }
        return Stream.of(on(chorus, drawn));
    }

    /** The lightest 16 ft in the place of a heavy one. */
    static Stream<Fix> lighten(Chorus chorus, IndexSet heavy) {
        IndexSet stops = drawn(chorus).minus(heavy);
        IndexSet soft = StopChoice.of(chorus.organ()).soft16();
        return Stream.of(
                on(chorus, chorus.registration().withStops(stops.plus(soft))),
                on(chorus, chorus.registration().withStops(stops)));
    }

    /** A firmer 16 ft and an 8 ft. */
    static Stream<Fix> strengthen(Chorus chorus, IndexSet soft) {
        StopChoice choice = StopChoice.of(chorus.organ());
        IndexSet stops = drawn(chorus).plus(choice.firm16()).plus(choice.first(chorus.division(), StopClass.PEDAL_8));
        return Stream.concat(
                Stream.of(on(chorus, chorus.registration().withStops(stops))),
                draw(StopClass.PEDAL_REED_16, StopClass.PEDAL_4).apply(chorus, soft));
    }

    /** With the coupler that brings the feet what the left hand plays, or the right. */
    static Stream<Fix> coupleFeet(Chorus feet, IndexSet offenders) {
        return Stream.of(feet.hands().left(), feet.hands().right())
                .flatMap(home -> StopChoice.of(feet.organ()).coupler(home, feet.division()).stream()
                        .boxed())
                .filter(coupler -> !feet.registration().couplers().contains(coupler))
                .map(coupler -> on(feet, feet.registration().toggleCoupler(coupler)));
    }

    /** Without couplers of the feet, and with the one of the hands in their place. */
    static Stream<Fix> coupleOtherwise(Chorus feet, IndexSet strange) {
        return pushInCouplers(feet, strange)
                .flatMap(without -> Stream.concat(
                        Stream.of(without),
                        coupleFeet(feet, strange)
                                .map(coupled -> on(
                                        feet,
                                        coupled.registration()
                                                .withCouplers(coupled.registration()
                                                        .couplers()
                                                        .minus(strange))))));
    }

    /** With any stop of the pedal. */
    static Stream<Fix> drawAny(Chorus chorus, IndexSet offenders) {
        return chorus.organ().stopsOf(chorus.division()).stream()
                .map(stop -> on(chorus, chorus.registration().toggleStop(stop)));
    }

    /** An empty hand on a manual that speaks: the other hand’s, else the one with most stops; else an 8 ft drawn. */
    static Stream<Fix> findAVoice(Chorus chorus, IndexSet offenders) {
        HandsAndFeet hands = chorus.hands();
        OrganFacts organ = chorus.organ();
        Stream<Integer> others = organ.manuals().stream()
                .filter(home -> drawn(chorus).meets(organ.allOf(home)))
                .sorted(Comparator.comparing((Integer home) -> home != hands.left() && home != hands.right())
                        .thenComparing(
                                home -> -drawn(chorus).and(organ.allOf(home)).size()));
        Stream<Fix> moved = others.map(home -> new Fix(chorus.registration(), moved(chorus, home)));
        return Stream.concat(moved, drawEight(chorus, offenders));
    }

    private static HandsAndFeet moved(Chorus chorus, int home) {
        HandsAndFeet hands = chorus.hands();
        return switch (chorus.hand()) {
            case BOTH_HANDS -> new HandsAndFeet(hands.layout(), home, home);
            case RIGHT_HAND -> new HandsAndFeet(hands.layout(), home, hands.left());
            case LEFT_HAND -> new HandsAndFeet(hands.layout(), hands.right(), home);
            case FEET -> hands;
        };
    }

    /** A soloed melody in four parts: on the main manual, or on one of those that are played. */
    static Stream<Fix> inFourParts(Chorus chorus, IndexSet offenders) {
        Layout layout = chorus.hands().layout().usesPedal() ? Layout.FOUR_PARTS : Layout.MANUALS_ONLY;
        return Stream.of(
                        chorus.instrument().mainDivision(),
                        chorus.hands().left(),
                        chorus.hands().right())
                .distinct()
                .map(home -> new Fix(chorus.registration(), HandsAndFeet.on(layout, home)));
    }
}
