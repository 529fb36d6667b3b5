package versewind.plan;

import java.util.Optional;

/** The character a verse should have. */
public enum Mood {
    /** Soft colours: flutes rather than principals, no mixture, no reed. */
    GENTLE("gentle"),
    /** As the hymn is usually sung. */
    PLAIN("plain"),
    /** Upperwork rather than weight. */
    BRIGHT("bright"),
    /** Mixtures, and reeds where they are wanted. */
    FESTAL("festal");

    private final String word;

    Mood(String word) {
        this.word = word;
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** The mood with this keyword, if there is one. */
    public static Optional<Mood> ofWord(String word) {
        return Keywords.find(values(), Mood::word, word);
    }
}
