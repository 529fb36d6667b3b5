package versewind.rules;

/** Who plays a keyboard. */
public enum Hand {
    /** Both hands on one keyboard. */
    BOTH_HANDS("the hands"),
    RIGHT_HAND("the right hand"),
    LEFT_HAND("the left hand"),
    FEET("the pedal");

    private final String word;

    Hand(String word) {
        this.word = word;
    }

    /** In words: "the right hand". */
    public String word() {
        return word;
    }

    /** The start of a sentence: "The hands". */
    String start() {
        return "T" + word.substring(1);
    }
}
