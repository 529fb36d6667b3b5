package versewind.sound;

/**
 * The loudness of a registration on its own organ, in musicians' words.
 *
 * <p>Seven equal steps of loudness in sone from the organ's softest stop (box closed) to full organ: an estimate.
 * Loudness by Zwicker's method follows the dynamics of registrations better than unweighted level does (Hall, Music
 * Perception 10 (1993)). Steps in phon would crowd at the top: principals 8 and 4 would already be ff.
 *
 * <p>Checked against: {@code DynamicTest}.
 */
public enum Dynamic {
    PP("pp"),
    P("p"),
    MP("mp"),
    MF("mf"),
    F("f"),
    FF("ff"),
    FFF("fff");

    private final String word;

    Dynamic(String word) {
        this.word = word;
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
            int step = (int) Math.floor(share * values().length);
            return values()[Math.max(0, Math.min(values().length - 1, step))];
        }
    }
}
