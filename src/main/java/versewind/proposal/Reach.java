package versewind.proposal;

import java.util.stream.IntStream;
import versewind.organ.IndexSet;
import versewind.rules.OrganFacts;
import versewind.sound.KeyRouting;

/** How far hands and feet reach: the divisions that a draft plays. Belongs to one thread, as the routing does. */
final class Reach {

    private final OrganFacts organ;
    private final KeyRouting routing;

    Reach(OrganFacts organ) {
        this.organ = organ;
        routing = new KeyRouting(organ.organ());
    }

    /** All stops of the divisions that are played: each is heard where it is drawn. */
    IndexSet stops(Draft draft) {
        int[] received = routing.received(draft.hands(), draft.couplers());
        IndexSet all = IndexSet.EMPTY;
        for (int division = 0; division < received.length; division++) {
            all = received[division] == 0 ? all : all.plus(organ.allOf(division));
        }
        return all;
    }

    /** All couplers of the keys that are played. */
    IndexSet couplers(Draft draft) {
        int[] received = routing.received(draft.hands(), draft.couplers());
        return IndexSet.of(
                IntStream.range(0, organ.couplers()).filter(coupler -> received[organ.keyboardOf(coupler)] != 0));
    }

    /** Bits of the divisions whose boxes are heard: their pipes sound, whoever plays them. */
    long boxesHeard(Draft draft) {
        int[] received = routing.received(draft.hands(), draft.couplers());
        long heard = 0;
        IndexSet stops = draft.stops();
        for (int stop = stops.next(0); stop != IndexSet.NONE; stop = stops.next(stop + 1)) {
            if (received[organ.divisionOf(stop)] != 0) {
                heard |= 1L << organ.homeOfPipes(stop) & enclosed();
            }
        }
        return heard;
    }

    private long enclosed() {
        long enclosed = 0;
        for (int division = 0; division < organ.organ().divisions().size(); division++) {
            enclosed |= organ.isEnclosed(division) ? 1L << division : 0;
        }
        return enclosed;
    }
}
