package versewind.proposal;

import java.util.List;
import java.util.Optional;
import versewind.plan.HandsAndFeet;
import versewind.plan.Locks;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.rules.Company;

/**
 * What a verse wants of its registration.
 *
 * @param mode whom the organ accompanies, or whom it introduces
 * @param company for whom it plays
 * @param mood of the words
 * @param layers the mood by which layers are too much: the fullest that may be drawn
 * @param locks stops that must, or must not, be drawn
 * @param hands the ways to play it that the plan allows
 * @param target where the margin should lie
 * @param sdDb how far the margin may well be off, one standard deviation
 * @param neighbours what is played before and after
 */
record Requirement(
        Mode mode,
        Company company,
        Mood mood,
        Mood layers,
        Locks locks,
        List<HandsAndFeet> hands,
        Target target,
        double sdDb,
        Neighbours neighbours) {

    Requirement {
        hands = List.copyOf(hands);
    }

    /**
     * What is played before and after.
     *
     * @param before what is drawn in the verse before; empty where that does not matter
     * @param unlike what the neighbours sound like, from which it should differ
     * @param breath the time between verses
     * @param rise how it should stand to the verse before; empty where that does not matter
     */
    record Neighbours(Optional<Draft> before, List<Draft> unlike, ChangeTime breath, Optional<GrowthTarget> rise) {

        Neighbours {
            unlike = List.copyOf(unlike);
        }

        /** Nothing is known of them, or it is reckoned elsewhere. */
        static final Neighbours NONE = new Neighbours(
                Optional.empty(), List.of(), new ChangeTime(0, 1, ChangeTime.Piston.NONE), Optional.empty());
    }

    /** What the stops under both hands, or the left where the melody is soloed, are for. */
    Role role() {
        return switch (mode) {
            case CONGREGATION -> Role.PEOPLE;
            case SMALL_CHOIR -> Role.CHOIR;
            case SOLO_VOICE -> Role.SOLOIST;
            case MELODY_SOLOED -> Role.UNDER_SOLO;
        };
    }

    /** Whether the feet may play. */
    boolean mayUsePedal() {
        return hands.stream().anyMatch(each -> each.layout().usesPedal());
    }

    boolean isPeople() {
        return role() == Role.PEOPLE;
    }

    Requirement with(double otherSdDb) {
        return new Requirement(mode, company, mood, layers, locks, hands, target, otherSdDb, neighbours);
    }

    Requirement with(Neighbours others) {
        return new Requirement(mode, company, mood, layers, locks, hands, target, sdDb, others);
    }
}
