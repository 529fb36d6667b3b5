package versewind.proposal;

import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.sound.Balance;
import versewind.sound.Verdict;

/**
 * Where the share of a verse should lie, 0 to 1.
 *
 * <p>Within the verdict that is wanted: a festal verse aims at the middle of it, a plain one at the least share whose
 * lead is sure, 8 in 10, a gentle one at a share that leads and is no more than that; an estimate. A playover is
 * weighed as if the people sang to it, and aims a little lower.
 *
 * @param mode whose share it is
 * @param low from where it is as good
 * @param high up to where
 */
record Target(Mode mode, double low, double high) {

    /** Cost of lying off the centre by all that is heard, far away; a lead is off by far less than words are. */
    private static final double POINTS_OF_LEAD = 110;

    private static final double POINTS_OF_WORDS = 48;

    /** A tune that stands out may do so far: its voice counts for more. */
    private static final double POINTS_OF_TUNE = 20;

    /** Where the lead is lost, all that can still be drawn is wanted; where it hardly holds, each step. */
    private static final double POINTS_OF_LOST = 250;

    private static final double POINTS_OF_HARDLY = 60;

    /** Up to about so many half widths from the centre, distance costs little. */
    private static final double SOFT = 1;

    private static final double LEAD_WIDTH = 0.07;
    private static final double WORDS_WIDTH = 0.2;
    private static final double WORTH_A_WORD = 0.015;
    private static final double AT_EASE = 0.03;
    /** A step of the order, about. */
    static final double A_STEP = 0.03;

    private static final double A_HAIR = 0.01;

    /** The target of a verse that is sung, or whose melody is soloed. */
    static Target of(Mode mode, Mood mood) {
        double good = Verdict.right(mode).from(mode);
        return switch (mode) {
            case CONGREGATION -> upward(mode, good + aboveLead(mood), LEAD_WIDTH);
            case SMALL_CHOIR, SOLO_VOICE -> upward(mode, good + aboveClear(mood), WORDS_WIDTH);
            case MELODY_SOLOED -> upward(mode, good, WORDS_WIDTH);
        };
    }

    private static Target upward(Mode mode, double low, double width) {
        return new Target(mode, low, low + width);
    }

    private static double aboveLead(Mood mood) {
        return switch (mood) {
            case GENTLE -> 0.01;
            case PLAIN -> 0.09;
            case BRIGHT -> 0.11;
            case FESTAL -> 0.15;
        };
    }

    private static double aboveClear(Mood mood) {
        return switch (mood) {
            case GENTLE -> 0.01;
            case PLAIN -> 0.03;
            case BRIGHT, FESTAL -> 0;
        };
    }

    /** The same, so that a plain verse has the share that is usual, as long as each leads and is not too strong. */
    Target asUsual(double share) {
        double least = Verdict.right(mode).from(mode) + LEAD_WIDTH / 2;
        double most = nearlyTooStrong();
        double plain = Target.of(mode, Mood.PLAIN).centre();
        double moved = centre() + Math.max(least, Math.min(most, share)) - plain;
        return lifted(Math.max(moved, Math.min(centre(), least)) - centre());
    }

    Target lifted(double more) {
        return new Target(mode, low + more, high + more);
    }

    /** The same, lower, but not below nothing. */
    Target lowered(double less) {
        return lifted(-Math.min(less, low));
    }

    /**
     * The same, kept below what full organ reaches, as long as the verse is led: at ease where full organ leads well,
     * and where it hardly does all but a hair, for a lead goes before growth.
     *
     * @param beyond by how much the strongest verse would want more than there is
     * @param full the share of full organ
     */
    Target within(double beyond, double full) {
        double good = Verdict.LEADS.from(mode);
        double atEase = Math.max(good + A_HAIR, Math.min(good + AT_EASE, full - 2 * A_STEP));
        double least = full >= good ? atEase : full - A_HAIR;
        return lifted(-Math.max(0, Math.min(beyond, centre() - least)));
    }

    /** The same, but a step below full organ at most: a playover keeps the loudest for the end. */
    Target below(double full) {
        return lowered(Math.max(0, centre() - full + 2 * A_STEP));
    }

    /** True if it lies higher than another by something that is heard. */
    boolean isHigherThan(Target other) {
        return centre() - other.centre() > (high - low) / 5;
    }

    /** The share above which the people are soon led too strongly, whatever is wanted. */
    static double nearlyTooStrong() {
        return Verdict.TOO_STRONG.from(Mode.CONGREGATION) - LEAD_WIDTH;
    }

    double centre() {
        return (low + high) / 2;
    }

    /** True for a share so far below that it is worth a word. */
    boolean isMissed(double share) {
        return share < low - WORTH_A_WORD;
    }

    /** True for a share so far above that it is worth a word. */
    boolean isPassed(double share) {
        return share > high + WORTH_A_WORD;
    }

    /** Cost of a share: little near the centre, since nothing is known exactly, and in proportion far away. */
    double cost(double share) {
        double off = Math.abs(share - centre());
        double points =
                switch (mode) {
                    case CONGREGATION -> POINTS_OF_LEAD;
                    case SMALL_CHOIR, SOLO_VOICE -> POINTS_OF_WORDS;
                    case MELODY_SOLOED -> share > centre() ? POINTS_OF_TUNE : POINTS_OF_WORDS;
                };
        double lost =
                POINTS_OF_LOST * Math.max(0, lost(mode) - share) + POINTS_OF_HARDLY * Math.max(0, hardly() - share);
        return points * off * off / (off + SOFT * (high - low) / 2) + (mode == Mode.CONGREGATION ? lost : 0);
    }

    /** The share below which the lead hardly holds: a little over the edge, where the target lies well above that. */
    private double hardly() {
        double edge = Verdict.LEADS.from(mode);
        return Math.max(edge, Math.min(edge + AT_EASE, low));
    }

    /** True for a share so near the edge of the lead that each help is wanted. */
    boolean isHardlyLed(double share) {
        return share < Verdict.LEADS.from(mode) + AT_EASE / 2;
    }

    /** The share below which the lead is lost. */
    private static double lost(Mode mode) {
        return Verdict.LEAD_ONLY_JUST.from(mode);
    }

    /** Where a share lies, and where it should. */
    String sentence(double share) {
        String where =
                isMissed(share) ? ", below the target of " : isPassed(share) ? ", above the target of " : "; target: ";
        return subject() + Balance.percent(share) + "%" + where + Balance.percent(low) + " to " + Balance.percent(high)
                + "%.";
    }

    private String subject() {
        return switch (mode) {
            case CONGREGATION -> "The organ's clear share is ";
            case SMALL_CHOIR, SOLO_VOICE -> "The speech intelligibility index of the words is ";
            case MELODY_SOLOED -> "The melody's clear share is ";
        };
    }
}
