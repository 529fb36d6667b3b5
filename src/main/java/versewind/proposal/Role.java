package versewind.proposal;

import versewind.advice.Company;

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
    UNDER_SOLO;

    /** What hands that play all parts are for. */
    static Role of(Company company) {
        return switch (company.who()) {
            case CONGREGATION, NOBODY -> PEOPLE;
            case CHOIR -> CHOIR;
            case SOLOIST -> SOLOIST;
        };
    }
}
