package versewind.screen.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import versewind.calibration.HeardRegistration;
import versewind.organ.IndexSet;
import versewind.plan.Verse;
import versewind.proposal.Proposal;
import versewind.proposal.Score;
import versewind.schema.KnownOrgan;
import versewind.screen.state.PlanEdit;
import versewind.screen.state.State;
import versewind.sheet.Wording;
import versewind.sound.Balance;
import versewind.sound.Verdict;

/** A verse beside the usual registration, in a few words: "a step above your usual, +2 dB". */
public final class UsualLine {

    private UsualLine() {}

    /** Empty where no usual registration applies, or one of them is silent. */
    public static Optional<String> of(State state, PlanEdit work, Verse verse) {
        return KnownOrgan.fromUsual(
                work.organ().experience(),
                work.sound(),
                verse,
                work.plan().heading().people(),
                db -> StatusView.signed(state, db));
    }

    /** The usual registration as a proposal for the current verse, where it may be drawn and is right here too. */
    public static Optional<Proposal> proposal(PlanEdit work) {
        return work.verse().flatMap(verse -> proposal(work, verse));
    }

    private static Optional<Proposal> proposal(PlanEdit work, Verse verse) {
        int people = work.plan().heading().people();
        return work.organ()
                .experience()
                .nearest(verse, verse.people().orElse(people))
                .filter(usual -> mayBeDrawn(work, verse, usual))
                .map(usual -> proposal(work, verse, usual))
                .filter(proposal -> proposal.promised().verdict().way() == Verdict.Way.NONE);
    }

    private static Proposal proposal(PlanEdit work, Verse verse, HeardRegistration usual) {
        Balance balance = work.estimate(
                        verse.withRegistration(usual.registration()).withHands(usual.hands()))
                .balance();
        String verdict = Wording.verdict(balance);
        return new Proposal(
                usual.registration(),
                usual.hands(),
                balance,
                new Score(List.of()),
                "your usual: " + usual.name(),
                verdict.substring(0, 1).toUpperCase(Locale.ROOT) + verdict.substring(1) + ".",
                "");
    }

    private static boolean mayBeDrawn(PlanEdit work, Verse verse, HeardRegistration usual) {
        IndexSet stops = usual.registration().stops();
        return verse.locks().always().minus(stops).isEmpty()
                && !stops.meets(verse.locks().never())
                && (!verse.locks().keepsHands() || usual.hands().equals(verse.hands()))
                && (!verse.locks().keepsBoxes()
                        || usual.registration()
                                .boxes()
                                .equals(verse.registration().boxes()))
                && work.plan().heading().player().plays(usual.hands().layout());
    }
}
