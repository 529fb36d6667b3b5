package versewind.plan;

/**
 * Feedback on a verse after the service.
 *
 * @param heard the judgement
 * @param present number of people present, 1 to 50000
 */
public record Feedback(HeardAs heard, int present) {

    public Feedback {
        if (present < 1 || present > Verse.MOST_PEOPLE) {
            throw new IllegalArgumentException("the people present are 1 to 50000");
        }
    }
}
