package versewind.sound;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import versewind.acoustics.ThirdOctaves;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Mode;

/**
 * The balance of one verse: how far the wanted sound stands out from the disturbing one, as a number for a search or
 * with its uncertainty for an estimate.
 *
 * <p>Wanted and disturbing are, at the seat that matters: for a congregation the organ and the singing, for a choir or
 * a soloist the singing and the organ, for a soloed melody the melody and its accompaniment. The singing and the paths
 * through the room are prepared once for a verse.
 *
 * <p>Not thread-safe: it shares the buffers of the {@link OrganSound} that made it.
 *
 * <p>Checked against: {@code MarginEvaluatorTest}.
 */
public final class MarginEvaluator {

    private final OrganPower power;
    private final Hearing hearing;
    private Mode mode;
    private double[] toNave;
    private double[] toSingers;
    private final double[] singing = new double[ThirdOctaves.COUNT];
    private final double[] organ = new double[ThirdOctaves.COUNT];
    private final double[] other = new double[ThirdOctaves.COUNT];
    private final double[] mostOrgan = new double[ThirdOctaves.COUNT];
    private final double[] mostOther = new double[ThirdOctaves.COUNT];
    private final double[] weights = new double[ThirdOctaves.COUNT];
    private final double[] shifted = new double[ThirdOctaves.COUNT];

    MarginEvaluator(OrganPower power, Hearing hearing) {
        this.power = power;
        this.hearing = hearing;
    }

    /** Prepares for the verses of one mode, sung by some people at some seats. */
    MarginEvaluator prepare(Mode accompaniment, PeoplePresent people, Seats seats, double[] voice) {
        mode = accompaniment;
        toNave = seats.organInNave();
        toSingers = seats.organAmong(people.place());
        seats.singing(people, voice, singing);
        return this;
    }

    /** Lower and upper bound of a margin in dB. */
    public record Bounds(double lowDb, double highDb) {}

    /**
     * The margin of a registration in dB, -15 to 15; -15 if nothing leads, 15 if nothing covers the words.
     *
     * @param drawn the registration
     * @param hands how it is played
     */
    public double marginDb(Registration drawn, HandsAndFeet hands) {
        power.compute(drawn, hands);
        listen(organ, other);
        return switch (mode) {
            case CONGREGATION, MELODY_SOLOED -> power.isMelodySilent() ? Margin.COVERED_DB : marginDb();
            case SMALL_CHOIR, SOLO_VOICE -> power.isSilent() ? Margin.CLEAR_DB : marginDb();
        };
    }

    /**
     * Bounds on the margin of every registration between two.
     *
     * @param least stops that are drawn in any case, every box at its least open
     * @param most stops that may be drawn, with the same couplers, every box at its most open
     * @param hands how they are played
     */
    public Bounds boundsDb(Registration least, Registration most, HandsAndFeet hands) {
        power.compute(least, hands);
        boolean isMelodySilent = power.isMelodySilent();
        boolean isSilent = power.isSilent();
        listen(organ, other);
        power.compute(most, hands);
        listen(mostOrgan, mostOther);
        return switch (mode) {
            case SMALL_CHOIR, SOLO_VOICE ->
                new Bounds(
                        hearing.wordsDb(singing, mostOrgan),
                        isSilent ? Margin.CLEAR_DB : hearing.wordsDb(singing, organ));
            case CONGREGATION, MELODY_SOLOED -> {
                if (power.isMelodySilent()) {
                    yield new Bounds(Margin.COVERED_DB, Margin.COVERED_DB);
                }
                Bounds music = hearing.musicDb(organ, mostOrgan, other, mostOther);
                yield isMelodySilent ? new Bounds(Margin.COVERED_DB, music.highDb()) : music;
            }
        };
    }

    /**
     * The margin of the registration that was computed last.
     *
     * @param sensitivity of the same organ
     * @param ofSinging derivative of the level of the singing by the parameters
     * @param covariance of the parameters
     * @param gradient receives the derivative of the margin; unchanged if the margin has no number
     */
    Margin margin(LevelSensitivity sensitivity, double[] ofSinging, Covariance covariance, double[] gradient) {
        Optional<Verdict> silence = verdictOnSilence();
        if (silence.isPresent()) {
            return Margin.of(silence.get());
        }
        listen(organ, other);
        double db = marginDb();
        switch (mode) {
            case CONGREGATION -> {
                hearing.weights(weights);
                sensitivity.ofLead(weights, toSingers, organ, ofSinging, gradient);
            }
            case SMALL_CHOIR, SOLO_VOICE -> {
                Hearing.importance(weights);
                sensitivity.ofWords(weights, toNave, organ, ofSinging, gradient);
            }
            case MELODY_SOLOED -> {
                hearing.weights(weights);
                sensitivity.ofSoloLine(weights, toNave, organ, other, gradient);
            }
        }
        return Margin.of(mode, db, bands(covariance.sdDb(gradient)));
    }

    private Optional<Verdict> verdictOnSilence() {
        if (!power.isMelodySilent()) {
            return Optional.empty();
        }
        return switch (mode) {
            case CONGREGATION -> Optional.of(power.isSilent() ? Verdict.LOST : Verdict.NO_TUNE);
            case SMALL_CHOIR, SOLO_VOICE -> power.isSilent() ? Optional.of(Verdict.CLEAR) : Optional.empty();
            case MELODY_SOLOED -> Optional.of(Verdict.BURIED);
        };
    }

    /**
     * The bands of a margin. It grows with the level of the wanted sound above the disturbing one, which is normally
     * distributed, so the edges of one lie at the edges of the other.
     */
    private Margin.Bands bands(double sdDb) {
        DoubleUnaryOperator marginDb =
                switch (mode) {
                    case CONGREGATION, MELODY_SOLOED -> moreDb -> hearing.musicDb(shifted(organ, moreDb), other);
                    case SMALL_CHOIR, SOLO_VOICE -> moreDb -> hearing.wordsDb(singing, shifted(organ, -moreDb));
                };
        double lowDb = marginDb.applyAsDouble(-sdDb);
        double highDb = marginDb.applyAsDouble(sdDb);
        double lowestDb = marginDb.applyAsDouble(-NormalDistribution.SDS_OF_95_PERCENT * sdDb);
        double highestDb = marginDb.applyAsDouble(NormalDistribution.SDS_OF_95_PERCENT * sdDb);
        return new Margin.Bands(lowestDb, lowDb, highDb, highestDb);
    }

    private double[] shifted(double[] heard, double moreDb) {
        double factor = ThirdOctaves.dbToPower(moreDb);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            shifted[band] = heard[band] * factor;
        }
        return shifted;
    }

    /**
     * Brings the organ, or the melody and its accompaniment, to the seat; beside a congregation the other is its
     * singing.
     */
    private void listen(double[] organHeard, double[] otherHeard) {
        switch (mode) {
            case CONGREGATION -> {
                Seats.multiply(power.all(), toSingers, organHeard);
                System.arraycopy(singing, 0, otherHeard, 0, otherHeard.length);
            }
            case SMALL_CHOIR, SOLO_VOICE -> Seats.multiply(power.all(), toNave, organHeard);
            case MELODY_SOLOED -> {
                Seats.multiply(power.melody(), toNave, organHeard);
                Seats.multiply(power.rest(), toNave, otherHeard);
            }
        }
    }

    private double marginDb() {
        return switch (mode) {
            case CONGREGATION, MELODY_SOLOED -> hearing.musicDb(organ, other);
            case SMALL_CHOIR, SOLO_VOICE -> hearing.wordsDb(singing, organ);
        };
    }
}
