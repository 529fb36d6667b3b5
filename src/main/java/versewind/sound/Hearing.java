package versewind.sound;

import java.util.Arrays;
import versewind.acoustics.AudibilityProcedure;
import versewind.acoustics.BandAudibility;
import versewind.acoustics.LoudnessTables;
import versewind.acoustics.SoundField;
import versewind.acoustics.StationaryLoudness;
import versewind.acoustics.ThirdOctaves;

/**
 * One pair of ears: how loud a sound is to them, and how well they hear one beside another. Used again and again by one
 * thread; nothing here allocates.
 */
final class Hearing {

    private static final int FIRST_WEIGHED = BandAudibility.FIRST_THIRD_OCTAVE;

    private final StationaryLoudness loudness = new StationaryLoudness(SoundField.DIFFUSE);
    private final BandAudibility audibility = new BandAudibility(AudibilityProcedure.THIRD_OCTAVE);
    private final double[] within = new double[ThirdOctaves.COUNT];
    private final double[] leastWeights = new double[ThirdOctaves.COUNT];
    private final double[] mostWeights = new double[ThirdOctaves.COUNT];
    private final double[] weights = new double[ThirdOctaves.COUNT];

    /**
     * Hears a sound; {@link #sone} and {@link #phon} then tell how loud it is. A band that is louder than ISO 532-1 goes
     * is taken as loud as it goes.
     */
    void listen(double[] power) {
        System.arraycopy(power, 0, within, 0, within.length);
        for (int band = 0; band < LoudnessTables.LOW_BANDS; band++) {
            within[band] = Math.min(within[band], StationaryLoudness.LOW_LIMIT_POWER);
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
     * Margin in dB of the words of a voice beside an organ: the index of ANSI S3.5-1997 with the standard's importance
     * for speech.
     */
    double wordsDb(double[] voice, double[] organ) {
        audibility.computePower(voice, organ);
        return BandAudibility.marginDb(audibility.index());
    }

    /**
     * Margin in dB of music beside another sound: the audible share of its own loudness. Each band counts with the core
     * loudness (ISO 532-1) that the music has there by itself; bands that share one core loudness share it evenly, but
     * 160 Hz, the lowest band that can be judged, stands for all three of its own. An estimate.
     */
    double musicDb(double[] music, double[] other) {
        weigh(music, weights);
        audibility.computePower(music, other);
        return BandAudibility.marginDb(audibility.shareAudible(weights));
    }

    private void weigh(double[] music, double[] bands) {
        listen(music);
        for (int band = FIRST_WEIGHED; band < ThirdOctaves.COUNT; band++) {
            bands[band] = loudness.core(StationaryLoudness.coreOf(band)) * SHARE_OF_CORE[band];
        }
    }

    /**
     * The bounds of {@link #musicDb} where only bounds of both sounds are known: audibility grows with the music in its own
     * band and falls with everything else, and weights grow with the music.
     *
     * @param least the music has no less in any band
     * @param most the music has no more in any band
     * @param otherLeast the other sound has no less
     * @param otherMost the other sound has no more
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

    /** The weight of every band in the last {@link #musicDb}, as a share of their sum; 0 where nothing was heard. */
    void weights(double[] shares) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            shares[band] = sum > 0 ? weights[band] / sum : 0;
        }
    }

    /** The importance of every band for {@link #wordsDb}, whose sum is 1. */
    static void importance(double[] shares) {
        double[] importance = AudibilityProcedure.THIRD_OCTAVE.importance();
        Arrays.fill(shares, 0);
        System.arraycopy(importance, 0, shares, FIRST_WEIGHED, importance.length);
    }

    private static final double[] SHARE_OF_CORE = new double[ThirdOctaves.COUNT];

    static {
        for (int band = FIRST_WEIGHED; band < ThirdOctaves.COUNT; band++) {
            int sharing = 0;
            for (int other = FIRST_WEIGHED; other < ThirdOctaves.COUNT; other++) {
                if (StationaryLoudness.coreOf(other) == StationaryLoudness.coreOf(band)) {
                    sharing++;
                }
            }
            SHARE_OF_CORE[band] = 1.0 / sharing;
        }
    }
}
