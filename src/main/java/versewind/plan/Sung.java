package versewind.plan;

import java.util.OptionalInt;

/**
 * Who sings a verse, and how.
 *
 * @param mode whom the organ accompanies
 * @param singing how strongly they sing
 * @param people number of people for this verse, if not that of the service: those present for a congregation, the
 *     singers of a small choir
 */
public record Sung(Mode mode, Singing singing, OptionalInt people) {

    public Sung {
        if (people.isPresent() && (people.getAsInt() < 1 || people.getAsInt() > Verse.MOST_PEOPLE)) {
            throw new IllegalArgumentException("the people of a verse are 1 to 50000");
        }
    }

    Sung with(Mode other) {
        return new Sung(other, singing, people);
    }

    Sung with(Singing other) {
        return new Sung(mode, other, people);
    }

    Sung with(OptionalInt other) {
        return new Sung(mode, singing, other);
    }
}
