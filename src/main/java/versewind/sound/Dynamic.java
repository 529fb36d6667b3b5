package versewind.sound;

/**
 * The loudness of a registration on its own organ, in musicians' words.
 *
 * <p>By its share of the way in sone from the organ's softest stop (box closed) to full organ: p from 0.1, mp 0.27, mf
 * 0.34, f 0.44, ff 0.59, fff 0.8. Loudness by Zwicker's method follows the dynamics of registrations better than
 * unweighted level does (Hall, Music Perception 10 (1993)). The edges are estimates, set so that on the shipped organs
 * the words follow the order of building up: flutes p, principals 8 4 mf, with a 2 ft f, mixtures ff, reeds fff (common
 * practice, no source). A very large organ has so much more in hand that its chorus comes lower.
 *
 * <p>Checked against: {@code DynamicTest}.
 */
public enum Dynamic {
    PP("pp", 0),
    P("p", 0.1),
    MP("mp", 0.27),
    MF("mf", 0.34),
    F("f", 0.44),
    FF("ff", 0.59),
    FFF("fff", 0.8);

    private final String word;
    private final double from;

    Dynamic(String word, double from) {
        this.word = word;
        this.from = from;
    }

    /** As written in music: "mf". */
    public String word() {
        return word;
    }

    /** The scale of one organ in one room: loudness of its softest stop and of full organ, in sone. */
    record Scale(double softestSone, double fullSone) {

        /** The dynamic of a loudness in sone. */
        Dynamic of(double sone) {
            double share = fullSone > softestSone ? (sone - softestSone) / (fullSone - softestSone) : 1;
            Dynamic found = PP;
            for (Dynamic each : values()) {
                found = share >= each.from ? each : found;
            }
            return found;
        }
    }
}
