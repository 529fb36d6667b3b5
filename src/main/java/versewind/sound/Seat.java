package versewind.sound;

/** Where somebody listens, or a meter stands. How far it is from the organ stands with the room. */
public enum Seat {
    /** In the middle of the nave. */
    NAVE("nave"),
    /** With the singers who are farthest from the organ. */
    FAR("far"),
    /** Where a choir or a soloist stands. */
    CHOIR("choir"),
    /** With the organist. */
    CONSOLE("console");

    private final String word;

    Seat(String word) {
        this.word = word;
    }

    /** In words, as files have it. */
    public String word() {
        return word;
    }
}
