package versewind.plan;

import versewind.organ.Worded;

/** Whom the organ accompanies. */
public enum Mode implements Worded {
    /** The people sing; the organ leads them. */
    CONGREGATION,
    /** A small choir sings; the organ supports it. */
    SMALL_CHOIR,
    /** One voice sings; the organ stays under it. */
    SOLO_VOICE,
    /** Nobody sings; the melody is played on a stop of its own, for an introduction. */
    MELODY_SOLOED;

    /** In words. */
    @Override
    public String word() {
        return this == SOLO_VOICE ? "soloist" : Worded.super.word();
    }
}
