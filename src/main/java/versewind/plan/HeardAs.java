package versewind.plan;

import java.util.Optional;

/** The organist's own judgement of the organ's level in a verse, after the service. */
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

    /** The judgement with this keyword, if there is one. */
    public static Optional<HeardAs> ofWord(String word) {
        return Keywords.find(values(), HeardAs::word, word);
    }
}
