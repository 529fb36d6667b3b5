package versewind.plan;

import java.util.OptionalInt;

/**
 * How many in ten of those present sing.
 *
 * @param ofVerse in this verse, if not as in the service
 * @param ofService in the service
 */
public record Share(OptionalInt ofVerse, int ofService) {

    /** How many in ten of a congregation sing, where nothing is said. An estimate; no source. */
    public static final int USUAL_IN_TEN = 8;

    /** As many as usual. */
    public static final Share USUAL = new Share(OptionalInt.empty(), USUAL_IN_TEN);

    private static final int ALL = 10;

    public Share {
        require(ofService);
        ofVerse.ifPresent(Share::require);
    }

    /** Written out, like {@link #equals}: a record's own cost milliseconds at the start of the program. */
    @Override
    public int hashCode() {
        return 31 * ofVerse.hashCode() + ofService;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Share share && ofService == share.ofService && ofVerse.equals(share.ofVerse);
    }

    static void require(int inTen) {
        if (inTen < 1 || inTen > ALL) {
            throw new IllegalArgumentException("of those present 1 to 10 in ten sing");
        }
    }

    /** How many in ten. */
    public int inTen() {
        return ofVerse.orElse(ofService);
    }
}
