package versewind.sound;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.BoxPosition;
import versewind.organ.Division;
import versewind.organ.IndexSet;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.organ.Trims;
import versewind.plan.HandsAndFeet;

/**
 * The sound power that leaves an organ for a registration, through its boxes: spectra of powers re 1 pW.
 *
 * <p>Not thread-safe: {@link #compute} sets the spectra that the other methods give, and the next call overwrites them.
 *
 * <p>Checked against: {@code PipeworkTest}, {@code OrganSoundTest}.
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
        this(organ, new Pipework(organ, Tessitura.overPedalTo(topPedalKey(organ))), boxes(organ));
    }

    private OrganPower(Instrument organ, Pipework pipework, List<Optional<Shutters>> shutters) {
        this.pipework = pipework;
        this.shutters = shutters;
        routing = new KeyRouting(organ);
        melodyByPlace = new double[1 + shutters.size()][ThirdOctaves.COUNT];
        restByPlace = new double[1 + shutters.size()][ThirdOctaves.COUNT];
        towardMelody = new double[1 + shutters.size()][ThirdOctaves.COUNT];
        towardRest = new double[1 + shutters.size()][ThirdOctaves.COUNT];
    }

    private static List<Optional<Shutters>> boxes(Instrument organ) {
        return organ.divisions().stream()
                .map(division -> division.box().map(Shutters::new))
                .toList();
    }

    private static int topPedalKey(Instrument organ) {
        return organ.divisions().stream()
                .filter(Division::isPedal)
                .mapToInt(Division::topKey)
                .findFirst()
                .orElse(Integer.MAX_VALUE);
    }

    /** The same organ with other trims, with buffers of its own. */
    OrganPower trimmed(Instrument other) {
        return behind(other, boxes(other));
    }

    /** The same organ with other trims and other shutters, one set for each division with a box. */
    OrganPower behind(Instrument other, List<Optional<Shutters>> others) {
        return new OrganPower(other, pipework.voiced(Trims.of(other)), others);
    }

    /** Whether any key that is played reaches a division. */
    private boolean reaches(int division, Registration drawn, HandsAndFeet hands) {
        return routing.received(hands, drawn.couplers())[division] != 0;
    }

    /** Indices of the stops that are drawn and sound. */
    IndexSet sounding(Instrument organ, Registration drawn, HandsAndFeet hands) {
        IndexSet sounding = drawn.stops();
        for (int stop = sounding.next(0); stop >= 0; stop = sounding.next(stop + 1)) {
            if (!reaches(organ.stops().get(stop).division(), drawn, hands)) {
                sounding = sounding.without(stop);
            }
        }
        return sounding;
    }

    /**
     * What is heard of what is drawn, so that registrations that sound the same are equal: no stops that wait, no
     * couplers that bring nothing, and boxes open behind which nothing sounds.
     */
    Registration heard(Instrument organ, Registration drawn, HandsAndFeet hands) {
        IndexSet stops = sounding(organ, drawn, hands);
        boolean[] sounds = new boolean[shutters.size()];
        boolean[] isHome = new boolean[shutters.size()];
        for (int stop = stops.next(0); stop >= 0; stop = stops.next(stop + 1)) {
            sounds[organ.stops().get(stop).division()] = true;
            isHome[organ.stops().get(organ.rankOf(stop)).division()] = true;
        }
        Registration heard = drawn.withStops(stops);
        for (int division = 0; division < isHome.length; division++) {
            heard = isHome[division] ? heard : heard.withBox(division, BoxPosition.OPEN);
        }
        int[] received = routing.received(hands, drawn.couplers()).clone();
        IndexSet couplers = drawn.couplers();
        for (int coupler = couplers.next(0); coupler >= 0; coupler = couplers.next(coupler + 1)) {
            IndexSet others = heard.couplers().without(coupler);
            int[] without = routing.received(hands, others);
            boolean isIdle = true;
            for (int division = 0; division < sounds.length; division++) {
                isIdle &= !sounds[division] || received[division] == without[division];
            }
            heard = isIdle ? heard.withCouplers(others) : heard;
        }
        return heard;
    }

    /** Computes a registration. */
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
     * Adds the derivative of a quantity q by the trims of organ, recipes, ranks and boxes to a gradient, in q
     * a dB.
     *
     * @param ofMelody derivative by the power P of the soprano, by band: dq = sum of ofMelody P d(10 lg P)
     * @param ofRest the same for all other parts
     * @param parameters where each trim stands in the gradient
     * @param gradient receives the sum
     */
    void addGradient(double[] ofMelody, double[] ofRest, Parameters parameters, double[] gradient) {
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
                gradient[parameters.rank(rank)] += part;
                gradient[parameters.recipe(rank)] += part;
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
                gradient[parameters.box(division)] += sum;
            }
        }
    }

    /** Carries weights of the power outside to the power at a place. */
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

    /** The soprano. */
    double[] melody() {
        return melody;
    }

    /** All other parts. */
    double[] rest() {
        return rest;
    }

    /** All parts. */
    double[] all() {
        return all;
    }

    /** True if nothing sounds. */
    boolean isSilent() {
        return isSilent(all);
    }

    /** True if the soprano sounds nothing. */
    boolean isMelodySilent() {
        return isSilent(melody);
    }

    private static boolean isSilent(double[] power) {
        return ThirdOctaves.aWeightedPower(power) == 0;
    }
}
