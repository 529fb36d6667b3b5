package versewind.proposal;

import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.sound.NormalDistribution;
import versewind.sound.Thresholds;

/**
 * Where the margin of a verse should lie, in dB.
 *
 * <p>Between the thresholds of the verdicts, nearer to this or that one by the mood; an estimate. A playover is weighed
 * as if the people sang to it, and aims a little lower.
 *
 * @param centreDb where it should lie
 * @param halfWidthDb how far on either side it is as good
 */
record Target(double centreDb, double halfWidthDb) {

    private static final double LEAD_HALF_WIDTH_DB = 1.5;
    private static final double WORDS_HALF_WIDTH_DB = 3;
    private static final double SOLO_LINE_HALF_WIDTH_DB = 3;

    /** The target of a verse that is sung, or whose melody is soloed. */
    static Target of(Mode mode, Mood mood) {
        return switch (mode) {
            case CONGREGATION -> new Target(Thresholds.LEAD.goodDb() + aboveLeadDb(mood), LEAD_HALF_WIDTH_DB);
            case SMALL_CHOIR -> new Target(Thresholds.CHOIR_WORDS.goodDb() + aboveClearDb(mood), WORDS_HALF_WIDTH_DB);
            case SOLO_VOICE -> new Target(Thresholds.SOLOIST_WORDS.goodDb() + aboveClearDb(mood), WORDS_HALF_WIDTH_DB);
            case MELODY_SOLOED ->
                new Target(Thresholds.SOLO_LINE.goodDb() + SOLO_LINE_HALF_WIDTH_DB, SOLO_LINE_HALF_WIDTH_DB);
        };
    }

    private static double aboveLeadDb(Mood mood) {
        return switch (mood) {
            case GENTLE -> 1.5;
            case PLAIN -> 2;
            case BRIGHT -> 3.5;
            case FESTAL -> 5.5;
        };
    }

    private static double aboveClearDb(Mood mood) {
        return switch (mood) {
            case GENTLE -> 5;
            case PLAIN -> 4;
            case BRIGHT -> 3;
            case FESTAL -> 2;
        };
    }

    Target lifted(double moreDb) {
        return new Target(centreDb + moreDb, halfWidthDb);
    }

    double lowDb() {
        return centreDb - halfWidthDb;
    }

    double highDb() {
        return centreDb + halfWidthDb;
    }

    /**
     * How far outside the target a margin may be expected to lie, in dB, over what is unavoidable: the mean distance of
     * a normal distribution from the interval, less the same for one whose mean is the centre. 0 at the centre, and
     * more the farther away, but the less steeply the less is known.
     *
     * <p>Formula: E max(0, low - X, X - high) for X normal with mean m and standard deviation s is s (g((m - low)/s) +
     * g((high - m)/s)) with g(z) = phi(z) - z (1 - Phi(z)).
     *
     * <p>Checked against: {@code TargetTest}, integrated numerically.
     *
     * @param marginDb the mean
     * @param sdDb the standard deviation, more than 0
     */
    double distanceDb(double marginDb, double sdDb) {
        return expected(marginDb, sdDb) - expected(centreDb, sdDb);
    }

    private double expected(double marginDb, double sdDb) {
        return sdDb
                * (NormalDistribution.excess((marginDb - lowDb()) / sdDb)
                        + NormalDistribution.excess((highDb() - marginDb) / sdDb));
    }
}
