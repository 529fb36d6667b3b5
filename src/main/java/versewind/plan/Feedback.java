package versewind.plan;

/**
 * What an organist says of a verse after the service.
 *
 * @param heard how the organ was to the singers
 * @param present number of people that were present, 1 to 50000
 */
public record Feedback(HeardAs heard, int present) {

    public Feedback {
        if (present < 1 || present > Verse.MOST_PEOPLE) {
            throw new IllegalArgumentException("the people present are 1 to 50000");
        }
    }
}
