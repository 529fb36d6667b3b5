package versewind.proposal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import versewind.Shipped;
import versewind.organ.Family;
import versewind.organ.Instrument;
import versewind.organ.Stop;
import versewind.plan.Hymn;
import versewind.plan.Mode;
import versewind.plan.Mood;
import versewind.plan.Plan;
import versewind.plan.ServiceHeading;
import versewind.plan.Singing;
import versewind.plan.Verse;
import versewind.plan.VerseKind;
import versewind.plan.VersePlace;
import versewind.plan.Verses;
import versewind.sound.OrganSound;
import versewind.sound.Verdict;

/** An organ at which registrations are asked for. */
final class ProposalTrial {

    private final Instrument organ;
    private final OrganSound sound;
    private final RegistrationProposer proposer;

    private ProposalTrial(Instrument organ) {
        this.organ = organ;
        sound = OrganSound.open(organ);
        proposer = RegistrationProposer.of(sound);
    }

    static ProposalTrial of(Instrument organ) {
        return new ProposalTrial(organ);
    }

    static ProposalTrial shipped(String id) {
        return new ProposalTrial(Shipped.instrument(id));
    }

    Instrument organ() {
        return organ;
    }

    OrganSound sound() {
        return sound;
    }

    RegistrationProposer proposer() {
        return proposer;
    }

    /** A verse of a mood, sung as such a verse usually is. */
    Verse verse(Mode mode, Mood mood) {
        return Verses.blank(organ, VerseKind.VERSE)
                .withMode(mode)
                .withMood(mood)
                .withSinging(
                        switch (mood) {
                            case GENTLE -> Singing.GENTLE;
                            case PLAIN, BRIGHT -> Singing.ORDINARY;
                            case FESTAL -> Singing.STRONG;
                        });
    }

    /** A service of one hymn. */
    static Plan plan(int people, Verse... verses) {
        return new Plan(
                new ServiceHeading("A service", Optional.empty(), people, ""),
                "organ",
                List.of(new Hymn("1", "A hymn", "", "", "", OptionalInt.of(96), "", List.of(verses))));
    }

    List<Proposal> proposals(int people, Verse verse) {
        return proposer.forVerse(plan(people, verse), new VersePlace(0, 0)).proposals();
    }

    Proposal best(int people, Verse verse) {
        return proposals(people, verse).get(0);
    }

    /** The stops that a proposal draws. */
    List<Stop> drawn(Proposal proposal) {
        return IntStream.range(0, organ.stops().size())
                .filter(proposal.registration().stops()::contains)
                .mapToObj(stop -> organ.stops().get(stop).stop())
                .toList();
    }

    /** Whether a stop of a family and of so many feet is drawn in a division. */
    boolean draws(Proposal proposal, int division, Family family, int feet) {
        return proposal.registration().stops().stream()
                .mapToObj(organ.stops()::get)
                .anyMatch(knob -> knob.division() == division
                        && knob.stop().family() == family
                        && knob.stop()
                                .footage()
                                .filter(each -> each.feet() == feet)
                                .isPresent());
    }

    /** Whether a stop of a family is drawn anywhere. */
    boolean draws(Proposal proposal, Family family) {
        return drawn(proposal).stream().anyMatch(stop -> stop.family() == family);
    }

    /** Whether chorus reeds are drawn first though another proposal leads without them. */
    boolean hasReedsThoughFluesLead(int people, Mood mood, Proposal proposal) {
        Verse verse = verse(Mode.CONGREGATION, mood);
        return draws(proposal, Family.CHORUS_REED)
                && proposals(people, verse).stream()
                        .filter(other -> !draws(other, Family.CHORUS_REED))
                        .map(other -> sound.estimate(other.on(verse), people, OptionalInt.empty()))
                        .anyMatch(estimate -> estimate.balance().verdict() == Verdict.LEADS
                                && estimate.balance().isSure());
    }

    /** Whether any stop of so many feet is drawn in a division. */
    boolean drawsFeet(Proposal proposal, int division, int feet) {
        return proposal.registration().stops().stream()
                .mapToObj(organ.stops()::get)
                .anyMatch(knob -> knob.division() == division
                        && knob.stop()
                                .footage()
                                .filter(each -> each.feet() == feet)
                                .isPresent());
    }

    /** Whether a manual is coupled to the pedal. */
    boolean isCoupledToPedal(Proposal proposal) {
        int pedal = organ.pedalDivision().orElseThrow();
        return proposal.registration().couplers().stream()
                .anyMatch(coupler ->
                        organ.division(organ.couplers().get(coupler).keyboard()).getAsInt() == pedal);
    }
}
