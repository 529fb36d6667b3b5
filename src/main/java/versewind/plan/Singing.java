package versewind.plan;

import java.util.Optional;

/** How strongly the singers sing. */
public enum Singing {
    GENTLE("gentle"),
    ORDINARY("ordinary"),
    STRONG("strong"),
    FULL_VOICE("full voice");

    private final String word;

    Singing(String word) {
        this.word = word;
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** The strength with this keyword, if there is one. */
    public static Optional<Singing> ofWord(String word) {
        return Keywords.find(values(), Singing::word, word);
    }
}
