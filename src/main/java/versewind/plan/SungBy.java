package versewind.plan;

import versewind.organ.Worded;

/**
 * Who sings a verse.
 *
 * <p>Descant: the people are led, and the descant is to come through above them. Alternation: one side sings at a time,
 * choir and people or one half and the other, and the organ leads it. Trebles: a small choir of light voices.
 * Unaccompanied, or alone: nobody plays. Source: common practice, no source.
 */
public enum SungBy implements Worded {
    CONGREGATION(Mode.CONGREGATION, "all"),
    SMALL_CHOIR(Mode.SMALL_CHOIR, "choir"),
    SOLO_VOICE(Mode.SOLO_VOICE, "solo"),
    MELODY_SOLOED(Mode.MELODY_SOLOED, "tune"),
    DESCANT(Mode.CONGREGATION, "desc."),
    TREBLES(Mode.SMALL_CHOIR, "treb."),
    ALTERNATION(Mode.CONGREGATION, "sides"),
    UNACCOMPANIED(Mode.SMALL_CHOIR, "unacc"),
    VOICES_ALONE(Mode.SMALL_CHOIR, "unacc"),
    ONE_ALONE(Mode.SOLO_VOICE, "unacc");

    private final Mode mode;
    private final String shortWord;

    SungBy(Mode mode, String shortWord) {
        this.mode = mode;
        this.shortWord = shortWord;
    }

    /** In words. */
    @Override
    public String word() {
        return this == SOLO_VOICE ? "soloist" : Worded.super.word();
    }

    /** In five letters at most. */
    public String shortWord() {
        return shortWord;
    }

    /** Who sings the tune: under a descant the people do. */
    SungBy ofTune() {
        return this == DESCANT ? CONGREGATION : this;
    }

    /** The same singers while nobody plays. */
    public SungBy unaccompanied() {
        return switch (this) {
            case SMALL_CHOIR, TREBLES, VOICES_ALONE -> VOICES_ALONE;
            case SOLO_VOICE, ONE_ALONE -> ONE_ALONE;
            case CONGREGATION, MELODY_SOLOED, DESCANT, ALTERNATION, UNACCOMPANIED -> UNACCOMPANIED;
        };
    }

    /** The same singers while the organ plays. */
    public SungBy accompanied() {
        return switch (this) {
            case UNACCOMPANIED -> CONGREGATION;
            case VOICES_ALONE -> SMALL_CHOIR;
            case ONE_ALONE -> SOLO_VOICE;
            default -> this;
        };
    }

    /** True if the organ plays. */
    public boolean isPlayed() {
        return this == accompanied();
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
