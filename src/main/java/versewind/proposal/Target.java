package versewind.proposal;

import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.sound.Thresholds;

/**
 * Where the margin of a verse should lie, in dB.
 *
 * <p>Between the thresholds of the verdicts, nearer to this or that one by the mood; an estimate. A playover is weighed
 * as if the people sang to it, and aims a little lower.
 *
 * @param mode whose margin it is
 * @param low from where it is as good
 * @param high up to where
 */
record Target(Mode mode, double low, double high) {

    private static final double POINTS_A_DB = 1.6;

    /** Up to about so many half widths from the centre, distance costs little. */
    private static final double SOFT = 1;

    private static final double LEAD_WIDTH_DB = 3;
    private static final double WORDS_WIDTH_DB = 6;
    private static final double WORTH_A_WORD_DB = 0.5;
    private static final double AT_EASE_DB = 1;
    private static final double A_STEP_DB = 1.5;

    /** The target of a verse that is sung, or whose melody is soloed. */
    static Target of(Mode mode, Mood mood) {
        double good = Thresholds.of(mode).goodDb();
        return switch (mode) {
            case CONGREGATION -> upward(mode, good + aboveLeadDb(mood), LEAD_WIDTH_DB);
            case SMALL_CHOIR, SOLO_VOICE -> upward(mode, good + aboveClearDb(mood), WORDS_WIDTH_DB);
            case MELODY_SOLOED -> upward(mode, good, WORDS_WIDTH_DB);
        };
    }

    private static Target upward(Mode mode, double low, double width) {
        return new Target(mode, low, low + width);
    }

    private static double aboveLeadDb(Mood mood) {
        return switch (mood) {
            case GENTLE -> 0;
            case PLAIN -> 0.5;
            case BRIGHT -> 2;
            case FESTAL -> 4;
        };
    }

    private static double aboveClearDb(Mood mood) {
        return switch (mood) {
            case GENTLE -> 2;
            case PLAIN -> 1;
            case BRIGHT, FESTAL -> 0;
        };
    }

    Target lifted(double more) {
        return new Target(mode, low + more, high + more);
    }

    /**
     * The same, kept below what full organ reaches, as long as it still leads: at ease where full organ leads well, and
     * only just where it does no more itself.
     *
     * @param beyond by how much the strongest verse would want more than there is
     * @param full the margin of full organ
     */
    Target within(double beyond, double full) {
        double goodDb = Thresholds.of(mode).goodDb();
        double atEase = full >= goodDb ? goodDb + AT_EASE_DB : full - A_STEP_DB;
        double least = Math.max(Thresholds.of(mode).onlyJustDb() + AT_EASE_DB, atEase);
        return lifted(-Math.max(0, Math.min(beyond, centre() - least)));
    }

    /** The same, but a step below full organ at most: a playover keeps the loudest for the end. */
    Target below(double full) {
        return lifted(-Math.max(0, centre() - full + 2 * A_STEP_DB));
    }

    /** Whether it lies higher than another by something that is heard. */
    boolean isHigherThan(Target other) {
        return centre() - other.centre() > (high - low) / 8;
    }

    double centre() {
        return (low + high) / 2;
    }

    /** True for a margin so far below that it is worth a word. */
    boolean isMissed(double margin) {
        return margin < low - WORTH_A_WORD_DB;
    }

    /** True for a margin so far above that it is worth a word. */
    boolean isPassed(double margin) {
        return margin > high + WORTH_A_WORD_DB;
    }

    /** Cost of a margin: little near the centre, since nothing is known exactly, and in proportion far away. */
    double cost(double margin) {
        double off = Math.abs(margin - centre());
        return POINTS_A_DB * off * off / (off + SOFT * (high - low) / 2);
    }

    /** Where a margin lies, and where it should. */
    String sentence(double margin) {
        String where = isMissed(margin)
                ? ", below the target of "
                : isPassed(margin) ? ", above the target of " : "; target: ";
        return subject() + signed(margin) + " dB" + where + signed(low) + " to " + signed(high) + ".";
    }

    private String subject() {
        return switch (mode) {
            case CONGREGATION -> "The organ's margin over the singing is ";
            case SMALL_CHOIR, SOLO_VOICE -> "The words' margin over the organ is ";
            case MELODY_SOLOED -> "The melody stands above its accompaniment by ";
        };
    }

    private static String signed(double db) {
        long whole = Math.round(db);
        return whole > 0 ? "+" + whole : Long.toString(whole);
    }
}
