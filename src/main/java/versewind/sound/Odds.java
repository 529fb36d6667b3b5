package versewind.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import versewind.plan.Mode;

/**
 * The odds of every verdict on a verse, from the weakest sound to the strongest; they add up to 1.
 *
 * @param all empty where nothing is in doubt
 */
public record Odds(List<Chance> all) {

    /** Nothing is in doubt. */
    static final Odds NONE = new Odds(List.of());

    /** From these odds on a verdict is sure, as far as an estimate can be. */
    static final double SURE = 0.75;

    private static final double WORTH_A_WORD = 0.15;
    static final int TENTHS = 10;
    private static final int HUNDRED = 100;

    public Odds {
        all = List.copyOf(all);
    }

    /**
     * The odds of one verdict.
     *
     * @param verdict the verdict
     * @param odds 0 to 1
     */
    public record Chance(Verdict verdict, double odds) {}

    /** A share that grows with the level of the wanted sound and falls with that of the other. */
    @FunctionalInterface
    interface Share {
        /** The share, 0 to 1, where both sounds are so many dB stronger than estimated. */
        double at(double wantedDb, double otherDb);
    }

    /**
     * What is known of two levels: a normal distribution about the estimate.
     *
     * @param wantedVariance of the level of the wanted sound, in dB2
     * @param otherVariance of the level of the other, in dB2
     * @param covariance of both, in dB2
     */
    record Doubt(double wantedVariance, double otherVariance, double covariance) {}

    /**
     * The odds of every verdict: both levels are carried through the share at a few quantiles, since a share is bounded
     * and not normally distributed.
     *
     * <p>The difference of the levels takes whole standard deviations from -3 to 3, between which the logit of the
     * share is interpolated, and an edge of a verdict has the probability of the normal distribution below it. What
     * both levels may be off besides, which hardly matters to a share, takes the 3 nodes of Gauss and Hermite, 0 and
     * +-3^0.5 standard deviations with weights 2/3 and 1/6.
     *
     * <p>Range: within 0.02 (an estimate). Source: Gauss-Hermite quadrature; nodes and weights of order 3 from
     * Beyer, CRC Standard Mathematical Tables, 28th ed. (1987) 464, read through E. Weisstein's table of them.
     *
     * <p>Checked against: {@code OddsTest}, random draws; {@code StdDevsTest}, random organs.
     */
    static Odds of(Mode mode, Doubt doubt, Share share) {
        List<Verdict> verdicts = Verdict.of(mode);
        double[] below = new double[verdicts.size()];
        double variance = doubt.wantedVariance() + doubt.otherVariance() - 2 * doubt.covariance();
        double differenceSdDb = Math.sqrt(Math.max(0, variance));
        double slope = variance > 0 ? (doubt.covariance() - doubt.otherVariance()) / variance : 0;
        double besidesSdDb = Math.sqrt(Math.max(0, doubt.otherVariance() - slope * slope * variance));
        double[] shares = new double[Quantiles.COUNT];
        for (int node = 0; node < Nodes.SDS.length; node++) {
            for (int quantile = 0; quantile < shares.length; quantile++) {
                double differenceDb = (quantile - Quantiles.MOST_SDS) * differenceSdDb;
                double otherDb = slope * differenceDb + Nodes.SDS[node] * besidesSdDb;
                shares[quantile] = share.at(otherDb + differenceDb, otherDb);
            }
            for (int edge = 1; edge < below.length; edge++) {
                below[edge] +=
                        Nodes.WEIGHTS[node] * Quantiles.below(verdicts.get(edge).from(mode), shares);
            }
        }
        List<Chance> chances = new ArrayList<>(below.length);
        for (int place = 0; place < below.length; place++) {
            double upTo = place + 1 < below.length ? below[place + 1] : 1;
            chances.add(new Chance(verdicts.get(place), Math.max(0, upTo - below[place])));
        }
        return new Odds(chances);
    }

    private static final class Nodes {
        private static final double[] SDS = {0, Math.sqrt(3), -Math.sqrt(3)};
        private static final double[] WEIGHTS = {2.0 / 3, 1.0 / 6, 1.0 / 6};
    }

    private static final class Quantiles {
        private static final int MOST_SDS = 3;
        private static final int COUNT = 2 * MOST_SDS + 1;
        private static final double LEAST = 1e-6;

        /** Probability of a share below an edge, with the shares at whole standard deviations. */
        private static double below(double edge, double[] shares) {
            if (edge <= shares[0]) {
                return 0;
            }
            for (int above = 1; above < COUNT; above++) {
                if (edge <= shares[above]) {
                    double from = logit(shares[above - 1]);
                    double part = (logit(edge) - from) / (logit(shares[above]) - from);
                    return 1 - NormalDistribution.above(above - 1 + part - MOST_SDS);
                }
            }
            return 1;
        }

        /** A share on a scale on which it grows about evenly with the level. */
        private static double logit(double share) {
            double within = Math.max(LEAST, Math.min(1 - LEAST, share));
            return Math.log(within / (1 - within));
        }
    }

    /** True where nothing is in doubt. */
    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** The odds of a verdict, 0 to 1. */
    public double of(Verdict verdict) {
        for (Chance each : all) {
            if (each.verdict() == verdict) {
                return each.odds();
            }
        }
        return 0;
    }

    /** The odds of every verdict in hundredths, which add up to 100: the largest remainders are rounded up. */
    public Map<Verdict, Integer> hundredths() {
        Map<Verdict, Integer> hundredths = new EnumMap<>(Verdict.class);
        int left = HUNDRED;
        for (Chance each : all) {
            int whole = (int) (HUNDRED * each.odds());
            hundredths.put(each.verdict(), whole);
            left -= whole;
        }
        all.stream()
                .sorted(Comparator.comparingDouble(each -> hundredths.get(each.verdict()) - HUNDRED * each.odds()))
                .limit(Math.max(0, left))
                .forEach(each -> hundredths.merge(each.verdict(), 1, Integer::sum));
        return hundredths;
    }

    /** The most likely verdict. */
    Verdict first() {
        Chance first = all.get(0);
        for (Chance each : all) {
            first = each.odds() > first.odds() ? each : first;
        }
        return first.verdict();
    }

    /** The most likely verdict after the first, where it is worth a word. */
    public Optional<Verdict> second() {
        return all.stream()
                .sorted(Comparator.comparingDouble(Chance::odds).reversed())
                .skip(1)
                .limit(1)
                .filter(chance -> chance.odds() >= WORTH_A_WORD)
                .map(Chance::verdict)
                .findFirst();
    }

    /** Odds in tenths: "8 in 10"; never 10 in 10, since the method itself may be wrong. */
    public static String words(double odds) {
        return tenths(odds) + " in 10";
    }

    static int tenths(double odds) {
        return (int) Math.max(1, Math.min(TENTHS - 1, Math.round(TENTHS * odds)));
    }
}
