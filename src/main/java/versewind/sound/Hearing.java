package versewind.sound;

import versewind.acoustics.AudibilityProcedure;
import versewind.acoustics.BandAudibility;
import versewind.acoustics.SoundField;
import versewind.acoustics.StationaryLoudness;
import versewind.acoustics.ThirdOctaves;

/**
 * A pair of ears: the loudness of a sound, its clear share beside another, and how well words are understood.
 *
 * <p>The clear share of a sound S beside another D is (N(S + D) - N(D)) / N(S + D), 0 to 1, with N the loudness of ISO
 * 532-1 in a diffuse field: what would be missing from all that is heard if S fell silent. The loudness is published,
 * this use of it an estimate.
 *
 * <p>Not thread-safe: buffers are reused. Nothing here allocates.
 *
 * <p>Checked against: {@code HearingTest}, {@code TrialTableTest}.
 */
final class Hearing {

    private final StationaryLoudness loudness = new StationaryLoudness(SoundField.DIFFUSE);
    private final BandAudibility audibility = new BandAudibility(AudibilityProcedure.THIRD_OCTAVE);
    private final double[] within = new double[ThirdOctaves.COUNT];

    /** Loudness in sone. Bands above the range of ISO 532-1 are cut there. */
    double sone(double[] power) {
        for (int band = 0; band < within.length; band++) {
            within[band] = Math.min(power[band], StationaryLoudness.limitPower(band));
        }
        loudness.computePower(within);
        return loudness.sone();
    }

    /**
     * Clear share of a sound, 0 to 1; 0 if nothing is heard at all.
     *
     * @param sound powers of S
     * @param other powers of D
     * @param otherSone loudness of D in sone
     */
    double share(double[] sound, double[] other, double otherSone) {
        for (int band = 0; band < within.length; band++) {
            within[band] = Math.min(sound[band] + other[band], StationaryLoudness.limitPower(band));
        }
        loudness.computePower(within);
        double all = loudness.sone();
        return all > 0 ? Math.max(0, 1 - otherSone / all) : 0;
    }

    /** Speech intelligibility index of a voice beside an organ, 0 to 1, by ANSI S3.5-1997 in third octaves. */
    double words(double[] voice, double[] organ) {
        audibility.computePower(voice, organ);
        return audibility.index();
    }
}
