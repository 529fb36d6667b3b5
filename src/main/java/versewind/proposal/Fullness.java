package versewind.proposal;

import versewind.plan.Mood;

/** How full a sound the words, the singers and the place in the service ask for. */
enum Fullness {
    GENTLE,
    PLAIN,
    BRIGHT,
    FESTAL,
    /** The last verse of a hymn on a feast. */
    CROWN;

    static Fullness of(Mood mood) {
        return values()[mood.ordinal()];
    }
}
