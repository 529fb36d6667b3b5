package versewind.plan;

import java.util.Optional;

/** How the organ was to the singers of a verse when it was sung, by the organist's own ears. */
public enum HeardAs {
    TOO_SOFT("too soft"),
    RIGHT("right"),
    TOO_STRONG("too strong");

    private final String word;

    HeardAs(String word) {
        this.word = word;
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** The answer of this word, if there is one. */
    public static Optional<HeardAs> ofWord(String word) {
        return Keywords.find(values(), HeardAs::word, word);
    }
}
