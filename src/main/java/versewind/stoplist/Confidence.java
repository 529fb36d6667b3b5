package versewind.stoplist;

/** How sure the family of a stop is. */
public enum Confidence {
    /** The name is in the lexicon. */
    NAME("by its name"),
    /** The parts that the name is made of are known. */
    PARTS("by parts of its name"),
    /** The name is like one in the lexicon. */
    SPELLING("like a known name"),
    /** The name is in the lexicon, but stops of this name have another pitch. */
    PITCH("a pitch that is unusual for its name"),
    /** The name is not known; the family is guessed from pitch and ranks. */
    GUESS("unknown name");

    private final String word;

    Confidence(String word) {
        this.word = word;
    }

    /** In words. */
    public String word() {
        return word;
    }

    /** True if it needs no second look. */
    public boolean isSure() {
        return this == NAME || this == PARTS;
    }
}
