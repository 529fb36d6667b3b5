package versewind.sound;

/**
 * How loud a registration is on its own organ, as musicians write it.
 *
 * <p>The loudness level between that of the organ's softest stop (box closed) and that of its full organ is divided into
 * seven equal steps. An estimate; that loudness, and not plain level, follows what registrations are felt to be: Hall,
 * Music Perception 10 (1993).
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

    /** The dynamic of a loudness level, between those of the softest stop and of full organ, all in phon. */
    static Dynamic of(double phon, double softestPhon, double fullPhon) {
        double share = fullPhon > softestPhon ? (phon - softestPhon) / (fullPhon - softestPhon) : 1;
        int step = (int) Math.floor(share * values().length);
        return values()[Math.max(0, Math.min(values().length - 1, step))];
    }
}
