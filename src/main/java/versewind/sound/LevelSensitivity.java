package versewind.sound;

import java.util.Arrays;
import versewind.acoustics.ThirdOctaves;

/**
 * The derivatives (one row of a Jacobian) of levels by all {@link Parameters}, for the registration that {@link
 * OrganPower} computed last.
 *
 * <p>The derivative of a level by the trim of a rank is the share of the weighted power that the rank contributes; by
 * the trim of a box the share that comes through it, times the effect of that trim at the position of its shutters; by
 * the organ 1; by the room the mean over the bands of that of the path, see {@link Path}. The derivative of the singing
 * by the singers is 1, by the room the share that comes by way of it.
 *
 * <p>Range: first derivatives. The mean of a sum of many ranks is up to 1 dB above the estimate, well within its
 * standard deviation.
 *
 * <p>Not thread-safe: buffers are reused. Nothing here allocates.
 *
 * <p>Checked against: {@code LevelSensitivityTest}, numerical derivatives, and {@code StdDevsTest}, random organs.
 */
final class LevelSensitivity {

    private static final double[] NOTHING = new double[ThirdOctaves.COUNT];

    private final Parameters parameters;
    private final OrganPower power;
    private final double[] weights = new double[ThirdOctaves.COUNT];
    private final double[] toward = new double[ThirdOctaves.COUNT];
    private final double[] byTheRoom = new double[ThirdOctaves.COUNT];

    /** What of the organ is heard. */
    enum Part {
        ALL,
        /** The soprano. */
        MELODY,
        /** All but the soprano. */
        REST
    }

    LevelSensitivity(Parameters parameters, OrganPower power) {
        this.parameters = parameters;
        this.power = power;
    }

    /**
     * Derivative of the level of the organ in dB(A).
     *
     * @param path to the seat
     * @param heard the organ at the seat
     * @param gradient receives the derivative; zeros if the organ is silent
     */
    void ofOrgan(Path path, double[] heard, double[] gradient) {
        aWeigh(heard, weights);
        ofOrgan(Part.ALL, weights, path, heard, gradient);
    }

    /** The share of each band in a level in dB(A); zeros in silence. */
    static void aWeigh(double[] heard, double[] weights) {
        double all = ThirdOctaves.aWeightedPower(heard);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            weights[band] = all > 0 ? ThirdOctaves.aFactor(band) * heard[band] / all : 0;
        }
    }

    /**
     * Derivative of a level of the organ, or a part of it.
     *
     * @param part what is heard
     * @param bands weight of each band, their sum 1
     * @param path to the seat
     * @param heard that part at the seat
     * @param gradient receives the derivative
     */
    void ofOrgan(Part part, double[] bands, Path path, double[] heard, double[] gradient) {
        Arrays.fill(gradient, 0);
        double ofRoom = 0;
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            boolean isHeard = heard[band] > 0;
            toward[band] = isHeard ? bands[band] * path.gain()[band] / heard[band] : 0;
            ofRoom += isHeard ? bands[band] * path.byTheRoom()[band] : 0;
        }
        switch (part) {
            case ALL -> power.addGradient(toward, toward, parameters, gradient);
            case MELODY -> power.addGradient(toward, NOTHING, parameters, gradient);
            case REST -> power.addGradient(NOTHING, toward, parameters, gradient);
        }
        gradient[parameters.room()] = ofRoom;
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
}
