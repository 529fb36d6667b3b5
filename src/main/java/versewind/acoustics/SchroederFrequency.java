package versewind.acoustics;

/**
 * The frequency above which the modes of a room overlap enough for the sound field to count as diffuse.
 *
 * <p>Source: Schroeder and Kuttruff, JASA 34 (1962) 76: f = 2000 (T/V)^0.5.
 *
 * <p>Checked against: {@code SchroederFrequencyTest}.
 */
public final class SchroederFrequency {

    private SchroederFrequency() {}

    /**
     * The Schroeder frequency in Hz, 2000 (T/V)^0.5.
     *
     * @param volumeM3 volume in m3
     * @param timeS reverberation time in s
     */
    public static double frequencyHz(double volumeM3, double timeS) {
        Reverberation.requirePositive(volumeM3, "a room's volume");
        Reverberation.requirePositive(timeS, "a reverberation time");
        return 2000 * Math.sqrt(timeS / volumeM3);
    }
}
