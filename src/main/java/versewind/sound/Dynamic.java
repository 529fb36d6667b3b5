package versewind.sound;

import versewind.organ.Worded;

/**
 * The loudness of a registration on its own organ, in musicians' words.
 *
 * <p>By its loudness in sone over that of the principals 8 4 of the main division, four parts in the hands, in the same
 * room: p from 0.4, mp 0.83, mf 0.9, f 1.1, ff 1.27, fff 1.52, yet fff only where it is a twentieth louder than all
 * principals and mixtures of the organ together: on an organ of several manuals these reach 1.84 without a reed.
 * Loudness by Zwicker's method follows the dynamics of registrations better than unweighted level does (Hall, Music
 * Perception 10 (1993)). The edges are estimates, set so that the words follow the order of building up on organs of
 * every size: flutes p, principals 8 4 mf, with a 2 ft f, mixtures ff, reeds fff (common practice, no source). So a
 * small organ without reeds has no fff.
 *
 * <p>Checked against: {@code DynamicTest}.
 */
public enum Dynamic implements Worded {
    PP(0),
    P(0.4),
    MP(0.83),
    MF(0.9),
    F(1.1),
    FF(1.27),
    FFF(1.52);

    /** How much louder than all flues of the choruses their reeds make an organ, at least. An estimate. */
    private static final double LOUDER = 1.05;

    private final double from;

    Dynamic(double from) {
        this.from = from;
    }

    /**
     * The dynamic of a loudness.
     *
     * @param overPrincipals that loudness over that of the principals 8 4
     * @param choruses the loudness of all principals and mixtures over the same
     */
    static Dynamic of(double overPrincipals, double choruses) {
        Dynamic found = PP;
        for (Dynamic each : values()) {
            double from = each == FFF ? Math.max(each.from, LOUDER * choruses) : each.from;
            found = overPrincipals >= from ? each : found;
        }
        return found;
    }
}
