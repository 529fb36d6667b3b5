package versewind.sound;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import versewind.organ.Division;
import versewind.organ.Instrument;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;

/**
 * The sound power that leaves an organ, boxes and all, for what is drawn and how it is played. A calculator to be used
 * again and again by one thread: {@link #compute} sets the spectra that the other methods give, powers re 1 pW.
 */
final class OrganPower {

    private final Keys keys;
    private final Pipework pipework;
    private final List<Optional<Shutters>> shutters;

    private final int[] received;
    private final double[][] melodyByPlace;
    private final double[][] restByPlace;
    private final double[] melody = new double[ThirdOctaves.COUNT];
    private final double[] rest = new double[ThirdOctaves.COUNT];
    private final double[] all = new double[ThirdOctaves.COUNT];

    OrganPower(Instrument organ) {
        int topPedalKey = organ.divisions().stream()
                .filter(Division::isPedal)
                .mapToInt(Division::topKey)
                .findFirst()
                .orElse(Integer.MAX_VALUE);
        keys = new Keys(organ);
        pipework = new Pipework(organ, Tessitura.overPedalTo(topPedalKey));
        shutters = organ.divisions().stream()
                .map(division -> division.box().map(Shutters::new))
                .toList();
        received = new int[shutters.size()];
        melodyByPlace = new double[1 + shutters.size()][ThirdOctaves.COUNT];
        restByPlace = new double[1 + shutters.size()][ThirdOctaves.COUNT];
    }

    /** Reckons what leaves the organ. */
    void compute(Registration drawn, HandsAndFeet hands) {
        for (int place = 0; place < restByPlace.length; place++) {
            Arrays.fill(melodyByPlace[place], 0);
            Arrays.fill(restByPlace[place], 0);
        }
        keys.route(hands, drawn.couplers(), received);
        pipework.speak(drawn.stops(), received, melodyByPlace, restByPlace);
        comeOut(drawn, melodyByPlace, melody);
        comeOut(drawn, restByPlace, rest);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            all[band] = melody[band] + rest[band];
        }
    }

    private void comeOut(Registration drawn, double[][] byPlace, double[] sum) {
        System.arraycopy(byPlace[Pipework.OUTSIDE], 0, sum, 0, sum.length);
        for (int division = 0; division < shutters.size(); division++) {
            if (shutters.get(division).isPresent()) {
                double[] passed =
                        shutters.get(division).get().passed(drawn.boxes().get(division));
                double[] inside = byPlace[Pipework.inBox(division)];
                for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                    sum[band] += inside[band] * passed[band];
                }
            }
        }
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
