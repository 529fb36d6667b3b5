package versewind.sound;

import java.util.Arrays;
import versewind.acoustics.AudibilityProcedure;
import versewind.acoustics.BandAudibility;
import versewind.acoustics.SoundField;
import versewind.acoustics.StationaryLoudness;
import versewind.acoustics.ThirdOctaves;

/**
 * A pair of ears: the loudness of a sound, and the margin of one sound beside another.
 *
 * <p>Not thread-safe: buffers are reused. Nothing here allocates.
 *
 * <p>Checked against: {@code HearingTest}.
 */
final class Hearing {

    private static final int FIRST_WEIGHTED = BandAudibility.FIRST_THIRD_OCTAVE;

    private final StationaryLoudness loudness = new StationaryLoudness(SoundField.DIFFUSE);
    private final BandAudibility audibility = new BandAudibility(AudibilityProcedure.THIRD_OCTAVE);
    private final double[] within = new double[ThirdOctaves.COUNT];
    private final double[] leastWeights = new double[ThirdOctaves.COUNT];
    private final double[] mostWeights = new double[ThirdOctaves.COUNT];
    private final double[] weights = new double[ThirdOctaves.COUNT];

    /**
     * Sets the sound whose loudness {@link #sone} and {@link #phon} give. Bands above the range of ISO 532-1 are cut
     * there.
     */
    void listen(double[] power) {
        for (int band = 0; band < within.length; band++) {
            within[band] = Math.min(power[band], StationaryLoudness.limitPower(band));
        }
        loudness.computePower(within);
    }

    double sone() {
        return loudness.sone();
    }

    double phon() {
        return loudness.phon();
    }

    /**
     * Margin of the words of a voice beside an organ in dB, by the index of ANSI S3.5-1997.
     */
    double wordsDb(double[] voice, double[] organ) {
        audibility.computePower(voice, organ);
        return BandAudibility.marginDb(audibility.index());
    }

    /**
     * Margin of music beside another sound in dB: the audible share of its own loudness. Each band has the weight of
     * the core loudness (ISO 532-1) of the music alone; bands with one core loudness share it evenly, but 160 Hz, the
     * lowest band of the procedure, stands for all three of its group. An estimate.
     */
    double musicDb(double[] music, double[] other) {
        weigh(music, weights);
        audibility.computePower(music, other);
        return BandAudibility.marginDb(audibility.shareAudible(weights));
    }

    private void weigh(double[] music, double[] bands) {
        listen(music);
        for (int band = FIRST_WEIGHTED; band < ThirdOctaves.COUNT; band++) {
            bands[band] = loudness.core(StationaryLoudness.coreOf(band)) * SHARE_OF_CORE[band];
        }
    }

    /**
     * Bounds on {@link #musicDb} from bounds on both sounds in every band: audibility rises with the music in its own
     * band and falls with everything else, and weights rise with the music.
     */
    MarginEvaluator.Bounds musicDb(double[] least, double[] most, double[] otherLeast, double[] otherMost) {
        weigh(least, leastWeights);
        weigh(most, mostWeights);
        audibility.computePower(most, otherLeast, least);
        double highDb = BandAudibility.marginDb(audibility.greatestShareAudible(leastWeights, mostWeights));
        audibility.computePower(least, otherMost, most);
        double lowDb = BandAudibility.marginDb(audibility.leastShareAudible(leastWeights, mostWeights));
        return new MarginEvaluator.Bounds(lowDb, highDb);
    }

    /** Weight of every band in the last {@link #musicDb}; their sum is 1, or 0 in silence. */
    void weights(double[] shares) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            shares[band] = sum > 0 ? weights[band] / sum : 0;
        }
    }

    /** Importance of every band in {@link #wordsDb}; their sum is 1. */
    static void importance(double[] shares) {
        double[] importance = AudibilityProcedure.THIRD_OCTAVE.importance();
        Arrays.fill(shares, 0);
        System.arraycopy(importance, 0, shares, FIRST_WEIGHTED, importance.length);
    }

    private static final double[] SHARE_OF_CORE = new double[ThirdOctaves.COUNT];

    static {
        for (int band = FIRST_WEIGHTED; band < ThirdOctaves.COUNT; band++) {
            int sharing = 0;
            for (int other = FIRST_WEIGHTED; other < ThirdOctaves.COUNT; other++) {
                if (StationaryLoudness.coreOf(other) == StationaryLoudness.coreOf(band)) {
                    sharing++;
                }
            }
            SHARE_OF_CORE[band] = 1.0 / sharing;
        }
    }
}
