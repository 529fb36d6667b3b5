package versewind.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Division;
import versewind.organ.Footage;
import versewind.organ.Instrument;
import versewind.organ.Stop;

/**
 * The numbered spectra of an instrument: mean power of one part on one rank at one pitch, over a range of keys that are
 * always reached together, before trims.
 *
 * <p>Ranks of one kind, pitch and composition differ only in their trims and share a {@link Tone}: an organ of 100
 * stops has about forty.
 *
 * <p>Checked against: {@code PipeworkTest}.
 */
final class RankSpectra {

    private static final int OCTAVE_SEMITONES = 12;
    private static final int NONE = -1;

    private final Instrument organ;
    private final Tessitura tessitura;
    private final int[] rankOfStop;
    private final int[][] cutsOfRank;
    private final Tone[] toneOfRank;

    private final Map<Long, Integer> numbers = new HashMap<>();
    private final List<double[]> power = new ArrayList<>();
    private final List<VoicePart> parts = new ArrayList<>();

    RankSpectra(Instrument organ, Tessitura tessitura) {
        this.organ = organ;
        this.tessitura = tessitura;
        int stops = organ.stops().size();
        rankOfStop = new int[stops];
        cutsOfRank = new int[stops][0];
        toneOfRank = new Tone[stops];
        List<Tone> tones = new ArrayList<>();
        for (int stop = 0; stop < stops; stop++) {
            int rank = organ.rankOf(stop);
            rankOfStop[stop] = rank;
            cutsOfRank[rank] = withCuts(cutsOfRank[rank], division(stop).topKey());
            if (toneOfRank[rank] == null) {
                toneOfRank[rank] = tone(organ.stops().get(rank).stop(), tones);
            }
        }
    }

    private Division division(int stop) {
        return organ.divisions().get(organ.stops().get(stop).division());
    }

    /** Lower ends of the key ranges of a rank, ascending; the last lies above all keys. */
    private int[] withCuts(int[] cuts, int topKey) {
        int[] more = Arrays.copyOf(cuts, cuts.length + 5);
        more[cuts.length] = Tessitura.LOWEST_KEY;
        more[cuts.length + 1] = Tessitura.LOWEST_KEY + OCTAVE_SEMITONES;
        more[cuts.length + 2] = topKey + 1;
        more[cuts.length + 3] = topKey + 1 - OCTAVE_SEMITONES;
        more[cuts.length + 4] = tessitura.highestKey() + 1;
        Arrays.sort(more);
        int distinct = 0;
        for (int cut : more) {
            if (distinct == 0 || cut != more[distinct - 1]) {
                more[distinct++] = cut;
            }
        }
        return Arrays.copyOf(more, distinct);
    }

    private static Tone tone(Stop stop, List<Tone> tones) {
        for (Tone known : tones) {
            if (known.isOf(stop)) {
                return known;
            }
        }
        Tone tone = new Tone(stop);
        tones.add(tone);
        return tone;
    }

    /** Numbers of the spectra that sound when a part arrives at a stop with a shift in semitones. */
    int[] of(int stop, VoicePart part, int shift) {
        int rank = rankOfStop[stop];
        int semitones = shift + extension(stop, rank);
        int[] cuts = cutsOfRank[rank];
        int[] found = new int[cuts.length];
        int count = 0;
        for (int range = 0; range + 1 < cuts.length && cuts[range] <= tessitura.highestKey(); range++) {
            int played = cuts[range] + shift;
            if (played >= Division.BOTTOM_KEY && played <= division(stop).topKey()) {
                int spectrum = number(rank, part, semitones, range);
                if (spectrum != NONE) {
                    found[count++] = spectrum;
                }
            }
        }
        return Arrays.copyOf(found, count);
    }

    private int extension(int stop, int rank) {
        Stop own = organ.stops().get(stop).stop();
        Stop lender = organ.stops().get(rank).stop();
        if (stop == rank || own.footage().isEmpty() || lender.footage().isEmpty()) {
            return 0;
        }
        return (int) Math.rint(
                own.footage().get().semitones() - lender.footage().get().semitones());
    }

    private int number(int rank, VoicePart part, int semitones, int range) {
        long key = ((rank * 1000L + semitones + 500) * 100 + range) * 100 + part.ordinal();
        Integer known = numbers.get(key);
        if (known != null) {
            return known;
        }
        int[] cuts = cutsOfRank[rank];
        int number = NONE;
        if (tessitura.sounds(part, cuts[range], cuts[range + 1])) {
            number = power.size();
            power.add(toneOfRank[rank].mean(tessitura, part, semitones, cuts[range], cuts[range + 1]));
            parts.add(part);
        }
        numbers.put(key, number);
        return number;
    }

    /** Number of spectra. */
    int count() {
        return power.size();
    }

    /** Mean power re 1 pW by band, before trims; shared, not to be written to. */
    double[] power(int spectrum) {
        return power.get(spectrum);
    }

    /** Part of a spectrum. */
    VoicePart part(int spectrum) {
        return parts.get(spectrum);
    }

    /**
     * Sound power of the pipes of one kind, pitch and composition, by key and as the mean over the keys of a part,
     * before trims. Computed at first use.
     *
     * <p>Checked against: {@code PipeworkTest}.
     */
    private static final class Tone {

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
}
