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
