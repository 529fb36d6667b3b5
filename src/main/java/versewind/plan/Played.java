package versewind.plan;

import versewind.organ.Registration;

/**
 * What the organist plays.
 *
 * @param hands the layout of hands and feet
 * @param registration the stops, couplers, tremulants and box positions
 */
public record Played(HandsAndFeet hands, Registration registration) {

    Played with(HandsAndFeet other) {
        return new Played(other, registration);
    }

    Played with(Registration other) {
        return new Played(hands, other);
    }
}
