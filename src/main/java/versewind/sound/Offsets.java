package versewind.sound;

/**
 * What a calibration found of the singers and of the room, which no trim of the organ can hold.
 *
 * @param singersDb how much louder these people sing than is estimated, in dB
 * @param roomDb how much higher the reverberant level of this room is than is estimated, in dB
 */
public record Offsets(double singersDb, double roomDb) {

    /** As estimated. */
    public static final Offsets NONE = new Offsets(0, 0);
}
