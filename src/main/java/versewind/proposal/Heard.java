package versewind.proposal;

import java.util.stream.IntStream;
import versewind.organ.IndexSet;
import versewind.rules.OrganFacts;
import versewind.rules.PlayedRegistration;

/**
 * Where a knob would be heard if it were moved.
 *
 * @param stops all stops of the divisions that are played
 * @param couplers all couplers of the keys that are played
 * @param boxes indices of the divisions behind whose shutters something sounds
 */
record Heard(IndexSet stops, IndexSet couplers, IndexSet boxes) {

    static Heard of(PlayedRegistration played) {
        OrganFacts organ = played.organ();
        return new Heard(
                played.withinEarshot(),
                IndexSet.of(
                        IntStream.range(0, organ.couplers()).filter(each -> played.isPlayed(organ.keyboardOf(each)))),
                boxes(organ, played.sounding()));
    }

    /** The boxes in which the pipes of some stops stand, whoever plays them. */
    static IndexSet boxes(OrganFacts organ, IndexSet stops) {
        return IndexSet.of(
                stops.stream().map(organ::homeOfPipes).filter(organ::isEnclosed).distinct());
    }
}
