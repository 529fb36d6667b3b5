package versewind.sound;

import java.util.Arrays;
import versewind.acoustics.ThirdOctaves;

/**
 * The derivatives (one row of a Jacobian) of levels and margins by all {@link Parameters}, for the registration that
 * {@link OrganPower} computed last.
 *
 * <p>The derivative of a level in dB(A) by the trim of a rank is the share of the weighted power that the rank
 * contributes; by the trim of a box the share that comes through it, times the effect of that trim at the position of
 * its shutters; by the organ and the room 1. The derivative of the singing by the singers is 1, by the room the share
 * that comes by way of it. The derivative of a margin is the weighted mean over the bands of that of wanted minus
 * disturbing.
 *
 * <p>Range: first derivatives. The mean of a sum of many ranks is up to 1 dB above the estimate, well within its
 * standard deviation.
 *
 * <p>Not thread-safe: buffers are reused. Nothing here allocates.
 *
 * <p>Checked against: {@code LevelSensitivityTest}, numerical derivatives, and {@code StdDevsTest}, random organs.
 */
final class LevelSensitivity {

    private final Parameters parameters;
    private final OrganPower power;
    private final double[] toward = new double[ThirdOctaves.COUNT];
    private final double[] away = new double[ThirdOctaves.COUNT];
    private final double[] byTheRoom = new double[ThirdOctaves.COUNT];

    LevelSensitivity(Parameters parameters, OrganPower power) {
        this.parameters = parameters;
        this.power = power;
    }

    /**
     * Derivative of the level of the organ at a seat.
     *
     * @param path from sound power to the sound at the seat, by band
     * @param heard the organ at the seat
     * @param gradient receives the derivative; zeros if the organ is silent
     */
    void ofOrgan(double[] path, double[] heard, double[] gradient) {
        Arrays.fill(gradient, 0);
        double all = ThirdOctaves.aWeightedPower(heard);
        if (all > 0) {
            for (int band = 0; band < ThirdOctaves.COUNT; band++) {
                toward[band] = ThirdOctaves.aFactor(band) * path[band] / all;
            }
            addOrgan(toward, toward, gradient);
        }
    }

    /** Derivative of the level of the singing; zeros if nobody else sings. */
    void ofSinging(Seats seats, PeoplePresent people, double[] voice, double[] heard, double[] gradient) {
        Arrays.fill(gradient, 0);
        double all = ThirdOctaves.aWeightedPower(heard);
        if (all > 0) {
            seats.singingByTheRoom(people, voice, byTheRoom);
            gradient[parameters.singers()] = 1;
            gradient[parameters.room()] = ThirdOctaves.aWeightedPower(byTheRoom) / all;
        }
    }

    /**
     * Derivative of the lead: organ minus singing.
     *
     * @param weights by band, their sum 1
     * @param path from sound power to the organ as heard
     * @param heard the organ as heard
     * @param ofSinging derivative of the singing
     * @param gradient receives the derivative
     */
    void ofLead(double[] weights, double[] path, double[] heard, double[] ofSinging, double[] gradient) {
        againstSinging(1, weights, path, heard, ofSinging, gradient);
    }

    /** Derivative of the words: singing minus organ. */
    void ofWords(double[] weights, double[] path, double[] heard, double[] ofSinging, double[] gradient) {
        againstSinging(-1, weights, path, heard, ofSinging, gradient);
    }

    private void againstSinging(
            int sign, double[] weights, double[] path, double[] heard, double[] ofSinging, double[] gradient) {
        Arrays.fill(gradient, 0);
        shares(sign, weights, path, heard, toward);
        addOrgan(toward, toward, gradient);
        gradient[parameters.singers()] -= sign * ofSinging[parameters.singers()];
        gradient[parameters.room()] -= sign * ofSinging[parameters.room()];
    }

    /** Derivative of a solo line: melody minus accompaniment. */
    void ofSoloLine(double[] weights, double[] path, double[] melody, double[] rest, double[] gradient) {
        Arrays.fill(gradient, 0);
        shares(1, weights, path, melody, toward);
        shares(-1, weights, path, rest, away);
        addOrgan(toward, away, gradient);
    }

    /** Adds the derivative by the organ, which is also that by the room. */
    private void addOrgan(double[] ofMelody, double[] ofRest, double[] gradient) {
        power.addGradient(ofMelody, ofRest, parameters, gradient);
        gradient[parameters.room()] = gradient[Parameters.ORGAN];
    }

    private static void shares(int sign, double[] weights, double[] path, double[] heard, double[] shares) {
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            shares[band] = heard[band] > 0 ? sign * weights[band] * path[band] / heard[band] : 0;
        }
    }
}
