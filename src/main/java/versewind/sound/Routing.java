package versewind.sound;

import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.plan.HandsAndFeet;

/** {@link KeyRouting} that remember what they were asked last. To be used again and again by one thread. */
public final class Routing {

    private final KeyRouting keys;
    private final int[] received;
    private HandsAndFeet hands;
    private IndexSet couplers = IndexSet.EMPTY;

    /** The keyboards and couplers of an instrument. */
    public Routing(Instrument organ) {
        keys = new KeyRouting(organ);
        received = new int[organ.divisions().size()];
    }

    /**
     * What every division receives.
     *
     * @param playing where hands and feet play
     * @param drawn indices of the couplers drawn
     * @return a set of {@link KeyRouting#bit} places for every division; overwritten when it is asked again, not to be changed
     */
    public int[] received(HandsAndFeet playing, IndexSet drawn) {
        if (!playing.equals(hands) || !drawn.equals(couplers)) {
            keys.route(playing, drawn, received);
            hands = playing;
            couplers = drawn;
        }
        return received;
    }
}
