package versewind.plan;

/** The seasons of the church year common to the western churches. */
public enum Season {
    ADVENT("Advent"),
    CHRISTMAS("Christmas"),
    /** From Epiphany to the day before Ash Wednesday. */
    EPIPHANY("after Epiphany"),
    LENT("Lent"),
    /** From Palm Sunday to Easter Eve. */
    HOLY_WEEK("Holy Week"),
    /** From Easter Day to Pentecost. */
    EASTER("Easter"),
    /** From the day after Pentecost to the day before Advent. */
    AFTER_PENTECOST("after Pentecost");

    private final String word;

    Season(String word) {
        this.word = word;
    }

    /** In words. */
    public String word() {
        return word;
    }
}
