package versewind.acoustics;

/**
 * The classical field of a source in a room: direct sound that falls off with distance, and a reverberant level that is
 * the same everywhere.
 *
 * <p>Lp = LW + 10 lg(Q/(4 pi r^2) + 4/A). The methods give the mean-square pressure re (20 uPa)^2 for a sound power of
 * 1 pW, so that the power in a band is theirs times 10^(LW/10).
 *
 * <p>Source: Kuttruff, Room Acoustics, 5 (steady-state energy density; the chapter by the publisher's abstract; the
 * formula, with a room constant in the place of A, as in engineeringtoolbox.com); ISO 3741 has the same relation
 * without the direct part.
 *
 * <p>Differences: the characteristic impedance of air is taken as 400 Ns/m3, where it cancels; at 20 C it would add 0.1
 * dB.
 *
 * <p>Checked against: {@code DiffuseFieldTest}.
 */
public final class DiffuseField {

    private DiffuseField() {}

    /** Direct part, Q/(4 pi r^2) in 1/m2, at r m from a source with directivity factor Q. */
    public static double directPerM2(double directivity, double distanceM) {
        Reverberation.requirePositive(directivity, "a directivity factor");
        Reverberation.requirePositive(distanceM, "a distance");
        return directivity / (4 * Math.PI * distanceM * distanceM);
    }

    /** Reverberant part, 4/A in 1/m2, with A m2 of absorption area. */
    public static double reverberantPerM2(double absorptionM2) {
        Reverberation.requirePositive(absorptionM2, "a room's absorption area");
        return 4 / absorptionM2;
    }

    /** Level in dB of both parts together for a source of this sound power level. */
    public static double levelDb(double soundPowerDb, double directivity, double distanceM, double absorptionM2) {
        return soundPowerDb
                + ThirdOctaves.powerToDb(directPerM2(directivity, distanceM) + reverberantPerM2(absorptionM2));
    }

    /** Distance in m at which both parts are equal: (Q A / (16 pi))^0.5. */
    public static double criticalDistanceM(double directivity, double absorptionM2) {
        Reverberation.requirePositive(directivity, "a directivity factor");
        Reverberation.requirePositive(absorptionM2, "a room's absorption area");
        return Math.sqrt(directivity * absorptionM2 / (16 * Math.PI));
    }
}
