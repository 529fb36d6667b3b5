package versewind.rules;

import java.util.Optional;
import java.util.stream.IntStream;
import versewind.organ.Coupler;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;

/** The couplers that bring to the pedal what the hands play. */
final class PedalCouplers {
    private PedalCouplers() {}

    /**
     * What is drawn with one such coupler more: one whose division has an 8 ft flue drawn, of the left hand's before the
     * right hand's.
     *
     * @param pedal what the feet play
     */
    static Optional<Registration> drawn(Chorus pedal) {
        HandsAndFeet hands = pedal.hands();
        return find(pedal, hands.left()).or(() -> isSoloed(hands) ? Optional.empty() : find(pedal, hands.right()));
    }

    private static boolean isSoloed(HandsAndFeet hands) {
        return hands.layout() == HandsAndFeet.Layout.MELODY_SOLOED;
    }

    private static Optional<Registration> find(Chorus pedal, int division) {
        if (!hasEightFoot(pedal, division)) {
            return Optional.empty();
        }
        String source = pedal.organ().divisions().get(division).name();
        String keyboard = pedal.organ().divisions().get(pedal.division()).name();
        return IntStream.range(0, pedal.organ().couplers().size())
                .filter(i -> {
                    Coupler coupler = pedal.organ().couplers().get(i);
                    return coupler.kind() == Coupler.Kind.UNISON
                            && coupler.source().equals(source)
                            && coupler.keyboard().equals(keyboard)
                            && !pedal.registration().couplers().contains(i);
                })
                .mapToObj(pedal.registration()::toggleCoupler)
                .findFirst();
    }

    private static boolean hasEightFoot(Chorus pedal, int division) {
        StopFacts specification = pedal.specification();
        return pedal.registration().stops().stream()
                .anyMatch(stop -> specification.divisionOf(stop) == division
                        && Pitch.bitOf(specification.semitones(stop)) == Pitch.FEET_8.bit());
    }
}
