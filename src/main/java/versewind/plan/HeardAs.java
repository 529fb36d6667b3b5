package versewind.plan;

import versewind.organ.Worded;

/** The organist's own judgement of the organ's level. */
public enum HeardAs implements Worded {
    TOO_SOFT("a little soft"),
    RIGHT("right"),
    TOO_STRONG("a little strong");

    private final String felt;

    HeardAs(String felt) {
        this.felt = felt;
    }

    /** In words, of a registration that is usually drawn: nobody keeps one that is far off. */
    public String felt() {
        return felt;
    }
}
