package versewind.sound;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Footage;
import versewind.organ.Stop;

/**
 * What the pipes of a kind, a pitch and a composition sound, key by key and as the mean over the keys of a part, before
 * any trim; worked out when it is first asked for.
 */
final class Tone {

    private static final int KEYS = 256;
    private static final int LOWEST = -100;

    private final Stop like;
    private final PipeRecipe recipe;
    private final double[][] pipes = new double[KEYS][];
    private final Map<Long, double[]> means = new HashMap<>();

    Tone(Stop stop) {
        like = stop;
        recipe = PipeRecipe.of(stop.family(), stop.pipe());
    }

    /** Whether a stop sounds so, but for its trim. */
    boolean isOf(Stop stop) {
        return like.family() == stop.family()
                && recipe == PipeRecipe.of(stop.family(), stop.pipe())
                && like.ranks() == stop.ranks()
                && isSameLength(like.footage(), stop.footage())
                && like.composition().equals(stop.composition());
    }

    /** By their numbers; the first comparison of two records as such costs Java some milliseconds at the start. */
    private static boolean isSameLength(Optional<Footage> one, Optional<Footage> other) {
        return one.isPresent() == other.isPresent()
                && (one.isEmpty()
                        || (one.get().numerator() == other.get().numerator()
                                && one.get().denominator() == other.get().denominator()));
    }

    /**
     * Mean power re 1 pW by band that a part sounds from one key to below another, as a share of all its time.
     *
     * @param semitones how far above its key each pipe sounds
     */
    double[] mean(Tessitura tessitura, VoicePart part, int semitones, int fromKey, int beforeKey) {
        long which = ((part.ordinal() * 1000L + semitones + 500) * 1000 + fromKey) * 1000 + beforeKey;
        double[] known = means.get(which);
        if (known != null) {
            return known;
        }
        double[] mean = new double[ThirdOctaves.COUNT];
        for (int key = fromKey; key < beforeKey; key++) {
            double share = tessitura.share(part, key);
            if (share > 0) {
                double[] pipe = pipe(key + semitones);
                for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                    mean[band] += share * pipe[band];
                }
            }
        }
        means.put(which, mean);
        return mean;
    }

    private double[] pipe(int key) {
        double[] known = pipes[key - LOWEST];
        if (known != null) {
            return known;
        }
        double[] spectrum = new double[ThirdOctaves.COUNT];
        for (double fundamentalHz : Ranks.fundamentalsHz(like, key)) {
            recipe.addTo(spectrum, fundamentalHz);
        }
        pipes[key - LOWEST] = spectrum;
        return spectrum;
    }
}
