package versewind.proposal;

import java.util.List;
import java.util.Optional;
import versewind.organ.IndexSet;
import versewind.organ.Registration;
import versewind.plan.HandsAndFeet;
import versewind.plan.Plan;
import versewind.plan.Verse;
import versewind.plan.VersePlace;
import versewind.sound.Balance;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/**
 * A registration that the organist usually draws for such people.
 *
 * @param name what the organist calls it
 * @param registration what is drawn
 * @param hands how it is played
 */
public record Usual(String name, Registration registration, HandsAndFeet hands) {

    /** As a proposal for a verse, where the plan allows it and it is in balance there. */
    public Optional<Proposal> proposal(OrganSound sound, Plan plan, VersePlace place) {
        Verse verse = plan.verse(place);
        Balance promised = sound.estimate(
                        verse.withRegistration(registration).withHands(hands),
                        plan.heading().people(),
                        plan.hymns().get(place.hymn()).tempo())
                .balance();
        return mayBeDrawn(plan, verse) && promised.verdict().way() == Verdict.Way.NONE
                ? Optional.of(new Proposal(
                        registration,
                        hands,
                        promised,
                        new Score(List.of()),
                        "your usual: " + name,
                        "Your usual, " + name + ": " + promised.words() + ".",
                        ""))
                : Optional.empty();
    }

    /** Whether a proposal is to draw and to play just this. */
    public boolean is(Proposal proposal) {
        return registration.equals(proposal.registration()) && hands.equals(proposal.hands());
    }

    private boolean mayBeDrawn(Plan plan, Verse verse) {
        IndexSet stops = registration.stops();
        return verse.locks().always().minus(stops).isEmpty()
                && !stops.meets(verse.locks().never())
                && (!verse.locks().keepsHands() || hands.equals(verse.hands()))
                && (!verse.locks().keepsBoxes()
                        || registration.boxes().equals(verse.registration().boxes()))
                && plan.heading().player().plays(hands.layout());
    }
}
