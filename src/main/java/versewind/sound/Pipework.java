package versewind.sound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Stop;

/**
 * The sound power of every rank of an instrument under every part and octave, worked out once when it opens.
 *
 * <p>The power of a part on a rank is the mean over the keys that the part sounds ({@link Tessitura}). What speaks is a
 * set: a rank that two stops share, or that is reached twice at one pitch, speaks once. Keys that a coupler would shift
 * beyond the compass of the division are silent; an extension has its own pipes. Two different parts on one pipe at once
 * are counted twice; this is rare.
 *
 * <p>A borrowed stop is the rank of its lender: its trim, its recipe and the place where its pipes stand are the lender's.
 *
 * <p>Checked against: {@code PipeworkTest}.
 */
final class Pipework {

    /** Where pipes stand that are in no box. */
    static final int OUTSIDE = 0;

    /** Where pipes stand that are in the box of a division, by its index. */
    static int inBox(int division) {
        return 1 + division;
    }

    private static final int OCTAVE_SEMITONES = 12;

    private final int[] divisionOfStop;
    private final int[][][] voicesOfStop;
    private final double[][] power;
    private final int[] placeOfVoice;
    private final boolean[] melodyOfVoice;

    private final int[] lastSpoken;
    private int moment;

    /** One part on one rank at one pitch, over a range of keys that are reached or not reached together. */
    private record Voice(int rank, Part part, int semitones, int fromKey) {}

    Pipework(Instrument organ, Tessitura tessitura) {
        int stops = organ.stops().size();
        divisionOfStop =
                organ.stops().stream().mapToInt(Instrument.Knob::division).toArray();
        voicesOfStop = new int[stops][Keys.PLACES][];
        Builder builder = new Builder(organ, tessitura);
        for (int stop = 0; stop < stops; stop++) {
            for (int bit = 0; bit < Keys.PLACES; bit++) {
                voicesOfStop[stop][bit] = builder.voices(stop, Keys.part(bit), Keys.semitones(bit));
            }
        }
        power = builder.power.toArray(double[][]::new);
        placeOfVoice = builder.place.stream().mapToInt(Integer::intValue).toArray();
        melodyOfVoice = new boolean[power.length];
        builder.index.forEach((voice, index) -> {
            if (index >= 0) {
                melodyOfVoice[index] = voice.part() == Part.SOPRANO;
            }
        });
        lastSpoken = new int[power.length];
    }

    /**
     * Adds up what speaks.
     *
     * @param stops indices of the stops drawn
     * @param received the set that every division receives, {@link Keys#route}
     * @param melody by place: spectra of powers re 1 pW that the soprano sounds are added here
     * @param rest by place: spectra of all other parts are added here
     */
    void speak(IndexSet stops, int[] received, double[][] melody, double[][] rest) {
        moment++;
        stops.forEach(stop -> {
            for (int bits = received[divisionOfStop[stop]]; bits != 0; bits &= bits - 1) {
                for (int voice : voicesOfStop[stop][Integer.numberOfTrailingZeros(bits)]) {
                    if (lastSpoken[voice] != moment) {
                        lastSpoken[voice] = moment;
                        add(power[voice], (melodyOfVoice[voice] ? melody : rest)[placeOfVoice[voice]]);
                    }
                }
            }
        });
    }

    private static void add(double[] power, double[] sum) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            sum[band] += power[band];
        }
    }

    /** Works out the voices and numbers them. */
    private static final class Builder {
        private final Instrument organ;
        private final Tessitura tessitura;
        private final Map<Integer, TreeSet<Integer>> cutsOfRank = new HashMap<>();
        private final Map<Voice, Integer> index = new HashMap<>();
        private final Map<Long, double[]> pipes = new HashMap<>();
        private final List<double[]> power = new ArrayList<>();
        private final List<Integer> place = new ArrayList<>();

        Builder(Instrument organ, Tessitura tessitura) {
            this.organ = organ;
            this.tessitura = tessitura;
            for (int stop = 0; stop < organ.stops().size(); stop++) {
                int top = division(stop).topKey();
                TreeSet<Integer> cuts = cutsOfRank.computeIfAbsent(organ.rankOf(stop), rank -> new TreeSet<>());
                cuts.add(Tessitura.LOWEST_KEY);
                cuts.add(Tessitura.LOWEST_KEY + OCTAVE_SEMITONES);
                cuts.add(top + 1);
                cuts.add(top + 1 - OCTAVE_SEMITONES);
                cuts.add(tessitura.highestKey() + 1);
            }
        }

        private Division division(int stop) {
            return organ.divisions().get(organ.stops().get(stop).division());
        }

        int[] voices(int stop, Part part, int shift) {
            int rank = organ.rankOf(stop);
            int semitones = shift + extension(stop, rank);
            List<Integer> voices = new ArrayList<>();
            for (int from : cutsOfRank.get(rank)) {
                Integer next = cutsOfRank.get(rank).higher(from);
                boolean reached = from + shift >= Division.BOTTOM_KEY
                        && from + shift <= division(stop).topKey();
                if (next == null || from > tessitura.highestKey() || !reached) {
                    continue;
                }
                int voice = index.computeIfAbsent(new Voice(rank, part, semitones, from), each -> number(each, next));
                if (voice >= 0) {
                    voices.add(voice);
                }
            }
            return voices.stream().mapToInt(Integer::intValue).toArray();
        }

        private int extension(int stop, int rank) {
            Stop own = organ.stops().get(stop).stop();
            Stop lender = organ.stops().get(rank).stop();
            if (own.footage().isEmpty() || lender.footage().isEmpty()) {
                return 0;
            }
            return (int) Math.rint(
                    own.footage().get().semitones() - lender.footage().get().semitones());
        }

        private int number(Voice voice, int beforeKey) {
            double[] mean = new double[ThirdOctaves.COUNT];
            boolean sounds = false;
            for (int key = voice.fromKey(); key < beforeKey; key++) {
                double share = tessitura.share(voice.part(), key);
                if (share > 0) {
                    sounds = true;
                    double[] pipe = pipe(voice.rank(), key + voice.semitones());
                    for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                        mean[band] += share * pipe[band];
                    }
                }
            }
            if (!sounds) {
                return -1;
            }
            power.add(mean);
            place.add(placeOf(voice.rank()));
            return power.size() - 1;
        }

        private int placeOf(int rank) {
            Instrument.Knob knob = organ.stops().get(rank);
            return division(rank).encloses(knob.stop()) ? inBox(knob.division()) : OUTSIDE;
        }

        private double[] pipe(int rank, int key) {
            return pipes.computeIfAbsent(
                    1000L * rank + key, any -> spectrum(organ.stops().get(rank).stop(), key));
        }

        private double[] spectrum(Stop stop, int key) {
            double[] spectrum = new double[ThirdOctaves.COUNT];
            PipeRecipe recipe = PipeRecipe.of(stop.family(), stop.pipe());
            for (double fundamentalHz : Ranks.fundamentalsHz(stop, key)) {
                recipe.addTo(spectrum, fundamentalHz);
            }
            double trim = ThirdOctaves.power(stop.trimDb() + organ.trimDb());
            for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                spectrum[band] *= trim;
            }
            return spectrum;
        }
    }
}
