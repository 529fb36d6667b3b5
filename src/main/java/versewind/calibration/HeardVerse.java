package versewind.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import versewind.plan.HeardAs;
import versewind.plan.Verse;
import versewind.sound.ClearShare;
import versewind.sound.FeltVerses;
import versewind.sound.NormalDistribution;

/**
 * A verse that was heard, once or on several days alike, and what its answers tell of its felt level.
 *
 * <p>The felt level of a verse is the true one, plus the organist's taste, plus an error of its own of 2.6 dB, which is
 * the same on every day. An answer tells in which band the level lay on that day, which is off by 1.5 dB more: 3 dB
 * together, as of a single answer. But one answer in 50 is a slip, of the day or of the key, and then each of the three
 * is as likely; so that no answer shuts a band out, and answers that deny each other tell little. All of these are
 * estimates.
 *
 * <p>Source: ordered probit with label noise, a uniform share of the likelihood; textbooks of robust statistics.
 *
 * <p>Checked against: {@code FeedbackUpdateTest}, Bayes' rule on a grid.
 */
final class HeardVerse {

    /** Standard deviation in dB of the felt level of a verse about the true one, besides taste. */
    static final double OWN_SD_DB = 2.6;

    /** The answers that can be given. */
    static final int CHOICES = HeardAs.values().length;

    private static final double DAY_SD_DB = 1.5;

    /** Felt levels this far apart are tried, from 48 dB below the estimate to 48 dB above. */
    private static final double STEP_DB = 0.5;

    private static final int LEVELS = 193;

    /** Of two verses each second level is tried, and none that is less likely than this. */
    private static final int COARSELY = 2;

    private static final double NEVER = 1e-7;
    private static final double SLIPS = 0.02;

    private final Verse verse;
    private final int people;
    private final double[] gradient;
    private final ClearShare.RightBand right;
    private final List<HeardRegistration> answers = new ArrayList<>();
    private final double[] likelihood = new double[LEVELS];

    /**
     * A verse without answers yet.
     *
     * @param verse as it is heard
     * @param people present
     * @param gradient derivative of the felt level by the parameters
     * @param right the levels in dB above the estimate at which the verse is right
     */
    HeardVerse(Verse verse, int people, double[] gradient, ClearShare.RightBand right) {
        this.verse = verse;
        this.people = people;
        this.gradient = gradient;
        this.right = right;
        Arrays.fill(likelihood, 1);
    }

    void add(HeardRegistration answer) {
        answers.add(answer);
        for (int place = 0; place < likelihood.length; place++) {
            likelihood[place] *= probability(answer.heard(), levelDb(place));
        }
    }

    double[] gradient() {
        return gradient;
    }

    List<HeardRegistration> answers() {
        return answers;
    }

    Verse verse() {
        return verse;
    }

    int people() {
        return people;
    }

    /** True if another verse is heard just so. */
    boolean isAlike(Verse other, int otherPeople) {
        return FeltVerses.areAlike(verse, people, other, otherPeople);
    }

    /** Probability of an answer at a felt level in dB above the estimate. */
    private double probability(HeardAs answer, double feltDb) {
        return (1 - SLIPS) * meant(answer, feltDb, 0) + SLIPS / CHOICES;
    }

    /**
     * Probability of an answer that is no slip.
     *
     * @param meanDb the felt level in dB above the estimate
     * @param sdDb its standard deviation
     */
    private double meant(HeardAs answer, double meanDb, double sdDb) {
        ClearShare.RightBand said = right.where(answer);
        return NormalDistribution.between(
                meanDb, Math.sqrt(sdDb * sdDb + DAY_SD_DB * DAY_SD_DB), said.fromDb(), said.toDb());
    }

    /** Mean in dB and variance in dB2 of the felt level: by its answers, and a normal distribution made of all else. */
    NormalDistribution.Moments felt(NormalDistribution.Moments rest) {
        double[] weights = weights(rest);
        double sum = 0;
        double mean = 0;
        double square = 0;
        for (int place = 0; place < weights.length; place++) {
            double offDb = levelDb(place) - rest.mean();
            sum += weights[place];
            mean += weights[place] * offDb;
            square += weights[place] * offDb * offDb;
        }
        double off = mean / sum;
        return new NormalDistribution.Moments(rest.mean() + off, square / sum - off * off);
    }

    private double[] weights(NormalDistribution.Moments rest) {
        double[] weights = new double[likelihood.length];
        for (int place = 0; place < weights.length; place++) {
            weights[place] = likelihood[place] * normal(place, rest);
        }
        return weights;
    }

    /** Probability of all its answers, given all else. */
    double probability(NormalDistribution.Moments rest) {
        double sum = 0;
        for (double weight : weights(rest)) {
            sum += weight;
        }
        return sum;
    }

    /** Probability of an answer, unless it is a slip, where the felt level is distributed so. */
    double meant(HeardAs answer, NormalDistribution.Moments felt) {
        return meant(answer, felt.mean(), Math.sqrt(felt.variance()));
    }

    /**
     * Probability of an answer on this verse together with one on another, unless they are slips.
     *
     * @param felt the felt level, of mean 0
     * @param otherFelt that of the other, of mean 0
     * @param covariance of both in dB2
     */
    double meant(
            HeardAs answer,
            NormalDistribution.Moments felt,
            HeardVerse other,
            HeardAs otherAnswer,
            NormalDistribution.Moments otherFelt,
            double covariance) {
        double slope = covariance / felt.variance();
        double restSdDb = Math.sqrt(Math.max(0, otherFelt.variance() - slope * covariance));
        double sum = 0;
        for (int place = 0; place < LEVELS; place += COARSELY) {
            double levelDb = levelDb(place);
            double here = COARSELY * normal(place, felt);
            if (here > NEVER) {
                sum += here * meant(answer, levelDb, 0) * other.meant(otherAnswer, slope * levelDb, restSdDb);
            }
        }
        return sum;
    }

    /** Probability of a place of the felt level. */
    private static double normal(int place, NormalDistribution.Moments felt) {
        double off = levelDb(place) - felt.mean();
        return STEP_DB * Math.exp(-off * off / (2 * felt.variance())) / Math.sqrt(2 * Math.PI * felt.variance());
    }

    private static double levelDb(int place) {
        return STEP_DB * (place - LEVELS / 2);
    }
}
