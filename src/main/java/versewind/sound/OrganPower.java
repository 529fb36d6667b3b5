package versewind.sound;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;

/**
 * The sound power that leaves an organ, boxes and all, for what is drawn and how it is played. A calculator to be used
 * again and again by one thread: {@link #compute} sets the spectra that the other methods give, powers re 1 pW.
 */
final class OrganPower {

    private final KeyRouting routing;
    private final Pipework pipework;
    private final List<Optional<Shutters>> shutters;

    private final double[][] melodyByPlace;
    private final double[][] restByPlace;
    private final double[][] towardMelody;
    private final double[][] towardRest;
    private List<BoxPosition> boxes = List.of();
    private final double[] melody = new double[ThirdOctaves.COUNT];
    private final double[] rest = new double[ThirdOctaves.COUNT];
    private final double[] all = new double[ThirdOctaves.COUNT];

    OrganPower(Instrument organ) {
        this(organ, new Pipework(organ, Tessitura.overPedalTo(topPedalKey(organ))));
    }

    private OrganPower(Instrument organ, Pipework pipework) {
        this.pipework = pipework;
        routing = new KeyRouting(organ);
        shutters = organ.divisions().stream()
                .map(division -> division.box().map(Shutters::new))
                .toList();
        melodyByPlace = new double[1 + shutters.size()][ThirdOctaves.COUNT];
        restByPlace = new double[1 + shutters.size()][ThirdOctaves.COUNT];
        towardMelody = new double[1 + shutters.size()][ThirdOctaves.COUNT];
        towardRest = new double[1 + shutters.size()][ThirdOctaves.COUNT];
    }

    private static int topPedalKey(Instrument organ) {
        return organ.divisions().stream()
                .filter(Division::isPedal)
                .mapToInt(Division::topKey)
                .findFirst()
                .orElse(Integer.MAX_VALUE);
    }

    /** For the same organ with other trims. */
    OrganPower trimmed(Instrument other) {
        return new OrganPower(other, pipework.voiced(Trims.of(other)));
    }

    /** Reckons what leaves the organ. */
    void compute(Registration drawn, HandsAndFeet hands) {
        for (int place = 0; place < restByPlace.length; place++) {
            Arrays.fill(melodyByPlace[place], 0);
            Arrays.fill(restByPlace[place], 0);
        }
        pipework.speak(drawn.stops(), routing.received(hands, drawn.couplers()));
        for (int rank = 0; rank < pipework.ranks(); rank++) {
            if (pipework.speaks(rank)) {
                int place = pipework.place(rank);
                Pipework.add(pipework.melody(rank), melodyByPlace[place]);
                Pipework.add(pipework.rest(rank), restByPlace[place]);
            }
        }
        boxes = drawn.boxes();
        comeOut(melodyByPlace, melody);
        comeOut(restByPlace, rest);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            all[band] = melody[band] + rest[band];
        }
    }

    private void comeOut(double[][] byPlace, double[] sum) {
        System.arraycopy(byPlace[Pipework.OUTSIDE], 0, sum, 0, sum.length);
        for (int division = 0; division < shutters.size(); division++) {
            if (shutters.get(division).isPresent()) {
                double[] passed = shutters.get(division).get().passed(boxes.get(division));
                double[] inside = byPlace[Pipework.inBox(division)];
                for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                    sum[band] += inside[band] * passed[band];
                }
            }
        }
    }

    /**
     * How a quantity moves with every trim, where it moves by so much a unit of power: the derivatives in 1/dB are added
     * to a gradient at the places of the organ, of the ranks and of the boxes.
     *
     * @param ofMelody by band, the relative change of the quantity, in its own unit a dB, times a dB's worth of the
     *     soprano's power: dq = sum of ofMelody P d(10 lg P)
     * @param ofRest the same for all other parts
     * @param unknowns the places
     * @param gradient what is added to
     */
    void addGradient(double[] ofMelody, double[] ofRest, Parameters unknowns, double[] gradient) {
        for (int place = 0; place < towardMelody.length; place++) {
            enter(place, ofMelody, towardMelody[place]);
            enter(place, ofRest, towardRest[place]);
        }
        double whole = 0;
        for (int rank = 0; rank < pipework.ranks(); rank++) {
            if (pipework.speaks(rank)) {
                int place = pipework.place(rank);
                double part = inner(pipework.melody(rank), towardMelody[place])
                        + inner(pipework.rest(rank), towardRest[place]);
                gradient[unknowns.rank(rank)] += part;
                whole += part;
            }
        }
        gradient[Parameters.ORGAN] += whole;
        for (int division = 0; division < shutters.size(); division++) {
            if (shutters.get(division).isPresent()) {
                double[] slope = shutters.get(division).get().slope(boxes.get(division));
                int place = Pipework.inBox(division);
                double sum = 0;
                for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                    sum += slope[band]
                            * (melodyByPlace[place][band] * towardMelody[place][band]
                                    + restByPlace[place][band] * towardRest[place][band]);
                }
                gradient[unknowns.box(division)] += sum;
            }
        }
    }

    /** What a weight of the power outside is for the power at a place. */
    private void enter(int place, double[] outside, double[] inside) {
        if (place == Pipework.OUTSIDE) {
            System.arraycopy(outside, 0, inside, 0, inside.length);
            return;
        }
        Optional<Shutters> box = shutters.get(place - Pipework.inBox(0));
        if (box.isPresent()) {
            double[] passed = box.get().passed(boxes.get(place - Pipework.inBox(0)));
            for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                inside[band] = outside[band] * passed[band];
            }
        }
    }

    private static double inner(double[] one, double[] other) {
        double even = 0;
        double odd = 0;
        for (int band = 0; band < ThirdOctaves.COUNT; band += 2) {
            even += one[band] * other[band];
            odd += one[band + 1] * other[band + 1];
        }
        return even + odd;
    }

    /** What the soprano sounds; overwritten by the next {@link #compute}. */
    double[] melody() {
        return melody;
    }

    /** What all other parts sound; overwritten by the next {@link #compute}. */
    double[] rest() {
        return rest;
    }

    /** Everything; overwritten by the next {@link #compute}. */
    double[] all() {
        return all;
    }

    /** Whether nothing sounds. */
    boolean isSilent() {
        return isSilent(all);
    }

    /** Whether the soprano sounds nothing. */
    boolean isMelodySilent() {
        return isSilent(melody);
    }

    private static boolean isSilent(double[] power) {
        return ThirdOctaves.aWeightedPower(power) == 0;
    }
}
