package versewind.acoustics;

/**
 * Level at a seat in a large room by Barron's revised theory: the reverberant sound falls off with distance too, since
 * none of it can arrive before the direct sound.
 *
 * <p>Relative to the same source at 10 m in the open: direct d = 100 Q / r^2; early and late together 31200 (T/V)
 * exp(-0.04 r/T), of which 1 - exp(-1.11/T) arrive within 80 ms; strength G = 10 lg(d + e + l); Lp = LW - 31 + G.
 *
 * <p>Range: seats beyond the critical distance.
 *
 * <p>Source: Barron and Lee, JASA 84 (1988) 618; Barron, Auditorium Acoustics, 2nd ed. (2010), Appendices B.3 and D.3,
 * as quoted in the help pages of a public program.
 *
 * <p>Differences: none known.
 *
 * <p>Checked against: {@code BarronRevisedTheoryTest}.
 *
 * @param direct direct part, re the same source at 10 m in the open
 * @param early reflected part within 80 ms of the direct sound, likewise
 * @param late reflected part after 80 ms, likewise
 */
public record BarronRevisedTheory(double direct, double early, double late) {

    /** Sound power level minus the level at 10 m in the open, 10 lg(4 pi 10^2), rounded as in the source, in dB. */
    private static final double POWER_TO_10_M_DB = 31;

    /**
     * The parts at a seat.
     *
     * @param volumeM3 volume V in m3
     * @param timeS reverberation time T in s
     * @param directivity directivity factor Q of the source toward the seat, 1 for none
     * @param distanceM distance r of the seat in m
     */
    public static BarronRevisedTheory at(double volumeM3, double timeS, double directivity, double distanceM) {
        Reverberation.requirePositive(volumeM3, "a room's volume");
        Reverberation.requirePositive(timeS, "a reverberation time");
        Reverberation.requirePositive(directivity, "a directivity factor");
        Reverberation.requirePositive(distanceM, "a distance");
        double direct = 100 * directivity / (distanceM * distanceM);
        double reflected = 31_200 * timeS / volumeM3 * Math.exp(-0.04 * distanceM / timeS);
        double lateShare = Math.exp(-1.11 / timeS);
        return new BarronRevisedTheory(direct, reflected * (1 - lateShare), reflected * lateShare);
    }

    /** Strength G in dB: the level minus that of the same source at 10 m in the open. */
    public double strengthDb() {
        return ThirdOctaves.powerToDb(direct + early + late);
    }

    /** Clarity C80 in dB: sound within 80 ms over later sound. */
    public double clarityDb() {
        return ThirdOctaves.powerToDb((direct + early) / late);
    }

    /** Level in dB for a source of this sound power level in dB re 1 pW: LW - 31 + G. */
    public double levelDb(double soundPowerDb) {
        return soundPowerDb - POWER_TO_10_M_DB + strengthDb();
    }
}
