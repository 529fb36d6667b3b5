package versewind.proposal;

import java.util.Arrays;
import versewind.rules.StopClass;

/** How many stops of every layer sound from each hand and from the feet. To be used again and again by one thread. */
final class Counts {

    private final int[] drawnIn;
    private final int[][] inDivision;
    private final int[] inRight = new int[StopClass.COUNT];
    private final int[] underRight = new int[StopClass.COUNT];
    private final int[] inLeft = new int[StopClass.COUNT];
    private final int[] inFeet = new int[StopClass.COUNT];

    Counts(int divisions) {
        drawnIn = new int[divisions];
        inDivision = new int[divisions][StopClass.COUNT];
    }

    void clear() {
        Arrays.fill(drawnIn, 0);
        for (int[] each : inDivision) {
            Arrays.fill(each, 0);
        }
        Arrays.fill(inRight, 0);
        Arrays.fill(underRight, 0);
        Arrays.fill(inLeft, 0);
        Arrays.fill(inFeet, 0);
    }

    /** Counts a stop that is drawn, whether it sounds or not. */
    void addDrawn(int division, StopClass layer) {
        drawnIn[division]++;
        inDivision[division][layer.ordinal()]++;
    }

    void addRight(StopClass layer) {
        inRight[layer.ordinal()]++;
    }

    void addUnderRight(StopClass layer) {
        underRight[layer.ordinal()]++;
    }

    void addLeft(StopClass layer) {
        inLeft[layer.ordinal()]++;
    }

    void addFeet(StopClass layer) {
        inFeet[layer.ordinal()]++;
    }

    /** How many stops of a division are drawn. */
    int drawnIn(int division) {
        return drawnIn[division];
    }

    /** How many stops of a layer are drawn in a division. */
    int in(int division, StopClass layer) {
        return inDivision[division][layer.ordinal()];
    }

    /** How many stops of a layer the right hand sounds. */
    int inRight(StopClass layer) {
        return inRight[layer.ordinal()];
    }

    /** How many of them stand under the right hand, not brought by a coupler. */
    int underRight(StopClass layer) {
        return underRight[layer.ordinal()];
    }

    /** How many stops of a layer the left hand sounds. */
    int inLeft(StopClass layer) {
        return inLeft[layer.ordinal()];
    }

    /** How many stops of a layer the feet sound. */
    int inFeet(StopClass layer) {
        return inFeet[layer.ordinal()];
    }

    /** How many flues and reeds of 8 ft the left hand sounds. */
    int eightsInLeft() {
        return inLeft(StopClass.PRINCIPAL_8)
                + inLeft(StopClass.FLUTE_8)
                + inLeft(StopClass.STRING_8)
                + inLeft(StopClass.REED_8)
                + inLeft(StopClass.SOLO_REED);
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
