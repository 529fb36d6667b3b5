package versewind.rules;

/** Who plays a keyboard. */
public enum Hand {
    /** Both hands on one keyboard. */
    BOTH_HANDS("the hands", "have"),
    RIGHT_HAND("the right hand", "has"),
    LEFT_HAND("the left hand", "has"),
    FEET("the pedal", "has");

    private final String word;
    private final String has;

    Hand(String word, String has) {
        this.word = word;
        this.has = has;
    }

    /** In words: "the right hand". */
    public String word() {
        return word;
    }

    /** The start of a sentence: "The hands have". */
    String has() {
        return "T" + word.substring(1) + " " + has;
    }
}
