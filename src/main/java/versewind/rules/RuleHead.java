package versewind.rules;

/**
 * The head of a rule's row.
 *
 * @param word its name in files and on screens
 * @param points what it costs to break it: 5 to 10 for what nobody does, 1 to 3 for what a teacher would mention
 */
record RuleHead(String word, int points) {

    private static final int LEAST_OF_HARD = 5;
    private static final int MOST_OF_SOFT = 3;

    RuleHead {
        if (points < 1 || points > 10 || (points > MOST_OF_SOFT && points < LEAST_OF_HARD)) {
            throw new IllegalArgumentException("a rule costs 1 to 3 points, or 5 to 10");
        }
    }

    /** How much it matters. */
    Severity severity() {
        return points >= LEAST_OF_HARD ? Severity.CAUTION : Severity.REMARK;
    }
}
