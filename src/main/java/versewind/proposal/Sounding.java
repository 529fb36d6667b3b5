package versewind.proposal;

import java.util.Arrays;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet.Layout;
import versewind.sound.Keys;
import versewind.sound.Part;
import versewind.sound.Routing;

/** What sounds from each hand and from the feet, counted by layers. To be used again and again by one thread. */
final class Sounding {

    private static final int OCTAVES_EACH_WAY = 1;

    private final Disposition organ;
    private final Routing routing;
    private final int[] drawnIn;
    private final int melodyBits = bits(Part.SOPRANO);
    private final int tenorBits = bits(Part.TENOR) | bits(Part.ALTO);
    private final int bassBits = bits(Part.BASS_ON_PEDAL);
    private final int[] inRight = new int[Layer.COUNT];
    private final int[] underRight = new int[Layer.COUNT];
    private final int[] inLeft = new int[Layer.COUNT];
    private final int[] inFeet = new int[Layer.COUNT];
    private final int[][] inDivision;
    private Draft draft;
    private int[] received = {};
    private IndexSet idle = IndexSet.EMPTY;

    Sounding(Disposition organ) {
        this.organ = organ;
        routing = new Routing(organ.organ());
        int divisions = organ.organ().divisions().size();
        drawnIn = new int[divisions];
        inDivision = new int[divisions][Layer.COUNT];
    }

    private static int bits(Part part) {
        int bits = 0;
        for (int octave = -OCTAVES_EACH_WAY; octave <= OCTAVES_EACH_WAY; octave++) {
            bits |= 1 << Keys.bit(part, octave);
        }
        return bits;
    }

    /** Looks at a draft; what was seen before is forgotten. */
    void look(Draft other) {
        draft = other;
        received = routing.received(other.hands(), other.couplers());
        Arrays.fill(inRight, 0);
        Arrays.fill(underRight, 0);
        Arrays.fill(inLeft, 0);
        Arrays.fill(inFeet, 0);
        Arrays.fill(drawnIn, 0);
        for (int[] each : inDivision) {
            Arrays.fill(each, 0);
        }
        idle = IndexSet.EMPTY;
        IndexSet stops = other.stops();
        for (int stop = stops.next(0); stop != IndexSet.NONE; stop = stops.next(stop + 1)) {
            count(stop);
        }
    }

    private void count(int stop) {
        int home = organ.divisionOf(stop);
        int layer = organ.layer(stop).ordinal();
        drawnIn[home]++;
        inDivision[home][layer]++;
        if (received[home] == 0) {
            idle = idle.with(stop);
            return;
        }
        if ((received[home] & melodyBits) != 0) {
            inRight[layer]++;
            if (organ.isOneKeyboard(home, draft.hands().right())) {
                underRight[layer]++;
            }
        }
        if ((received[home] & tenorBits) != 0) {
            inLeft[layer]++;
        }
        if ((received[home] & bassBits) != 0) {
            inFeet[layer]++;
        }
    }

    Draft draft() {
        return draft;
    }

    /** Stops that are drawn and do not sound. */
    IndexSet idle() {
        return idle;
    }

    boolean isSoloed() {
        return draft.hands().layout() == Layout.MELODY_SOLOED;
    }

    /** Whether the feet play. */
    boolean isPedalled() {
        return draft.hands().layout().usesPedal() && organ.pedal() != Disposition.NO_PEDAL;
    }

    /** Whether a division sounds from any key that is played. */
    boolean isPlayed(int division) {
        return received[division] != 0;
    }

    /** Whether something of a division sounds, so that its box matters. */
    boolean isHeard(int division) {
        return isPlayed(division) && drawnIn[division] > 0;
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

    /** How many stops of a division are drawn. */
    int drawnIn(int division) {
        return drawnIn[division];
    }

    /** How many stops of a layer are drawn in a division. */
    int in(int division, Layer layer) {
        return inDivision[division][layer.ordinal()];
    }

    /** How many stops of a layer the right hand sounds. */
    int inRight(Layer layer) {
        return inRight[layer.ordinal()];
    }

    /** How many of them stand under the right hand, not brought by a coupler. */
    int underRight(Layer layer) {
        return underRight[layer.ordinal()];
    }

    /** How many stops of a layer the left hand sounds. */
    int inLeft(Layer layer) {
        return inLeft[layer.ordinal()];
    }

    /** How many stops of a layer the feet sound. */
    int inFeet(Layer layer) {
        return inFeet[layer.ordinal()];
    }

    /** How many flues and reeds of 8 ft the left hand sounds. */
    int eightsInLeft() {
        return inLeft(Layer.PRINCIPAL_8)
                + inLeft(Layer.FLUTE_8)
                + inLeft(Layer.STRING_8)
                + inLeft(Layer.REED_8)
                + inLeft(Layer.SOLO_REED);
    }

    /** How many stops the right hand sounds without a coupler. */
    int ownOfRight() {
        return sum(underRight);
    }

    /** How many stops the left hand sounds. */
    int inLeft() {
        return sum(inLeft);
    }

    /** How many stops the right hand sounds. */
    int inRight() {
        return sum(inRight);
    }

    private static int sum(int[] layers) {
        int sum = 0;
        for (int count : layers) {
            sum += count;
        }
        return sum;
    }
}
