package versewind.proposal;

import versewind.plan.Mood;

/** How full a sound the words, the singers and the place in the service ask for. */
enum Fullness {
    GENTLE,
    /** A gentle verse that many sing: foundations, without mixtures or reeds. */
    HELD_BACK,
    PLAIN,
    BRIGHT,
    FESTAL,
    /** The last verse of a hymn on a feast. */
    END,
    /** The last verse of its last hymn. */
    CROWN;

    static Fullness of(Mood mood) {
        return valueOf(mood.name());
    }
}
