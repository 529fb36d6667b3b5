package versewind.acoustics;

/**
 * The room constant R = S a / (1 - a) in m2, with the area S of all surfaces and their mean absorption coefficient a:
 * the absorption that sound meets after its first reflection.
 *
 * <p>Source: Beranek, Acoustics (1954), 10.14, clause from memory; the formula and its reason as in JBL, Sound System
 * Design Reference Manual, 5-17.
 *
 * <p>Checked against: {@code RoomConstantTest}.
 */
public final class RoomConstant {

    private RoomConstant() {}

    /**
     * The room constant R in m2.
     *
     * @param surfaceM2 area S of all surfaces in m2
     * @param absorptionM2 absorption area S a in m2, less than S
     */
    public static double roomConstantM2(double surfaceM2, double absorptionM2) {
        return absorptionM2 / (1 - meanAbsorption(surfaceM2, absorptionM2));
    }

    /**
     * Mean absorption coefficient of surfaces, 0 to below 1.
     *
     * @throws IllegalArgumentException if the absorption is below 0 or leaves no reverberation
     */
    public static double meanAbsorption(double surfaceM2, double absorptionM2) {
        Reverberation.requirePositive(surfaceM2, "a room's surface");
        if (!(absorptionM2 >= 0)) {
            throw new IllegalArgumentException("surfaces take sound away and add none: " + absorptionM2 + " m2");
        }
        if (absorptionM2 >= surfaceM2) {
            throw new IllegalArgumentException("the surfaces absorb " + absorptionM2 + " m2, as much as or more than "
                    + "their own " + surfaceM2 + " m2: such a room has no reverberation");
        }
        return absorptionM2 / surfaceM2;
    }
}
