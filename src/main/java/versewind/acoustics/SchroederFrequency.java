package versewind.acoustics;

/**
 * The frequency above which a room's modes overlap so much that a diffuse field may be reckoned with.
 *
 * <p>Source: Schroeder and Kuttruff, JASA 34 (1962) 76: f = 2000 (T/V)^0.5.
 *
 * <p>Checked against: {@code SchroederFrequencyTest}.
 */
public final class SchroederFrequency {

    private SchroederFrequency() {}

    /**
     * The frequency in Hz.
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
