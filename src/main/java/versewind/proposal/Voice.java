package versewind.proposal;

import versewind.plan.Mood;

/**
 * The voices that sing a tune, and the points against it in a gentle, plain, bright and festal verse. Common practice,
 * no source; the points are estimates.
 */
enum Voice {
    /** No voice of its own: the tune sounds as the other parts do. */
    NONE(0, 0, 0, 0),
    SOLO_REED(0.1, 0, 0.3, 0.6),
    CORNET(0.8, 0.2, 0, 0.2),
    TRUMPET(3, 0.9, 0.3, 0),
    /** A big reed of a division for solos. */
    TUBA(9, 6, 3, 0.5),
    FLUTE_AND_NAZARD(0, 0.3, 0.5, 1),
    PRINCIPAL(0.5, 0.2, 0.2, 0.4),
    FLUTE(0.2, 0.4, 0.8, 1.5),
    STRING(0.5, 0.6, 1, 1.8);

    @SuppressWarnings("ImmutableEnumChecker") // a value, which never changes
    private final double[] points;

    Voice(double gentle, double plain, double bright, double festal) {
        points = new double[] {gentle, plain, bright, festal};
    }

    double points(Mood mood) {
        return points[mood.ordinal()];
    }
}
