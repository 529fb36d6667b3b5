package versewind.sound;

import java.util.function.DoubleUnaryOperator;
import versewind.acoustics.ThirdOctaves;
import versewind.plan.Mode;
import versewind.plan.Verse;

/**
 * Who hears whom: the margin of what should be heard beside what disturbs it, and how surely it is known. A calculator to
 * be used again and again by one thread, after {@link OrganPower} has reckoned the verse.
 */
final class MarginCalculator {

    /** How many standard deviations a normal distribution has on either side of its mean for 95 %. */
    private static final double SDS_OF_95_PERCENT = 1.959964;

    private final Hearing hearing;
    private final OrganPower power;
    private final LevelSensitivity sureness;
    private final double[] gradient;
    private final double[] weights = new double[ThirdOctaves.COUNT];
    private final double[] melody = new double[ThirdOctaves.COUNT];
    private final double[] rest = new double[ThirdOctaves.COUNT];
    private final double[] shifted = new double[ThirdOctaves.COUNT];

    /**
     * What is heard of a verse, by band; arrays that are overwritten with every verse.
     *
     * @param organInNave the organ in the nave
     * @param organAmongSingers the organ among the singers
     * @param singing the singing
     * @param ofSinging derivative of the singing's level by the {@link Parameters}
     */
    @SuppressWarnings("ArrayRecordComponent") // shared on purpose, so that nothing is allocated for a verse
    record Heard(double[] organInNave, double[] organAmongSingers, double[] singing, double[] ofSinging) {}

    MarginCalculator(Hearing hearing, OrganPower power, LevelSensitivity sureness, int unknowns) {
        this.hearing = hearing;
        this.power = power;
        this.sureness = sureness;
        gradient = new double[unknowns];
    }

    /** Derivative of the last margin that has a number by the {@link Parameters}. */
    double[] gradient() {
        return gradient;
    }

    /** The margin of the verse that was reckoned last. */
    Margin margin(Verse verse, PeoplePresent people, Seats seats, Heard heard, Covariance known) {
        if (verse.mode() == Mode.MELODY_SOLOED) {
            return soloLine(seats, known);
        }
        if (!verse.isSung()) {
            return Margin.NONE;
        }
        return switch (people.place()) {
            case IN_THE_NAVE -> lead(verse, seats, heard, known);
            case AT_THE_CHOIR -> words(verse, seats, heard, known);
        };
    }

    private Margin lead(Verse verse, Seats seats, Heard heard, Covariance known) {
        if (power.isSilent()) {
            return Margin.of(Verdict.LOST);
        }
        if (power.isMelodySilent()) {
            return Margin.of(Verdict.NO_TUNE);
        }
        double[] organ = heard.organAmongSingers();
        double db = hearing.musicDb(organ, heard.singing());
        hearing.weights(weights);
        double[] path = seats.organAmong(PeoplePresent.Place.IN_THE_NAVE);
        sureness.ofLead(weights, path, organ, heard.ofSinging(), gradient);
        return Margin.of(
                verse.mode(), db, spread(known, moreDb -> hearing.musicDb(shifted(organ, moreDb), heard.singing())));
    }

    private Margin words(Verse verse, Seats seats, Heard heard, Covariance known) {
        if (power.isSilent()) {
            return Margin.of(Verdict.CLEAR);
        }
        double[] organ = heard.organInNave();
        double db = hearing.wordsDb(heard.singing(), organ);
        Hearing.importance(weights);
        sureness.ofWords(weights, seats.organInNave(), organ, heard.ofSinging(), gradient);
        return Margin.of(
                verse.mode(), db, spread(known, moreDb -> hearing.wordsDb(heard.singing(), shifted(organ, -moreDb))));
    }

    private Margin soloLine(Seats seats, Covariance known) {
        if (power.isMelodySilent()) {
            return Margin.of(Verdict.BURIED);
        }
        seats.organInNave(power.melody(), melody);
        seats.organInNave(power.rest(), rest);
        double db = hearing.musicDb(melody, rest);
        hearing.weights(weights);
        sureness.ofSoloLine(weights, seats.organInNave(), melody, rest, gradient);
        return Margin.of(
                Mode.MELODY_SOLOED, db, spread(known, moreDb -> hearing.musicDb(shifted(melody, moreDb), rest)));
    }

    /**
     * Where a margin may lie: it is a rising function of how far one sound stands above the other, and that has a normal
     * distribution, so that the bounds of the one lie at those of the other.
     */
    private MarginBands spread(Covariance known, DoubleUnaryOperator marginDb) {
        double sdDb = known.sdDb(gradient);
        double lowDb = marginDb.applyAsDouble(-sdDb);
        double highDb = marginDb.applyAsDouble(sdDb);
        double lowestDb = marginDb.applyAsDouble(-SDS_OF_95_PERCENT * sdDb);
        double highestDb = marginDb.applyAsDouble(SDS_OF_95_PERCENT * sdDb);
        return new MarginBands(lowestDb, lowDb, highDb, highestDb);
    }

    private double[] shifted(double[] heard, double moreDb) {
        double factor = ThirdOctaves.dbToPower(moreDb);
        for (int band = 0; band < ThirdOctaves.COUNT; band++) {
            shifted[band] = heard[band] * factor;
        }
        return shifted;
    }
}
