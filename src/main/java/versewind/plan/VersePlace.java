package versewind.plan;

/**
 * The position of a verse in a plan. It may be one past the end, where there is no verse yet.
 *
 * @param hymn index of the hymn
 * @param verse index of the verse in it
 */
public record VersePlace(int hymn, int verse) {

    /** The first verse of the first hymn. */
    public static final VersePlace START = new VersePlace(0, 0);

    /** Written out, like {@link #equals}: a record's own cost milliseconds at the start of the program. */
    @Override
    public int hashCode() {
        return 31 * hymn + verse;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof VersePlace place && hymn == place.hymn && verse == place.verse;
    }

    /** The nearest existing position; {@link #START} in a plan without hymns. */
    public VersePlace within(Plan plan) {
        if (plan.hymns().isEmpty()) {
            return START;
        }
        int nearestHymn = Math.max(0, Math.min(hymn, plan.hymns().size() - 1));
        int verses = plan.hymns().get(nearestHymn).verses().size();
        return new VersePlace(nearestHymn, Math.max(0, Math.min(verse, verses - 1)));
    }
}
