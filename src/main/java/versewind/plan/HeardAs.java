package versewind.plan;

import java.util.Optional;

/** The organist's own judgement of the organ's level. */
public enum HeardAs {
    TOO_SOFT("too soft", "a little soft"),
    RIGHT("right", "right"),
    TOO_STRONG("too strong", "a little strong");

    private final String word;
    private final String felt;

    HeardAs(String word, String felt) {
        this.word = word;
        this.felt = felt;
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** In words, of a registration that is usually drawn: nobody keeps one that is far off. */
    public String felt() {
        return felt;
    }

    /** The judgement with this keyword, if there is one. */
    public static Optional<HeardAs> ofWord(String word) {
        return Keywords.find(values(), HeardAs::word, word);
    }
}
