package versewind.sound;

/**
 * Corrections to the singers and the room, which no trim of the organ can express.
 *
 * @param singersDb level of the singers above the estimate, in dB
 * @param roomDb reverberant level of the room above the estimate, in dB
 */
public record Offsets(double singersDb, double roomDb) {

    /** No corrections. */
    public static final Offsets NONE = new Offsets(0, 0);

    /** Both corrections together. */
    public Offsets plus(Offsets others) {
        return new Offsets(singersDb + others.singersDb, roomDb + others.roomDb);
    }
}
