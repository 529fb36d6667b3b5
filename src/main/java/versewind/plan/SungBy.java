package versewind.plan;

/**
 * Who sings a verse.
 *
 * <p>Descant: the people are led, and the descant is to come through above them. Alternation: one side sings at a time,
 * choir and people or one half and the other, and the organ leads it. Trebles: a small choir of light voices.
 * Unaccompanied: nobody plays. Source: common practice, no source.
 */
public enum SungBy {
    CONGREGATION("congregation", Mode.CONGREGATION, "all"),
    SMALL_CHOIR("small choir", Mode.SMALL_CHOIR, "choir"),
    SOLO_VOICE("soloist", Mode.SOLO_VOICE, "solo"),
    MELODY_SOLOED("melody soloed", Mode.MELODY_SOLOED, "tune"),
    DESCANT("descant", Mode.CONGREGATION, "desc."),
    TREBLES("trebles", Mode.SMALL_CHOIR, "treb."),
    ALTERNATION("alternation", Mode.CONGREGATION, "sides"),
    UNACCOMPANIED("unaccompanied", Mode.SMALL_CHOIR, "unacc");

    private final String word;
    private final Mode mode;
    private final String shortWord;

    SungBy(String word, Mode mode, String shortWord) {
        this.word = word;
        this.mode = mode;
        this.shortWord = shortWord;
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** In five letters at most. */
    public String shortWord() {
        return shortWord;
    }

    /** Who sings the tune: under a descant the people do. */
    SungBy ofTune() {
        return this == DESCANT ? CONGREGATION : this;
    }

    /** Whom the organ accompanies then, by which its balance is judged. */
    public Mode mode() {
        return mode;
    }

    /** The usual singers whom the organ accompanies so. */
    public static SungBy of(Mode mode) {
        return switch (mode) {
            case CONGREGATION -> CONGREGATION;
            case SMALL_CHOIR -> SMALL_CHOIR;
            case SOLO_VOICE -> SOLO_VOICE;
            case MELODY_SOLOED -> MELODY_SOLOED;
        };
    }
}
