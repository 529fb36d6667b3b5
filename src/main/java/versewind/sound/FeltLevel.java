package versewind.sound;

import java.util.List;
import versewind.plan.HeardAs;
import versewind.sound.ClearShare.RightBand;

/**
 * The level of a verse as its organist feels it, where it was heard before: its distribution, in dB above the estimate.
 *
 * <p>A mixture: each answer on this very verse says that the level will be felt in the same band again, where it is
 * distributed as estimated; the estimate itself counts as half an answer. So one answer makes the same answer next time
 * 7 in 10 or a little more likely, three make it 9 in 10, and two that differ leave it open. How often organists repeat
 * themselves is an estimate.
 *
 * <p>Source: Dirichlet's distribution with the estimate as its prior mean, textbook.
 *
 * <p>Checked against: {@code FeltLevelTest}.
 *
 * @param right the levels between which the verse is right
 * @param sdDb standard deviation of the level as estimated
 * @param answers what was said of the verse
 */
record FeltLevel(RightBand right, double sdDb, List<HeardAs> answers) {

    /** How many answers the estimate counts for. An estimate. */
    private static final double ESTIMATE = 0.5;

    private static final double NEAR_DB = 0.001;
    private static final double FARTHEST_SDS = 9;

    /** Probability of a felt level below this many dB above the estimate. */
    double below(double levelDb) {
        double sum = ESTIMATE * part(Double.NEGATIVE_INFINITY, levelDb);
        for (HeardAs each : answers) {
            sum += below(each, levelDb);
        }
        return sum / (ESTIMATE + answers.size());
    }

    /** The same where it is felt as in one answer; an answer that no estimate allows is taken at the band's edge. */
    private double below(HeardAs answer, double levelDb) {
        RightBand said = right.where(answer);
        if (levelDb <= said.fromDb() || levelDb >= said.toDb()) {
            return levelDb >= said.toDb() ? 1 : 0;
        }
        double all = part(said.fromDb(), said.toDb());
        return all > 0 ? part(said.fromDb(), levelDb) / all : said.fromDb() > 0 ? 1 : 0;
    }

    private double part(double fromDb, double toDb) {
        return NormalDistribution.between(0, sdDb, fromDb, toDb);
    }

    /** The level in dB above the estimate below which it is felt as often as above it. */
    double medianDb() {
        double lowDb = Math.min(right.fromDb(), 0) - FARTHEST_SDS * sdDb;
        double highDb = Math.max(right.toDb(), 0) + FARTHEST_SDS * sdDb;
        while (highDb - lowDb > NEAR_DB) {
            double middleDb = (lowDb + highDb) / 2;
            if (below(middleDb) < 1.0 / 2) {
                lowDb = middleDb;
            } else {
                highDb = middleDb;
            }
        }
        return highDb;
    }
}
