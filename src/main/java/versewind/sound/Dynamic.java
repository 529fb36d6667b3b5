package versewind.sound;

/**
 * How loud a registration is on its own organ, as musicians write it.
 *
 * <p>The loudness in sone between that of the organ's softest stop (box closed) and that of its full organ is divided
 * into seven equal steps. An estimate; that Zwicker's loudness, and not plain level, follows what registrations are felt
 * to be: Hall, Music Perception 10 (1993). In phon instead of sone the steps would crowd at the top: principals 8 and 4
 * would already be called ff.
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

    /** As it is written: "mf". */
    public String word() {
        return word;
    }

    /** The dynamic of a loudness, between those of the softest stop and of full organ, all in sone. */
    static Dynamic of(double sone, double softestSone, double fullSone) {
        double share = fullSone > softestSone ? (sone - softestSone) / (fullSone - softestSone) : 1;
        int step = (int) Math.floor(share * values().length);
        return values()[Math.max(0, Math.min(values().length - 1, step))];
    }
}
