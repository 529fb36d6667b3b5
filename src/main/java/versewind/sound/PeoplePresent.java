package versewind.sound;

import versewind.plan.Verse;

/**
 * The people in the room for a verse.
 *
 * <p>For a congregation the people of the verse are those present. A choir has the number of voices of the verse, or a
 * usual one, and the people of the service listen.
 *
 * @param present number of people in the room, all taken as standing
 * @param singers how many of them sing; 0 when the organ plays alone
 * @param place where they sing, or would
 */
record PeoplePresent(int present, int singers, Place place) {

    /** Place of the singers. */
    enum Place {
        /** Throughout the nave; the seat among them is in the middle. */
        IN_THE_NAVE,
        /** In one place, heard from the nave. */
        AT_THE_CHOIR
    }

    static PeoplePresent of(Verse verse, int servicePeople) {
        return switch (verse.mode()) {
            case CONGREGATION -> {
                int present = verse.people().orElse(servicePeople);
                yield sung(verse, present, Singers.singing(present, verse.sung()), Place.IN_THE_NAVE);
            }
            case SMALL_CHOIR -> {
                int voices = verse.people().orElse(Singers.usualChoir(verse.sungBy()));
                yield sung(verse, servicePeople + voices, voices, Place.AT_THE_CHOIR);
            }
            case SOLO_VOICE -> sung(verse, servicePeople + 1, 1, Place.AT_THE_CHOIR);
            case MELODY_SOLOED -> sung(verse, verse.people().orElse(servicePeople), 0, Place.IN_THE_NAVE);
        };
    }

    private static PeoplePresent sung(Verse verse, int present, int singers, Place place) {
        return new PeoplePresent(present, verse.isSung() ? singers : 0, place);
    }
}
