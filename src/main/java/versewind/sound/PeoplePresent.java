package versewind.sound;

import versewind.plan.Verse;

/**
 * Who is there for a verse.
 *
 * <p>The people of a congregation's verse are those present. A choir has the verse's number of voices, or a usual one; the
 * service's people are there besides, and listen.
 *
 * @param present number of people in the room, all counted as standing
 * @param singers how many of them sing; 0 when the organ plays alone
 * @param place where they sing, or would
 */
record PeoplePresent(int present, int singers, Place place) {

    /** Where the singers are. */
    enum Place {
        /** All over the nave; the seat among them is in its middle. */
        IN_THE_NAVE,
        /** In one place, heard from the nave. */
        AT_THE_CHOIR
    }

    static PeoplePresent of(Verse verse, int servicePeople) {
        return switch (verse.mode()) {
            case CONGREGATION -> {
                int present = verse.people().orElse(servicePeople);
                yield sung(verse, present, Singers.singing(present), Place.IN_THE_NAVE);
            }
            case SMALL_CHOIR -> {
                int voices = verse.people().orElse(Singers.USUAL_CHOIR);
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
