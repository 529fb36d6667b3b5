package versewind.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import versewind.organ.Division;
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
}
