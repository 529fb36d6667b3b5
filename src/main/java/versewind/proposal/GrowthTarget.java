package versewind.proposal;

/**
 * How a verse of the people stands to the one before: where the hymn is to grow by something that one hears its margin
 * over the singing grows by a step, where it is to sink it sinks; and it never goes the other way. Common practice, no
 * source; the points are estimates.
 *
 * @param beforeDb margin of the verse before
 * @param wantedDb by how much this one's target lies higher
 */
record GrowthTarget(double beforeDb, double wantedDb) {

    private static final double POINTS_A_DB = 0.8;

    /** Nobody hears less. */
    private static final double UNHEARD_DB = 0.5;

    /** More is not asked for: how much it should be is a matter of the balance. */
    private static final double A_STEP_DB = 1;

    /** What it costs that a margin does not go the way it should. */
    double cost(double marginDb) {
        double goneDb = wantedDb >= 0 ? marginDb - beforeDb : beforeDb - marginDb;
        double askedDb = Math.min(A_STEP_DB, Math.abs(wantedDb) - UNHEARD_DB);
        return POINTS_A_DB * Math.max(0, askedDb - goneDb);
    }

    String words() {
        return wantedDb >= 0
                ? "it should lead more firmly than the verse before"
                : "it should lead less firmly than the verse before";
    }
}
