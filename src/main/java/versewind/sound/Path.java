package versewind.sound;

import versewind.acoustics.ThirdOctaves;

/** The way of sound from a source to a seat, by band. Its arrays are shared and not to be written to. */
final class Path {

    private final double[] gain;
    private final double[] byTheRoom;

    /**
     * A path.
     *
     * @param gain mean-square pressure re (20 uPa)^2 for a sound power of 1 pW
     * @param byTheRoom derivative of the level at the seat by the reverberant level of the room, in dB/dB: 0 where only
     *     the direct sound is heard, 1 where only the room is
     */
    Path(double[] gain, double[] byTheRoom) {
        this.gain = gain;
        this.byTheRoom = byTheRoom;
    }

    double[] gain() {
        return gain;
    }

    double[] byTheRoom() {
        return byTheRoom;
    }

    /** Brings a sound power to the seat. */
    void carry(double[] power, double[] heard) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            heard[band] = power[band] * gain[band];
        }
    }
}
