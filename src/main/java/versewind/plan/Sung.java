package versewind.plan;

import java.util.OptionalInt;

/**
 * Who sings a verse, and how.
 *
 * @param by who sings
 * @param singing how strongly they sing
 * @param people number of people for this verse, if not that of the service: those present for a congregation, the
 *     singers of a small choir
 * @param share how many of those present sing
 */
public record Sung(SungBy by, Singing singing, OptionalInt people, Share share) {

    public Sung {
        if (people.isPresent() && (people.getAsInt() < 1 || people.getAsInt() > Verse.MOST_PEOPLE)) {
            throw new IllegalArgumentException("the people of a verse are 1 to 50000");
        }
    }

    /** The part of those present who sing at one time, 0 to 1: in alternation one side of two. */
    public double part() {
        return share.inTen() / 10.0 / (by == SungBy.ALTERNATION ? 2 : 1);
    }

    /** How many people sing as usual where as many sing at one time as of these. */
    public int asUsual(int present) {
        return Math.max(1, (int) Math.round(present * part() * 10 / Share.USUAL_IN_TEN));
    }

    /** Those who sing the tune: under a descant the people. */
    public Sung ofTune() {
        return with(by.ofTune());
    }

    Sung with(SungBy other) {
        return new Sung(other, singing, people, share);
    }

    Sung with(Singing other) {
        return new Sung(by, other, people, share);
    }

    Sung with(OptionalInt other) {
        return new Sung(by, singing, other, share);
    }

    Sung with(Share other) {
        return new Sung(by, singing, people, other);
    }
}
