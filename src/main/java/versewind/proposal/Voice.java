package versewind.proposal;

import versewind.plan.Mood;

/**
 * The voices that sing a tune, and the points against it in a gentle, plain, bright and festal verse. Common practice,
 * no source; the points are estimates.
 */
enum Voice {
    /** No voice of its own: the tune sounds as the other parts do. */
    NONE(0, 0, 0, 0),
    SOLO_REED(0, 0, 0.2, 0.6),
    /** A vox humana or a regal. */
    THIN_REED(0.9, 0.6, 0.6, 1.2),
    CORNET(0.8, 0.2, 0, 0.2),
    TRUMPET(3, 1.2, 0.4, 0),
    /** A big reed of a division for solos. */
    TUBA(9, 6, 3, 0.5),
    FLUTE_AND_NAZARD(0.1, 0.2, 0.5, 1),
    FLUTE(0.2, 0.5, 0.9, 1.6),
    STRING(1.5, 2, 2, 2.5),
    /** The organ’s own plain sound, where no voice sets itself apart. */
    PRINCIPAL(1.2, 0.9, 0.8, 0.8);

    @SuppressWarnings("ImmutableEnumChecker") // a value, which never changes
    private final double[] points;

    Voice(double gentle, double plain, double bright, double festal) {
        points = new double[] {gentle, plain, bright, festal};
    }

    double points(Mood mood) {
        return points[mood.ordinal()];
    }
}
