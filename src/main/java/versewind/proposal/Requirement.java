package versewind.proposal;

import java.util.List;
import versewind.plan.HandsAndFeet;
import versewind.plan.Locks;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.rules.Company;

/**
 * The requirements of a verse for its registration.
 *
 * @param mode whom the organ accompanies; where it plays alone, those who will sing
 * @param company for whom it plays
 * @param mood of the words
 * @param least how full a sound is asked for
 * @param most the fullest that is borne as well
 * @param locks stops that must, or must not, be drawn
 * @param hands the ways to play it
 * @param target where the balance should lie
 */
record Requirement(
        Mode mode,
        Company company,
        Mood mood,
        Fullness least,
        Fullness most,
        Locks locks,
        List<HandsAndFeet> hands,
        Target target) {

    Requirement {
        hands = List.copyOf(hands);
    }

    Requirement with(Target other) {
        return new Requirement(mode, company, mood, least, most, locks, hands, other);
    }

    boolean isPeople() {
        return mode == Mode.CONGREGATION;
    }

    /** True if the tune is to have a manual of its own. */
    boolean isOfTune() {
        return mode == Mode.MELODY_SOLOED;
    }

    /** True if a draft keeps the locks, and is played as may be. */
    boolean allows(Draft draft) {
        return hands.contains(draft.hands())
                && locks.always().minus(draft.stops()).isEmpty()
                && !draft.stops().meets(locks.never());
    }

    /** True if the feet may play. */
    boolean mayUsePedal() {
        return hands.stream().anyMatch(each -> each.layout().usesPedal());
    }
}
