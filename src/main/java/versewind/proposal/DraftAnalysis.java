package versewind.proposal;

import versewind.organ.IndexSet;
import versewind.rules.OrganFacts;
import versewind.rules.StopClass;
import versewind.sound.KeyRouting;
import versewind.sound.VoicePart;

/** What sounds from each hand and from the feet, counted by layers. To be used again and again by one thread. */
final class DraftAnalysis {

    private static final int OCTAVES_EACH_WAY = 1;

    private final OrganFacts organ;
    private final KeyRouting routing;
    private final int melodyBits = bits(VoicePart.SOPRANO);
    private final int tenorBits = bits(VoicePart.TENOR) | bits(VoicePart.ALTO);
    private final int bassBits = bits(VoicePart.BASS_ON_PEDAL);
    private final int unisonBits = unisonBits();
    private final Counts drawn;
    private final Counts withOpen;
    private Counts most;
    private IndexSet open = IndexSet.EMPTY;
    private Draft draft;
    private final int[] listed;
    private int count;
    private int[] received = {};
    private IndexSet idle = IndexSet.EMPTY;

    DraftAnalysis(OrganFacts organ) {
        this.organ = organ;
        routing = new KeyRouting(organ.organ());
        int divisions = organ.organ().divisions().size();
        drawn = new Counts(divisions);
        withOpen = new Counts(divisions);
        most = drawn;
        listed = new int[organ.stops()];
    }

    private static int bits(VoicePart part) {
        int bits = 0;
        for (int octave = -OCTAVES_EACH_WAY; octave <= OCTAVES_EACH_WAY; octave++) {
            bits |= 1 << KeyRouting.bit(part, octave);
        }
        return bits;
    }

    private static int unisonBits() {
        int bits = 0;
        for (VoicePart part : VoicePart.values()) {
            bits |= 1 << KeyRouting.bit(part, 0);
        }
        return bits;
    }

    /** Looks at a draft; what was seen before is forgotten. */
    void look(Draft other) {
        look(other, IndexSet.EMPTY);
    }

    /**
     * Looks at a draft of which something is not decided.
     *
     * @param other what is drawn in any case
     * @param undecided stops that may be drawn besides
     */
    void look(Draft other, IndexSet undecided) {
        draft = other;
        open = undecided;
        received = routing.received(other.hands(), other.couplers());
        idle = IndexSet.EMPTY;
        IndexSet stops = other.stops();
        count(stops, drawn);
        count = 0;
        for (int stop = stops.next(0); stop != IndexSet.NONE; stop = stops.next(stop + 1)) {
            listed[count++] = stop;
            idle = received[organ.divisionOf(stop)] == 0 ? idle.with(stop) : idle;
        }
        most = drawn;
        if (!undecided.isEmpty()) {
            most = withOpen;
            count(stops.plus(undecided), most);
        }
    }

    private void count(IndexSet stops, Counts counts) {
        counts.clear();
        for (int stop = stops.next(0); stop != IndexSet.NONE; stop = stops.next(stop + 1)) {
            int home = organ.divisionOf(stop);
            StopClass layer = organ.layer(stop);
            counts.addDrawn(home, layer);
            if ((received[home] & melodyBits) != 0) {
                counts.addRight(layer);
                if (organ.isOneKeyboard(home, draft.hands().right())) {
                    counts.addUnderRight(layer);
                }
            }
            if ((received[home] & tenorBits) != 0) {
                counts.addLeft(layer);
            }
            if ((received[home] & bassBits) != 0) {
                counts.addFeet(layer);
            }
        }
    }

    Draft draft() {
        return draft;
    }

    /** How many stops are drawn. */
    int count() {
        return count;
    }

    /** The stops drawn, one after another. */
    int stop(int place) {
        return listed[place];
    }

    /** What is drawn. */
    Counts drawn() {
        return drawn;
    }

    /** What is drawn and what may be drawn besides; the same as {@link #drawn} where all is decided. */
    Counts most() {
        return most;
    }

    /** Stops that may be drawn besides. */
    IndexSet open() {
        return open;
    }

    /**
     * A number that two drafts have in common where hands and feet sound as many stops of every kind, and one cannot be
     * told from the other but by comparing: it does not matter which of two trumpets is drawn, nor a flute under a
     * principal of its pitch, nor what is coupled to the feet.
     */
    long shade() {
        long shade = draft.hands().layout().ordinal();
        for (StopClass layer : LAYERS) {
            StopClass cover = layer.cover();
            boolean isOther = cover != layer;
            shade = 31 * shade + (isOther && drawn.inRight(cover) > 0 ? 0 : drawn.inRight(layer));
            shade = 31 * shade + (isOther && drawn.inLeft(cover) > 0 ? 0 : drawn.inLeft(layer));
        }
        boolean isReedy = drawn.inFeet(StopClass.PEDAL_REED_16) + drawn.inFeet(StopClass.PEDAL_REED_8) > 0;
        return 4 * shade + (drawn.inFeet(StopClass.PEDAL_16) > 0 ? 2 : 0) + (isReedy ? 1 : 0);
    }

    private static final StopClass[] LAYERS = StopClass.values();

    /** Stops that are drawn and do not sound. */
    IndexSet idle() {
        return idle;
    }

    boolean isSoloed() {
        return draft.hands().layout().isSoloed();
    }

    /** Whether a hand or the feet play on the keyboard of a division. */
    boolean isUnderHandOrFoot(int division) {
        return division == organ.pedal()
                ? isPedalled()
                : organ.isOneKeyboard(division, draft.hands().right())
                        || organ.isOneKeyboard(division, draft.hands().left());
    }

    /** Whether the feet play. */
    boolean isPedalled() {
        return draft.hands().layout().usesPedal() && organ.pedal() != OrganFacts.NO_PEDAL;
    }

    /** Whether a division sounds from any key that is played. */
    boolean isPlayed(int division) {
        return received[division] != 0;
    }

    /** Whether any part sounds a division at the pitch at which it is played. */
    boolean isAtPitch(int division) {
        return (received[division] & unisonBits) != 0;
    }

    /** Whether something of a division sounds, so that its box matters. */
    boolean isHeard(int division) {
        return isPlayed(division) && drawn.drawnIn(division) > 0;
    }

    /** All stops of the divisions that sound: to move one of them is heard. */
    IndexSet withinEarshot() {
        IndexSet stops = IndexSet.EMPTY;
        for (int division = 0; division < received.length; division++) {
            stops = received[division] != 0 ? stops.plus(organ.allOf(division)) : stops;
        }
        return stops;
    }

    /** Whether the right hand sounds a division. */
    boolean isInRight(int division) {
        return (received[division] & melodyBits) != 0;
    }

    /** Whether the left hand sounds a division. */
    boolean isInLeft(int division) {
        return (received[division] & tenorBits) != 0;
    }

    /** Whether the feet sound a division. */
    boolean isInFeet(int division) {
        return (received[division] & bassBits) != 0;
    }
}
