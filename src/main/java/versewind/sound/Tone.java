package versewind.sound;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Footage;
import versewind.organ.Stop;

/**
 * Sound power of the pipes of one kind, pitch and composition, by key and as the mean over the keys of a part, before
 * trims. Computed at first use.
 *
 * <p>Checked against: {@code PipeworkTest}.
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

    /** True if a stop has this tone, apart from its trim. */
    boolean isOf(Stop stop) {
        return like.family() == stop.family()
                && recipe == PipeRecipe.of(stop.family(), stop.pipe())
                && like.ranks() == stop.ranks()
                && isSameLength(like.footage(), stop.footage())
                && like.composition().equals(stop.composition());
    }

    /** Compares by fields: the first equals of a record costs some milliseconds at the start of the program. */
    private static boolean isSameLength(Optional<Footage> one, Optional<Footage> other) {
        return one.isPresent() == other.isPresent()
                && (one.isEmpty()
                        || (one.get().numerator() == other.get().numerator()
                                && one.get().denominator() == other.get().denominator()));
    }

    /**
     * Mean power re 1 pW by band of a part, from one key to below another, over all its time.
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
