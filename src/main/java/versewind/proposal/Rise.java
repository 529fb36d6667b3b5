package versewind.proposal;

/**
 * How a verse of the people stands to the one before: where the hymn is to grow by something that one hears its margin grows
 * by a step, where it is to sink it sinks; and it never goes the other way. Common practice, no source; the points are estimates.
 *
 * @param beforeDb margin of the verse before
 * @param wantedDb by how much this one's target lies higher
 */
record Rise(double beforeDb, double wantedDb) {

    private static final double POINTS_A_DB = 0.8;

    /** Nobody hears less. */
    private static final double UNHEARD_DB = 0.5;

    /** What it costs that a margin goes the wrong way. */
    double cost(double marginDb) {
        double wrongDb = wantedDb >= 0 ? beforeDb - marginDb : marginDb - beforeDb;
        return POINTS_A_DB * Math.max(0, wrongDb - UNHEARD_DB);
    }

    String words() {
        return wantedDb >= 0
                ? "it leads less firmly than the verse before"
                : "it leads more firmly than the verse before";
    }
}
