package versewind.acoustics;

/**
 * Reverberation time from absorption, and absorption from reverberation time.
 *
 * <p>T = 24 ln 10 / c * V / A with the speed of sound c = 343 m/s (20 C), that is 0.1611 V/A.
 *
 * <p>Source: EN 12354-6:2003, 4 (Sabine with air, 4 m V), clause number from memory; Eyring, JASA 1 (1930) 217;
 * Millington, JASA 4 (1932) 69.
 *
 * <p>Differences: the constant is 0.1611, not the usual 0.161 nor the 55.3/345.6 of EN 12354-6: 0.003 dB in the level
 * from a measured time.
 *
 * <p>Checked against: {@code ReverberationTest}.
 */
public final class Reverberation {

    /** Speed of sound in m/s. */
    public static final double SPEED_OF_SOUND_M_S = 343;

    /** Sabine's constant in s/m: 24 ln 10 / c. */
    static final double SABINE_S_M = 24 * Math.log(10) / SPEED_OF_SOUND_M_S;

    private Reverberation() {}

    /**
     * Reverberation time in s by Sabine, 0.1611 V/A.
     *
     * @param volumeM3 volume V in m3
     * @param absorptionM2 equivalent absorption area A in m2, including people and air
     */
    public static double sabineS(double volumeM3, double absorptionM2) {
        requirePositive(volumeM3, "a room's volume");
        requirePositive(absorptionM2, "a room's absorption area");
        return SABINE_S_M * volumeM3 / absorptionM2;
    }

    /** Equivalent absorption area A in m2 of a room with this reverberation time: 0.1611 V/T. */
    public static double absorptionM2(double volumeM3, double timeS) {
        requirePositive(volumeM3, "a room's volume");
        requirePositive(timeS, "a reverberation time");
        return SABINE_S_M * volumeM3 / timeS;
    }

    /**
     * Absorption area of surfaces in m2, the sum of area times coefficient.
     *
     * @param areasM2 area of each surface in m2
     * @param coefficients absorption coefficient of each surface, 0 or more; measured ones can exceed 1
     */
    public static double surfaceAbsorptionM2(double[] areasM2, double[] coefficients) {
        requireCoefficients(areasM2, coefficients);
        double sum = 0;
        for (int surface = 0; surface < areasM2.length; surface++) {
            requirePositive(areasM2[surface], "a surface");
            if (!(coefficients[surface] >= 0)) {
                throw new IllegalArgumentException("surfaces take sound away and add none: " + coefficients[surface]);
            }
            sum += areasM2[surface] * coefficients[surface];
        }
        return sum;
    }

    /**
     * Absorption area of the air in m2, 4 m V.
     *
     * @param attenuationPerM power attenuation m in Np/m, see {@link AirTable}
     */
    public static double airAbsorptionM2(double volumeM3, double attenuationPerM) {
        requirePositive(volumeM3, "a room's volume");
        if (!(attenuationPerM >= 0)) {
            throw new IllegalArgumentException("air takes sound away and adds none: " + attenuationPerM + " Np/m");
        }
        return 4 * attenuationPerM * volumeM3;
    }

    /**
     * Reverberation time in s by Eyring, 0.1611 V / (-S ln(1 - a) + 4 m V), a the mean absorption coefficient.
     *
     * @param volumeM3 volume V in m3
     * @param surfaceM2 area S of all surfaces in m2
     * @param absorptionM2 absorption area S a of all surfaces in m2, without the air; less than S
     * @param airM2 absorption area of the air in m2
     */
    public static double eyringS(double volumeM3, double surfaceM2, double absorptionM2, double airM2) {
        double mean = RoomConstant.meanAbsorption(surfaceM2, absorptionM2);
        return sabineS(volumeM3, -surfaceM2 * Math.log1p(-mean) + airM2);
    }

    /**
     * Reverberation time in s by Millington, 0.1611 V / (sum of -S_i ln(1 - a_i) + 4 m V).
     *
     * @param volumeM3 volume V in m3
     * @param areasM2 area of each surface in m2
     * @param coefficients absorption coefficient of each surface, 0 to less than 1
     * @param airM2 absorption area of the air in m2
     */
    public static double millingtonS(double volumeM3, double[] areasM2, double[] coefficients, double airM2) {
        requireCoefficients(areasM2, coefficients);
        double sum = airM2;
        for (int surface = 0; surface < areasM2.length; surface++) {
            double absorptionM2 = coefficients[surface] * areasM2[surface];
            sum -= areasM2[surface] * Math.log1p(-RoomConstant.meanAbsorption(areasM2[surface], absorptionM2));
        }
        return sabineS(volumeM3, sum);
    }

    private static void requireCoefficients(double[] areasM2, double[] coefficients) {
        if (areasM2.length != coefficients.length) {
            throw new IllegalArgumentException("every surface needs its absorption coefficient");
        }
    }

    /** Requires a finite value above 0. */
    static void requirePositive(double value, String what) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " is more than nothing, not " + value);
        }
    }
}
