package versewind.sound;

import java.util.Optional;
import java.util.OptionalDouble;
import versewind.acoustics.BandLevels;
import versewind.acoustics.StationaryLoudness;
import versewind.acoustics.ThirdOctaves;

/**
 * The estimated sound of a verse; not a measurement.
 *
 * @param organDba level of the organ in the nave in dB(A); empty if it is silent
 * @param sone loudness of the organ in the nave in sone (ISO 532-1), 0 if it is silent
 * @param dynamic that loudness on the scale of this organ; empty if it is silent
 * @param organAmongSingersDba level of the organ in dB(A) where the singers are, or would be; empty if it is silent
 * @param singers number of people who sing, 0 if the organ plays alone
 * @param singersDba level of the singing in dB(A): for a congregation that of all others at a seat among them, for a
 *     choir or a soloist that in the nave; empty if nobody (else) sings
 * @param balance of organ and singers, or of melody and accompaniment
 * @param lagMs time that sound takes from the organ to the farthest singers, in ms
 * @param lagBeats the same in beats; empty without a tempo
 * @param bands levels of the organ in the nave, by band
 * @param plusMinus standard deviations of the three levels
 */
public record Estimate(
        OptionalDouble organDba,
        double sone,
        Optional<Dynamic> dynamic,
        OptionalDouble organAmongSingersDba,
        int singers,
        OptionalDouble singersDba,
        Balance balance,
        double lagMs,
        OptionalDouble lagBeats,
        BandLevels bands,
        StdDevs plusMinus) {

    /**
     * Standard deviations of the levels in dB: the true level lies within one of them with 68 %, within two with 95 %.
     *
     * @param organDb of the organ in the nave; 0 if it is silent
     * @param organAmongSingersDb of the organ among the singers; 0 if it is silent
     * @param singersDb of the singing; 0 if nobody sings
     */
    public record StdDevs(double organDb, double organAmongSingersDb, double singersDb) {}

    /**
     * Standard deviations of the loudness of the organ in the nave.
     *
     * @param sone of the loudness
     * @param phon of the loudness level
     */
    public record LoudnessStdDevs(double sone, double phon) {}

    /** Half of what lies between an organ one standard deviation of its level stronger and one softer. */
    public LoudnessStdDevs loudnessPlusMinus() {
        double strong = soneAt(plusMinus.organDb());
        double soft = soneAt(-plusMinus.organDb());
        return new LoudnessStdDevs(
                (strong - soft) / 2, (StationaryLoudness.phonOf(strong) - StationaryLoudness.phonOf(soft)) / 2);
    }

    private double soneAt(double moreDb) {
        double[] power = bands.power().clone();
        for (int band = 0; band < power.length; band++) {
            power[band] *= ThirdOctaves.dbToPower(moreDb);
        }
        return new Hearing().sone(power);
    }

    /** Loudness level of the organ in the nave in phon; empty if it is silent. */
    public OptionalDouble phon() {
        return isSilent() ? OptionalDouble.empty() : OptionalDouble.of(StationaryLoudness.phonOf(sone));
    }

    /** True if no pipe speaks. */
    public boolean isSilent() {
        return organDba.isEmpty();
    }
}
