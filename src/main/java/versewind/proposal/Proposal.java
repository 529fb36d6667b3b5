package versewind.proposal;

import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Verse;

/**
 * A registration proposed for a verse.
 *
 * @param registration what to draw
 * @param hands how to play it
 * @param score what speaks against it
 * @param why what speaks for it, in one sentence
 */
public record Proposal(Registration registration, HandsAndFeet hands, Score score, String why) {

    /** The verse with it drawn; a piston that set something else is taken off. */
    public Verse on(Verse verse) {
        Verse drawn = verse.withRegistration(registration).withHands(hands);
        boolean isSame = registration.stops().equals(verse.registration().stops())
                && registration.couplers().equals(verse.registration().couplers())
                && registration.tremulants().equals(verse.registration().tremulants());
        return isSame ? drawn : drawn.withPiston("");
    }
}
