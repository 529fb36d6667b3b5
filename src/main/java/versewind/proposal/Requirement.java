package versewind.proposal;

import java.util.Collections;
import java.util.List;
import versewind.organ.BoxPosition;
import versewind.organ.IndexSet;
import versewind.plan.HandsAndFeet;
import versewind.plan.Locks;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.rules.BuildingStep;
import versewind.rules.Company;
import versewind.sound.Verdict;

/**
 * The requirements of a verse for its registration.
 *
 * @param mode whom the organ accompanies; where it plays alone, those who will sing
 * @param company for whom it plays
 * @param mood of the words
 * @param least how full a sound is asked for
 * @param most the fullest that is borne as well
 * @param locks stops that must, or must not, be drawn
 * @param usual stops that are usually drawn, and come before others of their kind
 * @param hands the ways to play it
 * @param boxes the positions of the boxes that the plan keeps; none where they are free
 * @param target where the balance should lie
 * @param wantsReeds whether everything that comes before the chorus reeds is not likely to lead the people
 * @param full the balance with everything of the order drawn, where the people are led
 */
record Requirement(
        Mode mode,
        Company company,
        Mood mood,
        Fullness least,
        Fullness most,
        Locks locks,
        IndexSet usual,
        List<HandsAndFeet> hands,
        List<BoxPosition> boxes,
        Target target,
        boolean wantsReeds,
        double full) {

    /** What remains of the points against reeds where they are wanted. */
    private static final double WANTED = 0.5;

    /** What remains, in a gentle verse, of the points against a sound that is only borne. */
    private static final double BORNE = 0.15;

    private static final double A_HAIR = 0.01;
    private static final double NOTHING = 0.002;

    Requirement {
        hands = List.copyOf(hands);
        boxes = List.copyOf(boxes);
    }

    Requirement with(Target other, boolean wantingReeds, double atMost) {
        return new Requirement(
                mode, company, mood, least, most, locks, usual, hands, boxes, other, wantingReeds, atMost);
    }

    /** The same, for singers whom reeds would cover: only as full as a plain verse bears. */
    Requirement withoutReeds() {
        return new Requirement(
                mode,
                company,
                mood,
                least,
                Collections.min(List.of(most, Fullness.PLAIN)),
                locks,
                usual,
                hands,
                boxes,
                target,
                wantsReeds,
                full);
    }

    /** Points against a step of the order. */
    double cost(BuildingStep step) {
        double asked = StepCosts.of(mode, step, least, least);
        double points = Math.max(StepCosts.of(mode, step, least, most), mood == Mood.GENTLE ? BORNE * asked : 0);
        boolean isOfReeds =
                step.compareTo(BuildingStep.ENCLOSED_REEDS) >= 0 && step.compareTo(BuildingStep.THIRTY_TWO_FEET) < 0;
        return wantsReeds && isOfReeds && mood != Mood.GENTLE ? points * WANTED : points;
    }

    /** True for a share of people who are hardly led by all there is: nothing can be spared of it, or added. */
    boolean isAllThereIs(double share) {
        double hardly = Verdict.LEADS.from(mode) + A_HAIR;
        return isPeople() && company.isSung() && share < hardly && share > full - NOTHING;
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
                && (boxes.isEmpty() || boxes.equals(draft.registration().boxes()))
                && locks.always().minus(draft.stops()).isEmpty()
                && !draft.stops().meets(locks.never());
    }

    /** True if the feet may play. */
    boolean mayUsePedal() {
        return hands.stream().anyMatch(each -> each.layout().usesPedal());
    }
}
