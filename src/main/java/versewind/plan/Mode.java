package versewind.plan;

import java.util.Optional;

/** Whom the organ accompanies. */
public enum Mode {
    /** The people sing; the organ leads them. */
    CONGREGATION("congregation"),
    /** A small choir sings; the organ supports it. */
    SMALL_CHOIR("small choir"),
    /** One voice sings; the organ stays under it. */
    SOLO_VOICE("soloist"),
    /** Nobody sings; the melody is played on a stop of its own, for an introduction. */
    MELODY_SOLOED("melody soloed");

    private final String word;

    Mode(String word) {
        this.word = word;
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** The mode with this keyword, if there is one. */
    public static Optional<Mode> ofWord(String word) {
        return Keywords.find(values(), Mode::word, word);
    }
}
