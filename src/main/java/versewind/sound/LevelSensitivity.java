package versewind.sound;

import java.util.Arrays;
import versewind.acoustics.ThirdOctaves;

/**
 * How surely levels and margins of what {@link OrganPower} reckoned last are known: the derivative of each by all
 * {@link Parameters}, and with it their standard deviation. A calculator to be used again and again by one thread; nothing
 * here allocates.
 *
 * <p>A level in dB(A) moves with the trim of a rank by the share of its weighted power that the rank contributes; with the
 * trim of a box by the share that comes through it, times what the shutters' position lets of the trim be heard; with the
 * organ and the room dB for dB. The singing moves with the singers dB for dB, and with the room by the share that comes by
 * way of it. A margin moves as the mean over its weights of the difference between what should be heard and what disturbs.
 *
 * <p>Range: first derivatives. The shares themselves move with the trims, which makes a sum of many ranks up to 1 dB louder
 * in the mean than stated; that lies well within the standard deviation.
 *
 * <p>Checked against: {@code SurenessTest}, numerical derivatives, and {@code PlusMinusTest}, organs drawn at random.
 */
final class LevelSensitivity {

    private final Parameters unknowns;
    private final OrganPower power;
    private final double[] toward = new double[ThirdOctaves.COUNT];
    private final double[] away = new double[ThirdOctaves.COUNT];
    private final double[] byTheRoom = new double[ThirdOctaves.COUNT];

    LevelSensitivity(Parameters unknowns, OrganPower power) {
        this.unknowns = unknowns;
        this.power = power;
    }

    /**
     * Derivative of the level of the organ at a seat.
     *
     * @param path from sound power to what is heard, by band
     * @param heard what is heard
     * @param gradient where it is written; zeros when the organ is silent
     */
    void ofOrgan(double[] path, double[] heard, double[] gradient) {
        Arrays.fill(gradient, 0);
        double all = ThirdOctaves.aWeightedPower(heard);
        if (all > 0) {
            for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                toward[band] = ThirdOctaves.aFactor(band) * path[band] / all;
            }
            power.addGradient(toward, toward, unknowns, gradient);
            gradient[unknowns.room()] = gradient[Parameters.ORGAN];
        }
    }

    /** Derivative of the level of the singing; zeros where nobody else sings. */
    void ofSinging(Seats seats, PeoplePresent people, double[] voice, double[] heard, double[] gradient) {
        Arrays.fill(gradient, 0);
        double all = ThirdOctaves.aWeightedPower(heard);
        if (all > 0) {
            seats.singingByTheRoom(people, voice, byTheRoom);
            gradient[unknowns.singers()] = 1;
            gradient[unknowns.room()] = ThirdOctaves.aWeightedPower(byTheRoom) / all;
        }
    }

    /**
     * Derivative of the lead: organ less singing, each band with its weight.
     *
     * @param weights by band, their sum 1
     * @param path from sound power to what is heard of the organ
     * @param heard what is heard of it
     * @param ofSinging derivative of the singing
     * @param gradient where it is written
     */
    void ofLead(double[] weights, double[] path, double[] heard, double[] ofSinging, double[] gradient) {
        againstSinging(1, weights, path, heard, ofSinging, gradient);
    }

    /** Derivative of the words: singing less organ, each band with its weight. */
    void ofWords(double[] weights, double[] path, double[] heard, double[] ofSinging, double[] gradient) {
        againstSinging(-1, weights, path, heard, ofSinging, gradient);
    }

    private void againstSinging(
            int sign, double[] weights, double[] path, double[] heard, double[] ofSinging, double[] gradient) {
        Arrays.fill(gradient, 0);
        shares(sign, weights, path, heard, toward);
        power.addGradient(toward, toward, unknowns, gradient);
        gradient[unknowns.room()] = gradient[Parameters.ORGAN];
        for (int place : new int[] {unknowns.singers(), unknowns.room()}) {
            gradient[place] -= sign * ofSinging[place];
        }
    }

    /** Derivative of a solo line: melody less accompaniment, each band with its weight. */
    void ofSoloLine(double[] weights, double[] path, double[] melody, double[] rest, double[] gradient) {
        Arrays.fill(gradient, 0);
        shares(1, weights, path, melody, toward);
        shares(-1, weights, path, rest, away);
        power.addGradient(toward, away, unknowns, gradient);
        gradient[unknowns.room()] = gradient[Parameters.ORGAN];
    }

    private static void shares(int sign, double[] weights, double[] path, double[] heard, double[] shares) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            shares[band] = heard[band] > 0 ? sign * weights[band] * path[band] / heard[band] : 0;
        }
    }
}
