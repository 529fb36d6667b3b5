package versewind.proposal;

/** What the stops under a hand are for. */
enum Role {
    /** To lead the people, or to play over what they will sing. */
    PEOPLE,
    /** To carry a small choir. */
    CHOIR,
    /** To stay under one voice. */
    SOLOIST,
    /** To sing the melody alone. */
    SOLO_LINE,
    /** To accompany a soloed melody. */
    UNDER_SOLO
}
