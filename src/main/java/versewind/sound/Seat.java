package versewind.sound;

/** A place of a listener or a meter; the room gives its distance from the organ. */
public enum Seat {
    /** In the middle of the nave. */
    NAVE("nave"),
    /** Among the singers farthest from the organ. */
    FAR("far"),
    /** Where a choir or a soloist stands. */
    CHOIR("choir"),
    /** With the organist. */
    CONSOLE("console");

    private final String word;

    Seat(String word) {
        this.word = word;
    }

    /** In words, as in files. */
    public String word() {
        return word;
    }
}
